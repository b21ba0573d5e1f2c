import { expect, test } from 'vitest';
import { identifierWords } from './identifier-words.ts';

test('each identifier is told by its name, as it is written, and what it says without writing it twice', () => {
  const identifiers = { callSign: 'MABC2', mmsi: '232123456', hin: 'GB-QZX00042C898', imo: '9074720' };
  const inWords = [
    'HIN: built by QZX, as hull 00042.',
    'IMO number: 9074720 cannot be one.',
    'MMSI: 232123456, a ship station.',
    'Call sign: MABC2, of a series of United Kingdom.',
  ];

  expect(identifierWords({ identifiers, identifierNotes: { inWords, doubts: [] } })).toEqual([
    { name: 'HIN', written: 'GB-QZX00042C898', words: 'built by QZX, as hull 00042.' },
    { name: 'IMO number', written: '9074720', words: 'cannot be one.' },
    { name: 'MMSI', written: '232123456', words: 'a ship station.' },
    { name: 'Call sign', written: 'MABC2', words: 'of a series of United Kingdom.' },
  ]);
});

test('a vessel without identifiers has nothing to tell', () => {
  expect(identifierWords({ identifiers: {} })).toEqual([]);
});
