/** Every case of tests/cases/identifiers, asked through HTTP of a started server. */
import { readdirSync, readFileSync } from 'node:fs';
import { serve } from '@garboard/api/serve.test-support.ts';
import type { ReadIdentifier, ReadIdentifiers } from '@garboard/contract/vessel/identifier.ts';
import { afterAll, describe, expect, it } from 'vitest';
import { app, signedIn } from '../support/api.ts';

const FOLDER = new URL('../../cases/identifiers/', import.meta.url);
const server = await serve(app);
afterAll(() => server.close());
const viewer = await signedIn('viewer', undefined, (path, init) => fetch(server.address + path, init));

type Case<Input, Expect> = {
  readonly case: string;
  readonly title: string;
  readonly input: Input;
  readonly expect: Expect;
};
type Expectation = {
  readonly kind: string;
  readonly why?: string;
  readonly doubt?: string;
};
type BitsInput = {
  readonly hex: string;
  readonly from: number;
  readonly to: number;
};

function casesIn<Input, Expect>(file: string): readonly Case<Input, Expect>[] {
  return JSON.parse(readFileSync(new URL(`${file}.json`, FOLDER), 'utf8'));
}

async function read(asked: object): Promise<ReadIdentifier | undefined> {
  const { status, text, body } = await viewer.post<ReadIdentifiers>('/v1/identifiers/read', asked);
  expect(status, text).toBe(200);
  expect(body.identifiers).toHaveLength(1);
  return body.identifiers[0];
}

const ASKED: Record<string, (text: string) => object> = {
  hin: (hin) => ({ hin }),
  imo: (imo) => ({ imo }),
  mmsi: (mmsi) => ({ mmsi }),
  'call-sign': (callSign) => ({ callSign }),
  'beacon-id': (id) => ({ beaconIds: [id] }),
};

it('leaves no file of cases out', () => {
  const files = readdirSync(FOLDER).filter((file) => file.endsWith('.json'));
  expect(files.sort()).toEqual(
    [...Object.keys(ASKED), 'beacon-bits', 'beacon-message'].map((each) => `${each}.json`).sort(),
  );
});

describe.each(Object.entries(ASKED))('a started server, on %s', (file, asked) => {
  it.each(casesIn<string, Expectation>(file))(
    '$case $input: $title',
    async ({ input, expect: { why, doubt, ...parts } }) => {
      const identifier = await read(asked(input));

      expect(identifier).toMatchObject({ ...parts, text: input });
      if (identifier?.kind === 'not_one') expect(identifier.why.startsWith(why ?? '')).toBe(true);
      else expect(identifier?.doubts).toEqual(doubt === undefined ? [] : [expect.stringContaining(doubt)]);
    },
  );
});

/** A whole message is no id, but its id is found in it; the parities are not told apart over HTTP. */
it.each(casesIn<string, { readonly id: string }>('beacon-message'))(
  '$case: $title',
  async ({ input, expect: { id } }) => {
    expect(await read({ beaconIds: [input] })).toMatchObject({
      kind: 'not_one',
      why: expect.stringContaining(`its id is ${id}`),
    });
  },
);

/** Which decoded number those bits are. */
const BITS: Record<string, (beacon: ReadIdentifier) => number> = {
  '27-36': (beacon) => ('country' in beacon && typeof beacon.country === 'object' ? (beacon.country?.mid ?? -1) : -1),
  '41-60': (beacon) => ('mmsi' in beacon ? Number(beacon.mmsi?.slice(3)) : -1),
};

it.each(casesIn<BitsInput, { readonly bits: string }>('beacon-bits'))(
  '$case: $title',
  async ({ input: { hex, from, to }, expect: { bits } }) => {
    const beacon = await read({ beaconIds: [hex] });

    expect(beacon && BITS[`${from}-${to}`]?.(beacon)).toBe(Number.parseInt(bits, 2));
  },
);
