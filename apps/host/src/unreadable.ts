/** What is answered where no request could be read: the same problems as everywhere, written on the bare socket. */
import { randomUUID } from 'node:crypto';
import { type Server, type ServerResponse, STATUS_CODES } from 'node:http';
import type { Duplex } from 'node:stream';
import { problemBody } from '@garboard/api/problem/problem-body.ts';

export function answerUnreadable(server: Server): void {
  const underWay = new WeakMap<Duplex, ServerResponse>();
  server.on('request', (request, response) => underWay.set(request.socket, response));
  server.on('clientError', (error: NodeJS.ErrnoException, socket) => {
    const begun = underWay.get(socket);
    const halfSaid = begun?.headersSent && !begun.writableEnded;
    if (error.code === 'ECONNRESET' || halfSaid || !socket.writable) socket.destroy();
    else socket.end(answer(error.code));
  });
}

function answer(code: string | undefined): string {
  const id = randomUUID();
  const problem = problemBody(typeOf(code), id);
  const body = JSON.stringify(problem);
  return [
    `HTTP/1.1 ${problem.status} ${STATUS_CODES[problem.status]}`,
    'Content-Type: application/problem+json',
    `Content-Length: ${Buffer.byteLength(body)}`,
    `X-Request-Id: ${id}`,
    'Connection: close',
    '',
    body,
  ].join('\r\n');
}

function typeOf(code: string | undefined) {
  if (code === 'ERR_HTTP_REQUEST_TIMEOUT') return 'came-too-slowly';
  return code === 'HPE_HEADER_OVERFLOW' ? 'headers-too-large' : 'unreadable-request';
}
