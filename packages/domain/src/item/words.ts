/** The trade's words for acts, tests and people, to stand inside a sentence. */
import { recordedDateInWords } from '../calendar/words.ts';
import type { Reset } from '../rule/rule.ts';
import type { VesselEventKind } from '../vessel/situation.ts';
import type { Capacity, Fact, FactKind, TestKind } from './fact.ts';

const TEST_WORDS: Record<TestKind, string> = {
  visual: 'visual look',
  internal_examination: 'internal examination',
  extended_service: 'extended service',
  hydrostatic: 'hydrostatic test',
  gas_inflation: 'gas-inflation test',
  necessary_additional_pressure: 'necessary-additional-pressure test',
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
  bolt_drawn: 'drawing of a sample bolt',
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
  details_confirmed: 'confirmation of the details',
  discharge: 'discharge',
};

/** Services that are called by what was done rather than by the service. */
const CHANGES: ReadonlySet<TestKind> = new Set(['battery', 'oil_and_filter', 'impeller', 'coolant', 'belts']);

/** The act as a thing: "the service", "the gas-inflation test". */
const ACT_WORDS: Record<FactKind, string> = {
  manufactured: 'date of manufacture',
  installed: 'date of fitting',
  printed_expiry: 'date printed on it',
  inspected: 'inspection',
  serviced: 'service',
  tested: 'test',
  replaced: 'replacement',
  overhauled: 'overhaul',
  extended: 'extension',
  activated: 'use',
  moved: 'move',
  meter: 'meter reading',
  withdrawn: 'withdrawal',
};

/** How a fact opens a sentence: "Serviced on 22 September 2025". */
const DONE_WORDS: Record<FactKind, string> = {
  manufactured: 'Made',
  installed: 'Fitted',
  printed_expiry: 'Printed to run out',
  inspected: 'Inspected',
  serviced: 'Serviced',
  tested: 'Tested',
  replaced: 'Replaced by a new one',
  overhauled: 'Overhauled',
  extended: 'Extended',
  activated: 'Used',
  moved: 'Moved',
  meter: 'Meter read',
  withdrawn: 'Withdrawn',
};

const CAPACITY_WORDS: Record<Capacity, string> = {
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
  liferaft_service_station: 'a liferaft service station',
  lifejacket_service_station: 'a lifejacket service station',
  hydrostatic_release_service_station: 'a hydrostatic release service station',
  shore_based_maintenance_provider: 'a shore-based maintenance provider',
  radio_surveyor: 'a radio surveyor',
  fire_equipment_technician: 'a fire-equipment technician',
  compass_adjuster: 'a compass adjuster',
  measurement_surveyor: 'a measurement surveyor',
  registered_examiner: 'a registered examiner',
  maker: 'the maker',
};

/** Each event, and where a planned one is usually written down. */
const EVENT_WORDS: Record<VesselEventKind, { readonly event: string; readonly planIn: string }> = {
  inspection: { event: 'inspection', planIn: "the authority's letter" },
  haul_out: { event: 'haul-out', planIn: "the yard's booking" },
  liferaft_service: { event: 'liferaft service', planIn: "the service station's booking" },
  race_start: { event: 'race start', planIn: 'the notice of race' },
  grounding: { event: 'grounding', planIn: 'the log book' },
  collision: { event: 'collision', planIn: 'the log book' },
  lightning: { event: 'lightning strike', planIn: 'the log book' },
  fire: { event: 'fire', planIn: 'the log book' },
  structural_repair: { event: 'structural repair', planIn: "the yard's order" },
  change_of_owner: { event: 'change of owner', planIn: 'the bill of sale' },
  gale: { event: 'gale', planIn: 'the log book' },
  alteration: { event: 'alteration', planIn: "the yard's order" },
  gas_system_change: { event: 'change to the gas system', planIn: "the gas engineer's order" },
};

/** "haul-out", to stand after "the next". */
export function eventInWords(event: VesselEventKind): string {
  return EVENT_WORDS[event].event;
}

/** Where somebody finds out when the next one is. */
export function planOfEvent(event: VesselEventKind): string {
  return EVENT_WORDS[event].planIn;
}

export function capacitiesInWords(capacities: readonly Capacity[]): string {
  return capacities.map((capacity) => CAPACITY_WORDS[capacity]).join(' or ');
}

/** "gas-inflation test", "service", "date of fitting". */
export function actInWords(act: FactKind, test?: TestKind): string {
  return test ? TEST_WORDS[test] : ACT_WORDS[act];
}

/** "Serviced on 22 September 2025", "Gas-inflation test on 1 July 2021". */
export function factInWords(fact: Fact): string {
  return `${openingOf(fact)} ${recordedDateInWords(fact.on)}`;
}

function openingOf({ fact, test }: Fact): string {
  const calledByTest = test && (fact === 'tested' || fact === 'inspected' || CHANGES.has(test));
  return calledByTest ? capitalised(TEST_WORDS[test]) : DONE_WORDS[fact];
}

/** "a gas-inflation test or a hydrostatic test", each once. */
export function testsInWords(tests: readonly TestKind[]): string {
  return [...new Set(tests)].map((test) => withArticle(TEST_WORDS[test])).join(' or ');
}

/** "a gale", "an inspection". */
export function withArticle(words: string): string {
  return `${/^[aeio]/.test(words) ? 'an' : 'a'} ${words}`;
}

/** "fitted", "used", to stand after "it was". */
export function doneInWords(act: FactKind): string {
  return DONE_WORDS[act].toLowerCase();
}

/** What a duty's first reset is called: "service", "gas-inflation test". */
export function resetInWords(reset: Reset | undefined): string {
  return reset ? actInWords(reset.act, reset.tests?.[0]) : 'act';
}

export function capitalised(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
