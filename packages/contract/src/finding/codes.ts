/** The words a finding is written in. */
import * as z from 'zod';
import { CAPACITY_CODES } from '../item/fact.ts';
import { Id, words } from '../shared.ts';

export const HazardCode = z
  .enum(['life', 'watertight_integrity', 'fire_and_gas', 'rig', 'steering', 'propulsion', 'equipment', 'value'])
  .meta({ id: 'HazardCode', description: 'What it threatens.' });

export const UrgencyCode = z
  .enum(['before_use', 'within_weeks', 'this_season', 'next_lay_up', 'observe'])
  .meta({ id: 'UrgencyCode', description: 'When it must be dealt with. It gives the finding its date.' });

export const SeenCode = z
  .enum(['unchanged', 'worse', 'better', 'gone', 'not_examined'])
  .meta({ id: 'SeenCode', description: 'What somebody saw of it.' });

export const TradeCode = z
  .enum([
    'rigger',
    'gas_engineer',
    'marine_engineer',
    'electrician',
    'sailmaker',
    'liferaft_service_station',
    'boatbuilder',
    'painter',
    'compass_adjuster',
    'electronics_technician',
    'own_crew',
  ])
  .meta({ id: 'TradeCode', description: 'Whom the work is for.' });

export const StateCode = z
  .enum([
    'found',
    'proposed',
    'planned',
    'in_hand',
    'reported_done',
    'deferred',
    'accepted',
    'verified',
    'entered_in_error',
    'merged',
  ])
  .meta({ id: 'FindingStateCode', description: 'How it stands with the work. The last three have ended.' });

export const ZoneCode = z
  .string()
  .regex(/^[a-z][a-z0-9_]{0,39}$/, 'must be a place of the route, in lower case with underscores')
  .meta({ id: 'ZoneCode', description: 'The place aboard, as a route names it.', example: 'gas_locker' });

export const Evidence = z
  .strictObject({
    kind: z.enum(['photograph', 'invoice', 'certificate', 'reading', 'looked']),
    words: words(500).meta({ description: 'What it shows.' }),
    evidenceId: Id.optional().meta({ description: 'The file, where there is one.' }),
  })
  .meta({ id: 'FindingEvidence', example: { kind: 'photograph', words: 'The new hose, dated 2026' } });
export type Evidence = z.infer<typeof Evidence>;

export const DoneBy = z
  .strictObject({ name: words(160), capacity: z.enum(CAPACITY_CODES), certificate: words(160).optional() })
  .meta({
    id: 'WorkDoneBy',
    description: 'Who did the work; absent: whoever reports it.',
    example: { name: 'Ines Vale', capacity: 'gas_engineer', certificate: 'G-2041' },
  });
