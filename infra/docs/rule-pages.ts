/** Every page of docs/rules that the catalogue makes: one a rule, and an index by class. */
import { findItemKind, ITEM_CLASSES, type ItemClass } from '@garboard/domain/item/item-kind.ts';
import type { Rule } from '@garboard/domain/rule/rule.ts';
import { RULES } from '@garboard/domain/rule/rules.ts';
import { SCHEMES } from '@garboard/domain/rule/scheme.ts';
import { publicationOf, STATUS, table } from './markdown.ts';
import { GENERATED, rulePage } from './rule-page.ts';

/** From the file's name to its text. */
export function rulePages(): ReadonlyMap<string, string> {
  return new Map([['index.md', indexPage()], ...RULES.map((rule) => [`${rule.id}.md`, rulePage(rule)] as const)]);
}

const CLASS_WORDS: Record<ItemClass, string> = {
  rigging: 'Standing and running rigging',
  hoses: 'Hoses and regulators',
  flares: 'Flares and distress signals',
  liferaft: 'Liferafts',
  extinguishers: 'Fire extinguishers',
  seacocks: 'Seacocks and through-hull fittings',
  gas: 'Gas',
  lifejackets: 'Lifejackets',
  beacons: 'Beacons',
  hydrostatic_release: 'Hydrostatic releases',
  engine: 'Engine',
  electrics: 'Electrics',
  steering_keel_shaft: 'Steering, keel, rudder and shaft',
  ground_tackle: 'Ground tackle',
  navigation: 'Navigation',
  safety_on_deck: 'Safety on deck',
  first_aid: 'First aid',
  hull: 'Hull',
  documents: 'Documents and certificates',
};

function indexPage(): string {
  const classes = ITEM_CLASSES.map((itemClass) => classSection(CLASS_WORDS[itemClass], rulesOf(itemClass)));
  const vessel = classSection('The vessel herself', rulesOf(null));
  return `${GENERATED}# Every rule\n\n${INTRODUCTION}\n\n${[...classes, vessel].filter(Boolean).join('\n')}`;
}

const INTRODUCTION =
  'By class of thing; a rule for several classes stands with the first. How a date is worked out: [README.md](README.md); where each figure comes from: [sources.md](../sources.md). Flag state, local law and the maker’s instructions come first.';

function rulesOf(itemClass: ItemClass | null): readonly Rule[] {
  return RULES.filter(({ kinds: [kind] }) => (kind ? (findItemKind(kind)?.itemClass ?? null) : null) === itemClass);
}

function classSection(heading: string, rules: readonly Rule[]): string {
  if (rules.length === 0) return '';
  const rows = rules.map(({ id, scheme, source, inWords }) => [
    `[${id}](${id}.md)`,
    inWords,
    SCHEMES.find((each) => each.id === scheme)?.name ?? scheme,
    `${publicationOf(source)} ${source.clause ?? ''}`.trim(),
    STATUS[source.status],
  ]);
  return `## ${heading}\n\n${table(['rule', 'what it asks', 'scheme', 'publication', 'status'], rows)}`;
}
