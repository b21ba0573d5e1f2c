/** A program that starts the server, says how it went in one line of JSON, and stops it when it reads anything. */
import { once } from 'node:events';
import { startPostgres } from '../start-postgres.ts';

try {
  const { url, port, owner, stop } = await startPostgres(JSON.parse(process.argv[2] ?? '{}'));
  console.log(JSON.stringify({ url, port, owner }));
  await once(process.stdin, 'data');
  await stop();
  console.log('"stopped"');
} catch (error) {
  const { name, message } = error as Error;
  console.log(JSON.stringify({ failed: { name, message } }));
}
process.stdin.destroy();
