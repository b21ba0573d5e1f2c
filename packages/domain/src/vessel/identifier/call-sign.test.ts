import { describe, expect, it } from 'vitest';
import { decodeCallSign, stateHasSeries } from './call-sign.ts';
import { CALL_SIGN_SERIES } from './call-sign-series.ts';
import { MID_TABLE } from './maritime-identification-digits.ts';

const spans = CALL_SIGN_SERIES.flatMap(([state, series]) =>
  series.split(' ').map((span) => ({ state, first: span.slice(0, 3), last: span.slice(4) })),
);

describe('the table of call sign series', () => {
  it('gives no combination twice', () => {
    const sorted = spans.toSorted((a, b) => (a.first < b.first ? -1 : 1));
    expect(sorted.filter(({ first, last }) => !(first <= last))).toEqual([]);
    expect(sorted.filter(({ first }, at) => at > 0 && first <= (sorted[at - 1]?.last ?? ''))).toEqual([]);
  });

  it('names every state as the table of maritime identification digits does', () => {
    const names = new Set(MID_TABLE.map(([name]) => name));
    expect(CALL_SIGN_SERIES.map(([state]) => state).filter((state) => !names.has(state))).toEqual([]);
  });

  it('is read at both ends of each series', () => {
    for (const { state, first, last } of spans) {
      expect([decodeCallSign(`${first}A`), decodeCallSign(`${last}Z`)]).toMatchObject([{ state }, { state }]);
    }
  });

  it('leaves territories without a series to their state', () => {
    expect([stateHasSeries('United Kingdom'), stateHasSeries('Gibraltar')]).toEqual([true, false]);
  });
});

describe('a call sign', () => {
  it('takes a digit in third place for the whole series', () => {
    expect(decodeCallSign('WA2000')).toMatchObject({ state: 'United States of America', doubts: [] });
  });

  it('leaves open whose it is where the third letter would tell and there is none', () => {
    expect(decodeCallSign('3D2000')).toMatchObject({ state: null, doubts: [expect.stringContaining('3D2')] });
    expect(decodeCallSign('SS2000')).toMatchObject({ state: null, doubts: [expect.stringContaining('SS2')] });
    expect(decodeCallSign('SSAB')).toMatchObject({ state: 'Egypt' });
    expect(decodeCallSign('SSNB')).toMatchObject({ state: 'Sudan' });
  });

  it('doubts a beginning that no series has', () => {
    expect(decodeCallSign('QABC')).toMatchObject({ state: null, doubts: [expect.stringContaining('QAB')] });
  });

  it('is read in small letters too', () => {
    expect(decodeCallSign(' mabc2 ')).toMatchObject({ sign: 'MABC2', state: 'United Kingdom' });
  });

  it('says that the forms it refuses by are from memory', () => {
    expect(decodeCallSign('GABC0')).toMatchObject({ why: expect.stringContaining('from memory') });
  });

  it.each(['12AB', 'V22345', '9H1234', 'GAB12345', 'GABCD', 'G', 'GABC 2', ''])('cannot be %j', (text) => {
    expect(decodeCallSign(text)).toMatchObject({ kind: 'not_one' });
  });
});
