/** What a code of the API means, and what else has to be stated with it, for somebody who writes a request. */
import type { SituationPart, VesselEventKind } from '../vessel/situation.ts';
import type { FactKind } from './fact.ts';

export const FACT_MEANINGS: Record<FactKind, string> = {
  manufactured: 'made on that day, or in that month or year, by its plate',
  installed: 'fitted or put into use; of a document: issued',
  printed_expiry: 'printed or stamped on it, to run out on that day, month or year: `on` is the date that is printed',
  inspected: 'looked at, examined or surveyed; `test` says which examination, where a rule tells them apart',
  serviced: 'serviced; `test` says what was done, where a rule tells services apart',
  tested: 'tested; `test` says which test',
  replaced: 'a new one was put in its place on that day: what was said of the old one counts no more',
  overhauled: 'taken apart and put in order',
  extended: 'permitted by an authority to be late: `on` the day of the record, `until` the last day permitted',
  activated: 'used in earnest: fired, let off, switched on',
  moved: 'taken off, lent or sent ashore',
  meter: 'what its meter read: `reading` with `value` and `unit` (`hours` or `sea_miles`)',
  withdrawn: 'taken out of use for good',
};

export const EVENT_MEANINGS: Record<VesselEventKind, string> = {
  inspection: 'an inspection or survey by the authority or examiner, held or planned',
  haul_out: 'a time out of the water, held or planned',
  liferaft_service: 'the liferaft is at its service station, held or planned',
  race_start: 'the start of a race, held or planned',
  grounding: 'she touched the ground unintentionally',
  collision: 'she struck another vessel, a quay or something afloat, or was struck',
  lightning: 'she was struck by lightning',
  fire: 'there was a fire aboard',
  structural_repair: 'her structure was repaired',
  change_of_owner: 'she changed owner, or her registered details changed',
  gale: 'she lay through a gale',
  alteration: 'her structure, electrics, iron or an installation was altered',
  gas_system_change: 'a regulator, hose or other part of the gas system was changed',
};

export const SITUATION_MEANINGS: Record<SituationPart, string> = {
  place: '`afloat` or `ashore`',
  use: '`in_commission`, `laid_up` or `out_of_service`',
  dismantled: 'whether her gear is taken off her',
  underRepair: 'whether she is under repair',
};
