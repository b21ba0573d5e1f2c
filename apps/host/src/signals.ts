/**
 * Ctrl-C and SIGTERM. npm passes a signal on while the terminal sends it too, so it comes twice: both mean
 * the same one stop. A signal during the start is kept and acted on as soon as there is something to stop;
 * `asked` lets what takes long break off.
 */
const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
/** After this the process ends whatever is still open. */
const FORCED_AFTER_MS = 9_000;

export type Stopping = { readonly asked: AbortSignal; use(stop: () => Promise<void>): Promise<void> };

export function onSignals(say: (line: string) => void): Stopping {
  const asked = new AbortController();
  let stop: (() => Promise<void>) | null = null;
  let ending = false;
  const act = async () => {
    if (!asked.signal.aborted || !stop || ending) return;
    ending = true;
    await end(stop, say);
  };
  for (const signal of SIGNALS) {
    process.on(signal, () => {
      if (!asked.signal.aborted) say('Stopping …');
      asked.abort();
      void act();
    });
  }
  return {
    asked: asked.signal,
    use(theStop) {
      stop = theStop;
      return act();
    },
  };
}

async function end(stop: () => Promise<void>, say: (line: string) => void): Promise<void> {
  const forced = setTimeout(() => {
    say('Stopped by force.');
    process.exit(1);
  }, FORCED_AFTER_MS);
  await stop();
  clearTimeout(forced);
  say('Stopped.');
  process.exit(0);
}
