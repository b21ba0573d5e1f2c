/** Who changed what. */
import * as z from 'zod';
import { Id, Instant, pageOf } from '../shared.ts';

const Values = z.record(z.string(), z.unknown());
const Hash = z.string().regex(/^[0-9a-f]{64}$/);

const Actor = z
  .object({
    kind: z.string().meta({
      description: '`person`, `session`, `api_key`, `share_link` for an outsider, or `upkeep` for the program itself.',
    }),
    id: Id,
    name: z.string().optional().meta({ description: 'Absent where there is none any more.' }),
  })
  .meta({ id: 'AuditActor', description: 'Who answers for the change.' });

const About = z
  .object({
    vesselId: Id.optional(),
    vesselName: z.string().optional(),
    itemId: Id.optional(),
    itemLabel: z.string().optional(),
  })
  .meta({ id: 'AuditAbout', description: 'The vessel and the thing that it is about, where there is one.' });

const row = {
  id: Id,
  at: Instant,
  role: z.string().optional().meta({ description: 'As what they were allowed it.' }),
  credential: z.string().optional().meta({ description: 'The session or key that was used, `kind:id`.' }),
  requestId: z.string(),
  verb: z.string().meta({ description: 'What was done.', example: 'change_vessel' }),
  subject: z.string().meta({ description: 'The kind of thing that was changed.', example: 'vessel' }),
  subjectId: Id,
  before: Values.optional().meta({ description: 'As it was; absent where there was nothing.' }),
  after: Values.optional().meta({ description: 'As it is since; absent where nothing is left.' }),
};

export const AuditEntry = z
  .object({
    ...row,
    actor: Actor,
    about: About,
    sequence: z
      .int()
      .optional()
      .meta({ description: 'Its place in the chain; absent for what is older than the chain.' }),
    hash: Hash.optional().meta({
      description: 'SHA-256 over the exported row without `hash`, written as in RFC 8785.',
    }),
  })
  .meta({
    id: 'AuditEntry',
    example: {
      id: '0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d',
      at: '2026-11-25T08:12:00.000Z',
      role: 'manager',
      credential: 'api_key:0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e',
      requestId: '6f1f2a52-7c57-4c3e-9d1b-3a4d5c6e7f80',
      verb: 'change_vessel',
      subject: 'vessel',
      subjectId: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a',
      before: { rig: 'sloop' },
      after: { rig: 'ketch' },
      actor: { kind: 'api_key', id: '0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e', name: 'office' },
      about: { vesselId: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a', vesselName: 'Marsh Harrier' },
      sequence: 17,
      hash: '3a5e0c2f9b1d48e7a6c0f2d4b8e91735c6a8f0e2d4b69718a3c5e7f90b2d4f68',
    },
  });
export type AuditEntry = z.infer<typeof AuditEntry>;
export const AuditPage = pageOf(AuditEntry, 'AuditPage');
export type AuditPage = z.infer<typeof AuditPage>;

/** What the filters take. */
export const Verb = z.string().regex(/^[a-z_]{1,60}$/, 'must be a verb such as change_vessel');
export const Subject = z.string().regex(/^[a-z_]{1,40}$/, 'must be a kind of thing such as vessel');
export const ActorText = z
  .string()
  .regex(/^[a-z_]{1,20}:[0-9a-f-]{36}$/, 'must be a kind and an id: api_key:0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e');
