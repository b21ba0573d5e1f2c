/** What a supervisor counts: how many requests, how long they took, what the process and its connections do. */
import { collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client';
import type { LogEntry, RequestLine } from '../deps.ts';

export type Connections = { readonly total: number; readonly idle: number; readonly waiting: number };

export type Metrics = {
  /** From a line of the log to the counts. */
  observe(entry: LogEntry): void;
  text(): Promise<string>;
  readonly contentType: string;
};

/** Seconds; from a page that is not asked anew to one that worked a whole fleet out. */
const BUCKETS = [0.002, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 10];

export function openMetrics(connections?: () => Connections): Metrics {
  const registry = new Registry();
  collectDefaultMetrics({ register: registry });
  const requests = new Histogram({
    name: 'garboard_request_duration_seconds',
    help: 'How long requests took, by route, method and status.',
    labelNames: ['method', 'route', 'status'],
    buckets: BUCKETS,
    registers: [registry],
  });
  const faults = new Gauge({ name: 'garboard_faults', help: 'Faults since the start.', registers: [registry] });
  faults.set(0);
  if (connections) countConnections(connections, registry);
  return {
    observe: (entry) => (entry.event === 'fault' ? faults.inc() : observeRequest(requests, entry)),
    text: () => registry.metrics(),
    contentType: registry.contentType,
  };
}

function observeRequest(requests: Histogram, { method, path, status, ms }: RequestLine): void {
  requests.observe({ method, route: path, status }, ms / 1000);
}

function countConnections(connections: () => Connections, registry: Registry): void {
  new Gauge({
    name: 'garboard_database_connections',
    help: 'Connections to the database, and requests that wait for one.',
    labelNames: ['state'],
    registers: [registry],
    collect() {
      const { total, idle, waiting } = connections();
      this.set({ state: 'busy' }, total - idle);
      this.set({ state: 'idle' }, idle);
      this.set({ state: 'waiting' }, waiting);
    },
  });
}
