/** Words of the rules and of each rule's page. */
import type { components } from '@garboard/client/generated/api.d.ts';
import { counted, sentenceCase } from '../ui/number-words.ts';
import type { SchemeCode } from './codes.ts';

type Reads = components['schemas']['RuleReads'];

export const strings = {
  title: 'Which rules a date can come from',
  answer: (shown: number, all: number) =>
    shown === all
      ? `${sentenceCase(counted(all, 'rule', 'rules'))}, each with where it stands and how far that was checked.`
      : `${sentenceCase(counted(shown, 'rule', 'rules'))} of ${all}, each with where it stands and how far that was checked.`,
  first: 'Flag state, local law and the maker’s instructions come first. “Common practice, no source” is just that.',
  filters: 'Narrow the list',
  filter: { scheme: 'scheme', kind: 'thing', weight: 'weight', any: 'any' },
  takeAway: 'Show every rule',
  nothingMatches: 'No rule answers to these words.',
  nothingMatchesHow: 'Take one of them away.',
  always: 'Applies to every vessel.',
  waiting: 'Reading the rules …',
  failed: 'The rules could not be read',
  by: (weight: string) => sentenceCase(`by ${weight}`),
  rule: {
    asksOf: (who: string) => `what ${who} asks`,
    ofKinds: (count: number) => `of ${counted(count, 'kind', 'kinds')} of thing`,
    back: 'Every rule',
    asks: 'What it asks',
    noDuty: 'Nothing with a date of its own.',
    only: (kinds: string) => `Only ${kinds}.`,
    startsAnew: 'The clock starts anew when it is',
    startsAnewEither: 'The clock starts anew when it is either of these:',
    neverAnew: 'No act starts the clock anew: the date stands where it is printed or given.',
    by: (who: string) => ` by ${who}`,
    anybody: ', whoever does it',
    whileNotRecorded: 'While something is not on record',
    checks: 'What it holds against what is recorded',
    alsoAsks: 'What else the clause asks, and is not worked out here',
    source: 'Where it stands',
    nowhere: 'No publication.',
    partFromMemory: (what: string) => `From memory: ${what}.`,
    behind: (weight: string) => sentenceCase(`by ${weight}`),
    things: 'Which things',
    noThings: 'No thing in particular: it is about the vessel.',
    reads: 'What it reads',
    readsNothing: 'Nothing that is recorded of a thing.',
    facts: 'Facts',
    tests: 'Tests told apart',
    attributes: 'Also asked',
    events: 'Events',
    situations: 'Situation',
    found: (where: string) => `usually found: ${where}`,
    waiting: 'Reading the rule …',
    failed: 'The rule could not be read',
  },
  example: {
    heading: 'A worked example',
    invented: (kind: string) => `An invented ${kind}, worked out by the program just now.`,
    facts: 'On record',
    events: 'Planned',
    figures: 'Also known',
    request: 'The same as a request',
    requestHow:
      'POST /v1/due-dates/explain, with an API key. Nothing is stored. The whole of it is described at /docs.',
    waiting: 'Working it out …',
    failed: 'The example could not be worked out',
  },
};

/** Who asks, as it stands in "What … asks of a liferaft"; for a law that is named, its name. */
export const whoAsks: Record<SchemeCode, string> = {
  solas: 'SOLAS',
  us_recreational: 'US law for recreational boats',
  us_sailing_school: 'US law for sailing school vessels',
  us_small_passenger: 'US law for small passenger vessels',
  us_offshore_supply: 'US law for offshore supply vessels',
  us_documentation: 'US documentation',
  canada_lifesaving: 'Canadian law on life-saving',
  uk_small_commercial: 'the UK code for small commercial vessels',
  uk_workboat: 'the UK workboat code',
  uk_inland: 'the UK inland boat scheme',
  eu_inland: 'the EU inland standard',
  caribbean_small_commercial: 'the Caribbean small commercial code',
  harmonised_survey: 'the harmonised survey system',
  radio_licence: 'the radio licence',
  offshore_racing: 'the offshore racing regulation',
  bs5306: 'BS 5306',
  nfpa10: 'NFPA 10',
  insurer: 'an insurer',
  maker: 'the maker',
  common_practice: 'common practice',
  own: 'our own rule',
  historic: 'a rule no longer in force',
};

export const eventWords: Record<Reads['events'][number], string> = {
  inspection: 'inspection by an authority',
  haul_out: 'haul-out',
  liferaft_service: 'liferaft service',
  race_start: 'race start',
  grounding: 'grounding',
  collision: 'collision',
  lightning: 'lightning',
  fire: 'fire',
  structural_repair: 'structural repair',
  change_of_owner: 'change of owner',
  gale: 'gale',
  alteration: 'alteration',
  gas_system_change: 'change of the gas system',
};

export const situationWords: Record<Reads['situations'][number], string> = {
  place: 'afloat or ashore',
  use: 'in commission or laid up',
  dismantled: 'dismantled or not',
  underRepair: 'under repair or not',
};
