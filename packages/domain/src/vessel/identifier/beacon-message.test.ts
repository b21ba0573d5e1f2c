import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hexOf } from './beacon.test-support.ts';
import { hexToBinary } from './beacon-bits.ts';
import { decodeBeaconId } from './beacon-id.ts';
import { decodeBeaconMessage } from './beacon-message.ts';

/** Published with its decode; its id is 2024F72524FFBFF. */
const PUBLISHED = '90127B92922BC022FF103504422535';

function turned(hex: string, places: readonly number[]): string {
  const bits = [...hexToBinary(hex)];
  for (const place of places) bits[place] = bits[place] === '0' ? '1' : '0';
  return hexOf(bits.join(''));
}

describe('a whole message', () => {
  it('gives the id without the position that it sends', () => {
    expect(decodeBeaconMessage(PUBLISHED)).toMatchObject({ kind: 'decoded', id: '2024F72524FFBFF' });
    expect(decodeBeaconId('2024F72524FFBFF')).toMatchObject({ carriesPosition: false });
  });

  it('with any one or two bits turned is refused', () => {
    const place = fc.integer({ min: 0, max: 119 });
    fc.assert(
      fc.property(fc.uniqueArray(place, { minLength: 1, maxLength: 2 }), (places) => {
        expect(decodeBeaconMessage(turned(PUBLISHED, places)).kind).toBe('not_one');
      }),
      { numRuns: 1000 },
    );
  });

  it('says which of the two fields does not agree', () => {
    expect(decodeBeaconMessage(turned(PUBLISHED, [30]))).toMatchObject({ why: expect.stringContaining('first field') });
    expect(decodeBeaconMessage(turned(PUBLISHED, [90]))).toMatchObject({
      why: expect.stringContaining('second field'),
    });
  });

  it('that calls itself short is not one of these', () => {
    expect(decodeBeaconMessage(turned(PUBLISHED, [0]))).toMatchObject({ why: expect.stringContaining('short') });
  });

  it('given as an id is refused with the id that it holds, or with what is wrong in it', () => {
    expect(decodeBeaconId(PUBLISHED)).toMatchObject({ why: expect.stringContaining('its id is 2024F72524FFBFF') });
    expect(decodeBeaconId(turned(PUBLISHED, [30]))).toMatchObject({ why: expect.stringContaining('parity') });
  });
});
