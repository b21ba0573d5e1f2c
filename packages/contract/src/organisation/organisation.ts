/** Organisations: the one the credential is at, and those a person belongs to. */
import * as z from 'zod';
import { Id, pageOf, TimeZone, words } from '../shared.ts';
import { RoleCode } from './role.ts';

const ID = '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a';
const name = words(120).meta({ example: 'Curlew Sailing School' });

export const NewOrganisation = z
  .strictObject({ name, timeZone: TimeZone })
  .meta({ id: 'NewOrganisation', example: { name: 'Curlew Sailing School', timeZone: 'Europe/Oslo' } });
export type NewOrganisation = z.infer<typeof NewOrganisation>;

export const OrganisationChange = z
  .strictObject({ name: name.optional(), timeZone: TimeZone.optional() })
  .meta({ id: 'OrganisationChange', description: 'What is absent stays.', example: { name: 'Curlew Sail Training' } });
export type OrganisationChange = z.infer<typeof OrganisationChange>;

export const Organisation = z
  .object({ id: Id, name: z.string(), timeZone: z.string(), version: z.int().meta({ description: 'Its `ETag`.' }) })
  .meta({
    id: 'Organisation',
    example: { id: ID, name: 'Curlew Sailing School', timeZone: 'Europe/Oslo', version: 1 },
  });
export type Organisation = z.infer<typeof Organisation>;

const Belonging = z.object({ id: Id, name: z.string(), timeZone: z.string(), role: RoleCode }).meta({
  id: 'Belonging',
  example: { id: ID, name: 'Curlew Sailing School', timeZone: 'Europe/Oslo', role: 'owner' },
});
export const BelongingPage = pageOf(Belonging, 'BelongingPage');
export type BelongingPage = z.infer<typeof BelongingPage>;

export const SwitchTo = z
  .strictObject({ organisationId: Id })
  .meta({ id: 'SwitchTo', example: { organisationId: ID } });
export type SwitchTo = z.infer<typeof SwitchTo>;
