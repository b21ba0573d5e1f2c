/** Words of survey visits. */
import type { components } from '@garboard/client/generated/api.d.ts';
import { counted, sentenceCase } from '../ui/number-words.ts';

type Schemas = components['schemas'];
export type PurposeCode = Schemas['VisitPurposeCode'];
export type CraftCode = Schemas['CraftCode'];
export type LimitationReason = Schemas['LimitationReasonCode'];
export type MeasureCode = Schemas['MeasureCode'];

export const purposeWords: Record<PurposeCode, string> = {
  pre_purchase: 'before a purchase',
  condition: 'condition',
  insurance: 'for the insurer',
  damage: 'damage',
  out_of_water: 'out of the water',
  statutory: 'required by law or certificate',
  deficiency_list: 'an authority’s own list',
  house_check: 'our own look',
};

export const craftWords: Record<CraftCode, string> = {
  sailing_yacht: 'sailing yacht',
  motor_boat: 'motor boat',
  open_boat: 'open boat',
};

export const waterWords: Record<Schemas['WaterCode'], string> = {
  afloat: 'afloat',
  ashore: 'ashore',
  in_slings: 'in slings',
};

export const reasonWords: Record<LimitationReason, string> = {
  no_access_lining: 'behind a lining',
  no_access_stowed_gear: 'behind stowed gear',
  not_dismantled: 'not dismantled',
  coating_not_removed: 'coating not removed',
  afloat: 'she was afloat',
  in_slings_short_time: 'in slings for a short time',
  mast_stepped_head_height_only: 'mast stepped: to head height only',
  tank_not_opened: 'tank not opened',
  no_power: 'no power',
  engine_not_run: 'engine not run',
  wet_or_frozen_surface: 'surface wet or frozen',
  too_recently_lifted: 'too recently lifted',
  ice_or_weather: 'ice or weather',
  owner_refused: 'the owner refused',
  item_not_on_board: 'not on board',
  specialist_scope: 'for a specialist',
};

export const measureWords: Record<MeasureCode, string> = {
  moisture: 'moisture, by comparison',
  thickness: 'thickness, mm',
  length: 'length or bore, mm',
  blisters: 'blisters per m²',
  rig_tension: 'rig tension, kgf',
  rudder_play: 'rudder play, mm',
  shaft_play: 'shaft play, mm',
  battery_voltage: 'battery, V',
  insulation: 'insulation, MΩ',
  tap_test_dull_area: 'dull area by tap test, mm²',
};

export const checkWords: Record<Schemas['Reading']['check'], string> = {
  in_check: 'instrument in check',
  out_of_check: 'instrument out of check',
  unknown: 'check of the instrument not on record',
};

const list = {
  title: 'Who came and looked',
  answer: (open: number) =>
    open === 0 ? 'No visit is open.' : `${sentenceCase(counted(open, 'visit', 'visits'))} not completed yet.`,
  caption: 'Survey visits, the latest first',
  columns: { day: 'Day', vessel: 'Vessel', purpose: 'What for', by: 'By', state: 'State' },
  open: 'open',
  completed: (day: string) => `completed ${day}`,
  nobody: 'nobody named',
  waiting: 'Reading the visits …',
  failed: 'The visits could not be read',
  empty: 'No visit is on record yet.',
  emptyHow: 'A visit begins on the page of its vessel.',
};

const start = {
  link: 'Start a visit',
  title: (vessel: string) => `A visit to ${vessel}`,
  intro: 'What the last visits left open stands on the route, and is answered before this one can be completed.',
  back: 'Back to her page',
  purpose: 'What for',
  startedOn: 'On which day',
  craft: 'Which route',
  water: 'Afloat or ashore',
  ashoreSince: 'Ashore since',
  place: 'Where',
  client: 'Asked for by',
  instructions: 'What was asked for',
  weather: 'Weather',
  surveyor: 'Surveyor',
  qualification: 'Their qualification',
  ownerAttended: 'Did the owner attend?',
  no: 'no',
  yes: 'yes',
  maker: 'Instrument: maker',
  makerHelp: 'Leave it empty where nothing is measured. More can be added through the API.',
  model: 'Instrument: model',
  scale: 'Instrument: scale',
  nextCheckOn: 'Instrument: next check due',
  submit: 'Start',
};

const one = {
  title: (vessel: string, day: string) => `${vessel}, ${day}`,
  waiting: 'Reading the visit …',
  failed: 'The visit could not be read',
  facts: (purpose: string, water: string, place: string | undefined) =>
    [purpose, water, place].filter(Boolean).join(', '),
  closed:
    'Never enter a locker or tank that can close on you or whose air is not known to be good. A boat on shores is for the yard: if a shore is slack keep clear and call the foreman.',
  moisture: 'A moisture meter compares; it does not measure water content.',
  outside: 'does not keep',
  left: (count: number) => `${sentenceCase(counted(count, 'answer is', 'answers are'))} still missing.`,
  nothingLeft: 'Everything is answered.',
  complete: 'Complete and seal',
  completing: 'Sealing …',
  sealed: (day: string) => `Completed on ${day} and sealed: nothing of it changes.`,
  hash: 'SHA-256 of the sealed copy',
  take: 'Take the sealed copy',
  route: 'From place to place',
  place: 'This place',
  line: 'One line',
  kinds: {
    sound: 'sound',
    finding: 'something is not right',
    not_examined: 'not examined',
    limitation: 'something could not be examined',
    reading: 'a reading',
    referral: 'for a specialist',
  },
  answered: { sound: 'sound', sighting: 'something seen', not_examined: 'not examined' },
  words: 'In words',
  reason: 'Why not',
  hazard: 'Threatens',
  urgency: 'To be dealt with',
  trade: 'For whom',
  dueOn: 'By',
  deadline: 'Their deadline',
  theList: 'the authority’s own list',
  point: 'Survey point',
  measure: 'What is measured',
  value: 'Value',
  instrument: 'Instrument',
  noInstrument: 'none',
  write: 'Write',
  sighting: 'Seen',
  seen: (what: string) => `Seen of: ${what}`,
  evidence: 'What shows it',
  still: 'still not examined',
  lifted: 'looked at now',
  since: (day: string) => `not examined since ${day}`,
  asked: (trade: string, day: string) => `${trade}, by ${day}`,
  notDone: 'Not written',
  addenda: 'Corrections that came afterwards',
  addendum: { name: 'Who adds it', words: 'What is to be corrected', reason: 'Why', submit: 'Add a correction' },
};

const routes = {
  title: 'In which order she is walked',
  intro:
    'The house route is common practice, no source. Change it to the order in which your people walk; visits that have begun keep theirs.',
  back: 'Back to the visits',
  link: 'Change the routes',
  craft: 'route of a',
  waiting: 'Reading the route …',
  failed: 'The route could not be read',
  nameOf: (place: number) => `Name of place ${place}`,
  up: (name: string) => `${name}: one up`,
  down: (name: string) => `${name}: one down`,
  out: (name: string) => `${name}: take it out`,
  add: 'Another place',
  addIt: 'Add it',
  notAdded: 'give it a name of its own, in letters',
  save: 'Walk it like this',
  leave: 'Leave it as it was',
  saved: 'The route is set. Visits that begin from now on walk it.',
};

const change = {
  open: 'Change what is known of the visit',
  hours: 'Hours aboard',
  noNumber: 'write a number, such as 3.5',
  submit: 'Change it',
};

export const strings = { list, start, one, change, routes };
