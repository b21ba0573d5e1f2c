/** Every problem the API answers with: its status, its title, and what its page says. */
import type { ProblemType } from '@garboard/contract/problem.ts';
import {
  MAX_BODY_BYTES,
  MAX_BODY_DEPTH,
  MAX_PIECE_BYTES,
  REQUEST_SECONDS,
  STATEMENT_SECONDS,
} from '../request/limits.ts';

type Entry = { readonly status: number; readonly title: string; readonly means: string; readonly whatToDo: string };

export const PROBLEMS = {
  'unreadable-request': {
    status: 400,
    title: 'This is not a readable HTTP request',
    means: 'What came over the connection could not be read as HTTP/1.1, so nobody knows what was asked.',
    whatToDo: 'Look at what stands between your program and this one; speak HTTP, not HTTPS, to this port.',
  },
  'malformed-json': {
    status: 400,
    title: 'The body is not readable JSON',
    means:
      'The body could not be read as JSON in UTF-8: it is empty, cut short, nested too deeply, or not JSON at all. Nothing was written.',
    whatToDo: `Send one complete JSON document in UTF-8, nested at most ${MAX_BODY_DEPTH} deep.`,
  },
  unauthenticated: {
    status: 401,
    title: 'Who is asking is not known',
    means: 'There was no credential, or it is unknown, revoked or out of date.',
    whatToDo: 'Send an API key as “Authorization: Bearer gbk_…”, or sign in by a one-time link.',
  },
  forbidden: {
    status: 403,
    title: 'Not allowed with this credential',
    means: 'The credential is good, but its role may not do this, or it is not of the kind that can.',
    whatToDo: 'Ask whoever keeps the organisation for a role that may.',
  },
  'foreign-origin': {
    status: 403,
    title: 'A browser sent this from another site',
    means:
      'Somebody is signed in here, and a page of another site used that to send a change. Nothing was written. Sec-Fetch-Site or Origin tell where a request comes from.',
    whatToDo: 'Make changes from this host’s own pages. A program sends an API key instead of the cookie.',
  },
  'not-found': {
    status: 404,
    title: 'No such thing here',
    means:
      'There is nothing at this address for your organisation. What belongs to another organisation answers the same.',
    whatToDo: 'Look the identifier up in the list that it came from.',
  },
  'file-missing': {
    status: 404,
    title: 'The file is not in the store',
    means:
      'The photograph or paper is on record, but its bytes are not where they were kept, or cannot be shown here. What is written about it is still good.',
    whatToDo: 'Tell whoever runs the program: the store of files has to be mended or put back from a copy.',
  },
  'method-not-allowed': {
    status: 405,
    title: 'Not this method here',
    means: 'The address exists, but not for this method. The Allow header lists those that it takes.',
    whatToDo: 'Use one of the methods in the Allow header.',
  },
  'came-too-slowly': {
    status: 408,
    title: 'The request came too slowly',
    means: `A request has ${REQUEST_SECONDS} seconds to arrive, its body included. Nothing was written.`,
    whatToDo: 'Send it again, over a better connection or in smaller pieces.',
  },
  conflict: {
    status: 409,
    title: 'It does not go with what is on record',
    means:
      'The request is well formed but contradicts what is already recorded, such as a second correction of one fact.',
    whatToDo: 'Read the thing again and decide anew.',
  },
  stale: {
    status: 412,
    title: 'Somebody changed it in between',
    means:
      'The version in If-Match is not the current one. Nothing was changed. The ETag header carries the current version.',
    whatToDo: 'Read the thing again, put your change on top, and send it with the new ETag.',
  },
  'too-large': {
    status: 413,
    title: 'The body is too large',
    means: `A body may have at most ${MAX_BODY_BYTES / 1024} kB; a piece of a file at most ${MAX_PIECE_BYTES / 1024} kB.`,
    whatToDo: 'Send less at once.',
  },
  'unsupported-media-type': {
    status: 415,
    title: 'This kind of body is not read here',
    means:
      'The Content-Type is missing, doubled or not the one that is read here, or the body is compressed. The Accept header of this answer names the one that is: application/json in UTF-8, or application/octet-stream for a piece of a file.',
    whatToDo: 'Send that Content-Type, once, and no Content-Encoding.',
  },
  invalid: {
    status: 422,
    title: 'Something in the request is not right',
    means:
      'Each entry of “errors” names one place and says what is wrong there: an RFC 6901 pointer into the body (/facts/0/on), #query/… for a parameter, #header/… for a header. Nothing was written.',
    whatToDo: 'Put every place right that is named, and send it again.',
  },
  'idempotency-key-reused': {
    status: 422,
    title: 'This Idempotency-Key stood for another request',
    means: 'The same credential used the same key before, for another address or another body. Nothing was written.',
    whatToDo: 'Use a new key for a new request; repeat a request with exactly the same body.',
  },
  'if-match-required': {
    status: 428,
    title: 'Say which version you read',
    means:
      'A change needs If-Match with the ETag of the version that it was made from, so that nobody’s change is lost unseen.',
    whatToDo: 'Read the thing, then send its ETag as If-Match.',
  },
  'too-many-requests': {
    status: 429,
    title: 'Too many requests',
    means:
      'This credential, or everybody at this address together, asked more often in a minute than this server allows. RateLimit-Policy says how often that is, RateLimit what is left. Nothing was written.',
    whatToDo: 'Wait as many seconds as Retry-After says, then send it again with the same Idempotency-Key.',
  },
  'headers-too-large': {
    status: 431,
    title: 'The headers are too large',
    means: 'The address and the headers together may have 16 kB.',
    whatToDo: 'Send fewer or shorter headers, cookies included, or a shorter address.',
  },
  fault: {
    status: 500,
    title: 'A fault of ours',
    means: 'Something went wrong in the program. The fault is in its log under the request id.',
    whatToDo: 'Try again; if it stays, tell whoever runs the program the request id.',
  },
  'timed-out': {
    status: 503,
    title: 'It took too long',
    means: `The database was busy for more than ${STATEMENT_SECONDS} seconds, with this or with other work. Nothing was written.`,
    whatToDo: 'Wait as long as Retry-After says, then send it again with the same Idempotency-Key; or ask for less.',
  },
  'not-ready': {
    status: 503,
    title: 'Not ready yet',
    means: 'The database cannot be reached, or is not yet on the version that this program needs.',
    whatToDo: 'Wait a little and ask again.',
  },
} as const satisfies Record<ProblemType, Entry>;

export type StatusOf<T extends ProblemType> = (typeof PROBLEMS)[T]['status'];
