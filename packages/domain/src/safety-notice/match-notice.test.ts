/** Which things a notice is about: common practice, no source; a doubt is never decided for the thing. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { day, recorded } from '../item/facts.test-support.ts';
import { type Match, matchNotice, type Thing } from './match-notice.ts';
import { notice, plate } from './notices.test-support.ts';

const hose = (more: Partial<Thing['plate']> = {}, made: string | null = null): Thing => ({
  kind: 'gas_hose',
  plate: plate(more),
  manufactured: made === null ? null : recorded(made),
});
const missing = (match: Match) =>
  match.kind === 'may_be_affected' ? match.missing.map(({ what }) => what) : match.kind;

describe('matchNotice', () => {
  it('says what was compared where it covers the thing', () => {
    expect(matchNotice(notice(), hose())).toEqual({
      kind: 'affected',
      because: ['maker Quillmere Hose Works', 'serial number AB1250, and the notice names AB1200–AB1399'],
    });
  });

  it.each([
    ['another kind', { ...hose(), kind: 'fuel_hose' as const }, 'it is another kind of thing'],
    ['another maker', hose({ maker: 'Tarnbeck' }), 'the maker is Tarnbeck'],
    ['another number', hose({ serialNumber: 'AB1400' }), 'serial number AB1400 is not among AB1200–AB1399'],
  ])('rules out %s, and says why', (_, thing, because) => {
    expect(matchNotice(notice(), thing)).toEqual({ kind: 'not_affected', because: [because] });
  });

  it('leaves open what is not on record, and says what would settle it', () => {
    expect(missing(matchNotice(notice(), hose({ serialNumber: null })))).toEqual(['serial number']);
    expect(missing(matchNotice(notice(), hose({ maker: null, serialNumber: null })))).toEqual([
      'maker',
      'serial number',
    ]);
    expect(missing(matchNotice(notice({ models: ['G8'] }), hose()))).toEqual(['model']);
    expect(missing(matchNotice(notice({ serials: [] }), hose({ maker: 'Quillmere' })))).toEqual([
      'maker as on the plate',
    ]);
  });

  it('does not let one number speak for several things', () => {
    expect(missing(matchNotice(notice(), hose({ serialNumber: 'AB1400', quantity: 6 })))).toEqual([
      'serial number as on the plate',
    ]);
  });

  it('rules a thing out by what is known although something else is not', () => {
    expect(matchNotice(notice(), hose({ maker: null, serialNumber: 'AB1400' })).kind).toBe('not_affected');
  });

  it.each([
    ['2025-02', 'affected'],
    ['2025-03-31', 'affected'],
    ['2025-04-01', 'not_affected'],
    ['2025', 'may_be_affected'],
    ['2024-12', 'not_affected'],
    ['2025-01-01', 'affected'],
    [null, 'may_be_affected'],
  ] as const)('takes the span of manufacture with both its ends: made %s', (made, expected) => {
    const between = { from: day('2025-01-01'), to: day('2025-03-31') };
    expect(matchNotice(notice({ manufactured: between, serials: [] }), hose({}, made)).kind).toBe(expected);
  });

  it('leaves open a month that begins before the span', () => {
    const within = { from: day('2025-01-15'), to: null };
    expect(matchNotice(notice({ manufactured: within, serials: [] }), hose({}, '2025-01')).kind).toBe(
      'may_be_affected',
    );
    expect(matchNotice(notice({ manufactured: within, serials: [] }), hose({}, '2025-02')).kind).toBe('affected');
  });

  it('covers every one of its kinds where it names nothing else', () => {
    const every = notice({ makers: [], serials: [] });
    expect(matchNotice(every, hose({ maker: null, serialNumber: null }))).toEqual({ kind: 'affected', because: [] });
  });

  it('never rules a thing out for what is not on record', () => {
    const anyText = fc.constantFrom(null, 'AB1250', 'AB1400', '1250', 'Quillmere Hose Works', 'Tarnbeck');
    const anyPlate = fc.record({
      maker: anyText,
      model: anyText,
      serialNumber: anyText,
      quantity: fc.constantFrom(1, 4),
    });
    const asked = notice({ models: ['G8', 'AB1250'] });
    fc.assert(
      fc.property(anyPlate, fc.constantFrom('maker', 'model', 'serialNumber'), (full, forgotten) => {
        const [known, less] = [full, { ...full, [forgotten]: null }].map(
          (each) => matchNotice(asked, { kind: 'gas_hose', plate: each, manufactured: null }).kind,
        );
        if (less === 'not_affected') expect(known).toBe('not_affected');
        if (less === 'affected') expect(known).toBe('affected');
      }),
      { seed: 21 },
    );
  });
});
