/** A PostgreSQL server for the length of a run. */
export type RunningServer = {
  /** Where it comes from, for the reader of the run. */
  readonly words: string;
  /** The address of a database from which others are made. Its user may create databases and roles. */
  readonly url: string;
  stop(): Promise<void>;
};
