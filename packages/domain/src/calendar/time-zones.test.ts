import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { expect, it } from 'vitest';

const ZONES = ['UTC', 'Pacific/Kiritimati', 'Pacific/Apia', 'America/St_Johns', 'Australia/Lord_Howe'];

const url = (path: string) => JSON.stringify(new URL(path, import.meta.url).href);

/** Walks through 300 years of days, their ends and their obligations, and prints every answer. */
const WALK = `
  import { addMonths, dayOf, endOfMonth, endOfYear, formatDay, parseDay } from ${url('./day.ts')};
  import { parseRecordedDate } from ${url('./recorded-date.ts')};
  import { workOutObligations } from ${url('../item/work-out-obligations.ts')};
  const lines = [Intl.DateTimeFormat().resolvedOptions().timeZone];
  for (let day = dayOf(1900, 1, 1); day < dayOf(2200, 1, 1); day += 5) {
    const text = formatDay(day);
    lines.push([text, parseDay(text), addMonths(day, 17), endOfMonth(day), endOfYear(day)].join(' '));
  }
  const recordedAt = '2026-03-29T00:30:00+13:00';
  const fact = (id, fact, on) => ({ id, fact, on: parseRecordedDate(on), outcome: 'passed', evidence: 'record', recordedAt });
  for (const on of ['2011-12-30', '2024-02-29', '2025-10-05', '2026-03']) {
    const item = { kind: 'liferaft', attributes: {}, facts: [fact('1', 'manufactured', '2010-06'), fact('2', 'serviced', on)] };
    const vessel = { schemes: ['solas', 'canada_lifesaving'], situations: [], events: [] };
    lines.push(JSON.stringify(workOutObligations(item, vessel, { asOf: dayOf(2026, 4, 1), knownAt: '2026-03-28T12:00:00Z' })));
  }
  process.stdout.write(lines.join('\\n'));
`;

function walkIn(zone: string) {
  const args = ['--input-type=module', '--eval', WALK];
  const text = execFileSync(process.execPath, args, { env: { ...process.env, TZ: zone }, encoding: 'utf8' });
  const [ownZone, ...answers] = text.split('\n');
  return { ownZone, answers: answers.length, checksum: createHash('sha256').update(answers.join('\n')).digest('hex') };
}

it('gives the same days and obligations in five time zones', { timeout: 60_000 }, () => {
  const walks = ZONES.map(walkIn);
  expect(walks.map(({ ownZone }) => ownZone)).toEqual(ZONES);
  expect(walks.every(({ answers }) => answers > 20_000)).toBe(true);
  expect(new Set(walks.map(({ checksum }) => checksum)).size).toBe(1);
});
