/** The words for the API's codes. One place, so that another language is another file. */
import type { components } from '@garboard/client/generated/api.d.ts';

type Schemas = components['schemas'];
export type StandingCode = Schemas['StandingCode'];
export type WeightCode = Schemas['WeightCode'];
export type SchemeCode = Schemas['SchemeCode'];
export type FactCode = Schemas['NewFact']['fact'];
export type TestCode = NonNullable<Schemas['NewFact']['test']>;
export type CapacityCode = NonNullable<Schemas['DoneBy']['capacity']>;
export type EvidenceCode = NonNullable<Schemas['NewFact']['evidence']>;
export type OutcomeCode = NonNullable<Schemas['NewFact']['outcome']>;
export type ActionKind = Schemas['Action']['kind'];

export const standingWords: Record<StandingCode, string> = {
  overdue: 'Overdue',
  due: 'Due',
  in_date: 'In date',
  unknown: 'Unknown',
};

/** What stands behind it, as it follows "by …". */
export const weightWords: Record<WeightCode, string> = {
  law: 'law',
  certificate: 'certificate',
  insurer: 'an insurer’s terms',
  maker: 'the maker',
  common_practice: 'common practice',
  own: 'the house’s own rule',
};

export const schemeWords: Record<SchemeCode, string> = {
  solas: 'SOLAS',
  us_recreational: 'US recreational',
  us_sailing_school: 'US sailing school vessels',
  us_small_passenger: 'US small passenger vessels',
  us_offshore_supply: 'US offshore supply vessels',
  us_documentation: 'US documentation',
  canada_lifesaving: 'Canada, life-saving',
  uk_small_commercial: 'UK small commercial',
  uk_workboat: 'UK workboats',
  uk_inland: 'UK inland',
  eu_inland: 'EU inland',
  caribbean_small_commercial: 'Caribbean small commercial',
  harmonised_survey: 'harmonised survey',
  radio_licence: 'radio licence',
  offshore_racing: 'offshore racing',
  bs5306: 'BS 5306',
  nfpa10: 'NFPA 10',
  insurer: 'insurer',
  maker: 'maker',
  common_practice: 'common practice',
  own: 'the house’s own rule',
  historic: 'historic rules',
};

/** A fact as it stands in a list of facts. */
export const factWords: Record<FactCode, string> = {
  manufactured: 'made',
  installed: 'fitted',
  printed_expiry: 'printed expiry',
  inspected: 'inspected',
  serviced: 'serviced',
  tested: 'tested',
  replaced: 'replaced',
  overhauled: 'overhauled',
  extended: 'extended',
  activated: 'used',
  moved: 'moved',
  meter: 'meter read',
  withdrawn: 'taken out of use',
};

export const outcomeWords: Record<OutcomeCode, string> = {
  passed: 'passed',
  failed: 'failed',
  partly: 'partly done',
};

export const testWords: Record<TestCode, string> = {
  visual: 'visual check',
  internal_examination: 'internal examination',
  extended_service: 'extended service',
  hydrostatic: 'hydrostatic test',
  gas_inflation: 'gas-inflation test',
  necessary_additional_pressure: 'necessary additional pressure test',
  working_pressure: 'working-pressure test',
  crack_test: 'crack test',
  valve_examination: 'valve examination',
  onboard_check: 'check aboard',
  drain: 'drain test',
  self_test: 'self-test',
  function: 'function test',
  full_function: 'full test',
  examination: 'thorough examination',
  weighing: 'weighing',
  inflation_24_hours: '24-hour inflation test',
  load_test: 'load test',
  bolt_drawn: 'sample bolt drawn',
  compass_swing: 'compass swing',
  out_of_water: 'out-of-water examination',
  initial_survey: 'initial survey',
  annual_survey: 'annual survey',
  intermediate_survey: 'intermediate survey',
  renewal_survey: 'renewal survey',
  tightness: 'tightness test',
  acceptance: 'acceptance test',
  annual_test: 'annual test',
  battery: 'battery change',
  oil_and_filter: 'oil and filter change',
  impeller: 'impeller change',
  coolant: 'coolant change',
  belts: 'belt change',
  belt_inspection: 'inspection of the belts',
  details_confirmed: 'details confirmed or amended',
  discharge: 'discharge',
};

export const capacityWords: Record<CapacityCode, string> = {
  owner_or_skipper: 'owner or skipper',
  crew: 'crew',
  competent_person: 'competent person',
  surveyor: 'surveyor',
  marine_inspector: 'marine inspector',
  rigger: 'rigger',
  gas_engineer: 'gas engineer',
  marine_engineer: 'marine engineer',
  electrician: 'electrician',
  sailmaker: 'sailmaker',
  yard: 'yard',
  liferaft_service_station: 'approved liferaft service station',
  lifejacket_service_station: 'lifejacket service station',
  hydrostatic_release_service_station: 'hydrostatic release service station',
  shore_based_maintenance_provider: 'shore-based maintenance provider',
  radio_surveyor: 'radio surveyor',
  fire_equipment_technician: 'fire equipment technician',
  compass_adjuster: 'compass adjuster',
  measurement_surveyor: 'measurement surveyor',
  registered_examiner: 'registered examiner',
  maker: 'maker',
};

/** Who has to do it, as it follows "by …". */
export const byWhomWords: Record<CapacityCode, string> = {
  owner_or_skipper: 'the owner or skipper',
  crew: 'the crew',
  competent_person: 'a competent person',
  surveyor: 'a surveyor',
  marine_inspector: 'a marine inspector',
  rigger: 'a rigger',
  gas_engineer: 'a gas engineer',
  marine_engineer: 'a marine engineer',
  electrician: 'an electrician',
  sailmaker: 'a sailmaker',
  yard: 'a yard',
  liferaft_service_station: 'an approved liferaft service station',
  lifejacket_service_station: 'a lifejacket service station',
  hydrostatic_release_service_station: 'a hydrostatic release service station',
  shore_based_maintenance_provider: 'a shore-based maintenance provider',
  radio_surveyor: 'a radio surveyor',
  fire_equipment_technician: 'a fire equipment technician',
  compass_adjuster: 'a compass adjuster',
  measurement_surveyor: 'a measurement surveyor',
  registered_examiner: 'a registered examiner',
  maker: 'the maker',
};

export const evidenceWords: Record<EvidenceCode, string> = {
  certificate: 'a certificate',
  stamped: 'stamped on the thing',
  printed: 'printed on the thing',
  record: 'a log book or invoice',
  owner_statement: 'somebody’s word',
  unknown: 'nothing yet',
};
