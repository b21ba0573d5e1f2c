/** The one process: database, API, scheduler and dashboard, started in order and stopped in the reverse. */
import { readConfig } from './config.ts';
import { progressOn } from './progress.ts';
import { onSignals } from './signals.ts';
import { startGarboard } from './start-garboard.ts';

const progress = progressOn(process.stdout);
const stopping = onSignals((line) => progress.say(line));

try {
  const garboard = await startGarboard(readConfig(process.env), progress, stopping.asked);
  await stopping.use(() => garboard.stop());
} catch (fault) {
  if (stopping.asked.aborted) progress.say('Stopped.');
  else process.stderr.write(`garboard could not start: ${fault instanceof Error ? fault.message : String(fault)}\n`);
  process.exitCode = stopping.asked.aborted ? 0 : 1;
}
