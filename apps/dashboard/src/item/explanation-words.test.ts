import { expect, test } from 'vitest';
import { limitInWords, remedyInWords } from './explanation-words.ts';
import { sourceInFull, sourceInShort } from './source-words.ts';

test('what would change a date says what, by whom, and to when', () => {
  const remedy = {
    act: 'serviced',
    by: ['liferaft_service_station'],
    plus: 'P12M',
    ifDoneOn: '2026-03-01',
    movesTo: '2027-03-01',
  } as const;
  expect(remedyInWords({ ...remedy, by: [...remedy.by] })).toBe(
    'A service on 1 Mar 2026 by an approved liferaft service station moves it to 1 Mar 2027.',
  );
});

test('a test is told from another by its name', () => {
  const remedy = {
    act: 'tested',
    test: 'internal_examination',
    by: [],
    plus: 'P6Y',
    ifDoneOn: '2026-03-01',
    movesTo: '2032-03-01',
  } as const;
  expect(remedyInWords({ ...remedy, by: [] })).toBe('An internal examination on 1 Mar 2026 moves it to 1 Mar 2032.');
});

test('an extension moves it to the day it permits, whichever that is', () => {
  const remedy = { act: 'extended' as const, by: [], plus: null, ifDoneOn: '2026-03-01', movesTo: null };
  expect(remedyInWords(remedy)).toBe('An extension on 1 Mar 2026 moves it to the day it permits.');
});

test('what has no date to move to promises none', () => {
  const remedy = { act: 'replaced' as const, by: [], plus: null, ifDoneOn: '2026-03-01', movesTo: null };
  expect(remedyInWords(remedy)).toBe(
    'A replacement on 1 Mar 2026 gives it a new date, by what is printed or written on it.',
  );
});

test('a limit whose date is not on record says so', () => {
  expect(limitInWords({ limit: 'printed expiry', on: null, factIds: [] })).toBe('Printed expiry: not on record');
  expect(limitInWords({ limit: '12 months', on: '2026-09-22', factIds: [] })).toBe('12 months → 22 Sep 2026');
});

test('a figure that nobody read in the text says so wherever it stands in short', () => {
  const read = { publication: 'SOLAS', clause: 'III/20.8.1', address: null, status: 'read' as const };
  expect(sourceInShort(read)).toBe('SOLAS III/20.8.1');
  expect(sourceInShort({ ...read, fromMemory: 'the twelve months' })).toBe('SOLAS III/20.8.1, partly from memory');
  expect(sourceInShort({ ...read, status: 'second_hand' })).toBe('SOLAS III/20.8.1, quoted from another source');
  expect(sourceInShort({ ...read, status: 'memory' })).toBe('SOLAS III/20.8.1, from memory');
});

test('a figure without a source says so, and never borrows a clause', () => {
  const practice = { publication: null, clause: null, address: null, status: 'common_practice' as const };
  expect(sourceInShort(practice)).toBe('common practice, no source');
  expect(sourceInFull({ ...practice, publication: 'NFPA 10', clause: '7.3', status: 'second_hand' })).toBe(
    'NFPA 10 7.3, quoted from another source.',
  );
});
