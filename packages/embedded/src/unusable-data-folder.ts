/**
 * The data folder holds something that this program must not start a server on.
 * Thrown before anything in the folder is written; the message says what was found and what to do about it.
 */
export class UnusableDataFolder extends Error {
  readonly folder: string;

  constructor(folder: string, found: string) {
    super(`The data folder ${folder} cannot be used: ${found} Nothing in it was changed.`);
    this.name = 'UnusableDataFolder';
    this.folder = folder;
  }
}
