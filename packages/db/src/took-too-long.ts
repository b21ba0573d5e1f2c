/** PostgreSQL's `query_canceled`, which is how a statement ends that has run into `statement_timeout`. */
const QUERY_CANCELED = '57014';
/** What pg-pool says when every connection is taken for too long; it has no code. */
const NO_CONNECTION = 'timeout exceeded when trying to connect';

/** Whether the fault is only that somebody has to wait: the same thing asked later may well work. */
export function tookTooLong(fault: unknown): boolean {
  return fault instanceof Error && ('code' in fault ? fault.code === QUERY_CANCELED : fault.message === NO_CONNECTION);
}
