/** Where things lie in a project's data folder. */
import fs from 'node:fs';
import path from 'node:path';
import { UnusableDataFolder } from './unusable-data-folder.ts';

export type DataFolder = {
  root: string;
  /** The PostgreSQL cluster itself. */
  cluster: string;
  /** Who uses the running server and how it is reached; there only while it runs. */
  connectionFile: string;
  starterLock: string;
  /** Links to the libraries, where they cannot be made beside the libraries themselves. */
  libraryLinks: string;
};

export function dataFolder(dataDir: string): DataFolder {
  const root = realPath(path.resolve(dataDir));
  return {
    root,
    cluster: realPath(path.join(root, 'pg')),
    connectionFile: path.join(root, 'pg.json'),
    starterLock: path.join(root, 'pg.lock'),
    libraryLinks: path.join(root, 'pg-lib'),
  };
}

/** Folders and files that another user made, as root did before, are told apart here and not half way through a start. */
export function refuseUnlessWritable({ root, connectionFile, starterLock }: DataFolder): void {
  for (const name of [root, connectionFile, starterLock].filter((made) => fs.existsSync(made))) {
    try {
      fs.accessSync(name, fs.constants.R_OK | fs.constants.W_OK);
    } catch {
      throw new UnusableDataFolder(root, `this user may not write in ${name}, which another user made.`);
    }
  }
}

/** The server names its folder by the real path, so we compare and start by the real path too. */
export function realPath(name: string): string {
  try {
    return fs.realpathSync(name);
  } catch {
    return name;
  }
}
