/** `npm run --silent admin -- <command>`: what only somebody at the machine may do. */
import { parseArgs } from 'node:util';
import { runCommand } from './admin-commands.ts';
import { readConfig } from './config.ts';
import { openDatabase } from './open-database.ts';
import { openFiles } from './open-files.ts';

const USAGE = `usage: npm run --silent admin -- <command>
  create-organisation NAME [--time-zone ZONE]
  create-api-key --organisation NAME --role ROLE [--name WORDS] [--days N]     prints only the key
  create-user --organisation NAME --role ROLE --email ADDRESS [--name WORDS]   prints only a one-time link's path
  create-sign-in-link --organisation NAME --email ADDRESS                      prints only the link's path
  revoke-api-key KEY
  check [--organisation NAME [--kept NUMBER:HASH]]                             works every due date out again, goes along every audit, looks for every file`;

try {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      organisation: { type: 'string' },
      role: { type: 'string' },
      name: { type: 'string' },
      email: { type: 'string' },
      days: { type: 'string' },
      'time-zone': { type: 'string' },
      kept: { type: 'string' },
      help: { type: 'boolean' },
    },
  });
  if (values.help) {
    process.stdout.write(`${USAGE}\n`);
    process.exit(0);
  }
  const config = readConfig(process.env);
  const database = await openDatabase(config, () => {});
  try {
    const answer = await runCommand(
      { pools: database.pools, store: openFiles(config.files) },
      positionals,
      values,
      new Date(),
    );
    if (answer.ok) process.stdout.write(`${answer.line}\n`);
    else {
      process.stderr.write(`${answer.line}\n${answer.usage ? `${USAGE}\n` : ''}`);
      process.exitCode = 1;
    }
  } finally {
    await database.close();
  }
} catch (fault) {
  process.stderr.write(`${fault instanceof Error ? fault.message : String(fault)}\n`);
  process.exitCode = 1;
}
