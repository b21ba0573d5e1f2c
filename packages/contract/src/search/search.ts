/** What answers to some words: vessels, things aboard, rules. */
import * as z from 'zod';
import { Id } from '../shared.ts';

const FoundVessel = z.object({ id: Id, name: z.string(), type: z.string().optional() }).meta({ id: 'FoundVessel' });

const FoundItem = z
  .object({
    id: Id,
    kind: z.string(),
    label: z.string(),
    zone: z.string().optional(),
    serialNumber: z.string().optional(),
    withdrawn: z.boolean().meta({ description: 'Taken out of use.' }),
    vessel: z.object({ id: Id, name: z.string() }),
  })
  .meta({ id: 'FoundItem' });

const FoundRule = z
  .object({ id: z.string(), inWords: z.string(), publication: z.string().nullable(), clause: z.string().nullable() })
  .meta({ id: 'FoundRule' });

export const SearchAnswer = z
  .object({ vessels: z.array(FoundVessel), things: z.array(FoundItem), rules: z.array(FoundRule) })
  .meta({
    id: 'SearchAnswer',
    description: 'The best of each, at most `limit`.',
    example: {
      vessels: [{ id: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a', name: 'Marsh Harrier', type: 'sloop' }],
      things: [
        {
          ...{ id: '0198c5a3-11d2-7f40-8b6e-0c9d3e2f1a4b', kind: 'liferaft', label: 'Liferaft, 6 persons' },
          ...{ serialNumber: 'M-4471', withdrawn: false },
          vessel: { id: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a', name: 'Marsh Harrier' },
        },
      ],
      rules: [
        {
          ...{ id: 'raft-solas', publication: 'SOLAS', clause: 'III/20.8.1' },
          inWords: 'An inflatable liferaft is serviced at intervals of not more than 12 months.',
        },
      ],
    },
  });
export type SearchAnswer = z.infer<typeof SearchAnswer>;
