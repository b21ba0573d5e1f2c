/** What somebody may do, and for which vessels. */
import * as z from 'zod';
import { Id } from '../shared.ts';

export const RoleCode = z.enum(['owner', 'manager', 'surveyor', 'yard', 'viewer']).meta({
  id: 'RoleCode',
  description: 'What somebody may do. Every role reads; `viewer` changes nothing. The whole table is in docs/roles.md.',
});
export type RoleCode = z.infer<typeof RoleCode>;

export const PermissionCode = z
  .enum([
    'read',
    'record_facts',
    'keep_register',
    'answer_findings',
    'put_off_findings',
    'verify_findings',
    'survey',
    'take_originals',
    'keep_rules',
    'manage_people',
    'read_audit',
    'share',
    'keep_keys',
    'keep_organisation',
  ])
  .meta({ id: 'PermissionCode', description: 'One thing that a role may or may not do.' });

export const VesselIds = z
  .array(Id)
  .max(500)
  .meta({ id: 'VesselIds', description: 'The only vessels it is for. Absent: the whole fleet.' });
