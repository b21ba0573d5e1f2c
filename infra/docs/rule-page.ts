/** The page of one rule: what it asks, of what, where it stands, how far that was checked, and an example. */
import { ATTRIBUTES, type AttributeId } from '@garboard/domain/item/attribute.ts';
import { actInWords, capitalised, eventInWords } from '@garboard/domain/item/words.ts';
import { appliesInWords, dutyInWords, resetsInWords } from '@garboard/domain/rule/duty-in-words.ts';
import type { Duty, Rule } from '@garboard/domain/rule/rule.ts';
import { ruleReads } from '@garboard/domain/rule/rule-reads.ts';
import { SCHEMES } from '@garboard/domain/rule/scheme.ts';
import { whileNotRecorded } from '@garboard/domain/rule/while-not-recorded.ts';
import { list, namesOfKinds, publicationOf, STATUS, table } from './markdown.ts';
import { workedExample } from './worked-example.ts';

export function rulePage(rule: Rule): string {
  const parts = [
    `# ${rule.id}`,
    rule.inWords,
    'Flag state, local law and the maker’s instructions come first. A date kept does not make a thing safe.',
    aboutTable(rule).trimEnd(),
    ...section('When it applies', (rule.appliesWhen ?? []).map(appliesInWords)),
    '## What it asks',
    ...(rule.duties.length === 0
      ? ['Nothing with a date of its own.']
      : rule.duties.map((duty) => dutySection(duty).trimEnd())),
    ...(rule.suspends ? [`Suspends the scheme’s duties ${rule.suspends.inWords}.`] : []),
    ...section(
      'What it holds against what is recorded',
      rule.checks.map(({ inWords }) => `${capitalised(inWords)}.`),
    ),
    ...section('What else the clause asks, and is not worked out here', rule.alsoAsks ?? []),
    ...section('What it reads', readsOf(rule)),
    ...section('While something is not on record', whileNotRecorded(rule)),
    workedExample(rule).trimEnd(),
    '[Every rule](index.md) · [how a date is worked out](README.md) · [where the figures come from](../sources.md)',
  ];
  return `${GENERATED}${parts.filter(Boolean).join('\n\n')}\n`;
}

export const GENERATED = '<!-- Generated from the catalogue by `npm run rule-pages`. Not for editing. -->\n\n';

function dutySection(duty: Duty): string {
  return `### ${duty.action.words}\n\n\`${duty.id}\`. ${duty.inWords}.\n\n${list([...dutyInWords(duty), ...resetsInWords(duty)])}`;
}

function aboutTable({ scheme, weight, kinds, source }: Rule): string {
  const rows = [
    ['scheme', SCHEMES.find(({ id }) => id === scheme)?.name ?? scheme],
    ['what stands behind it', weight.replaceAll('_', ' ')],
    ['things', kinds.length === 0 ? 'the vessel herself' : namesOfKinds(kinds)],
    ['publication', publicationOf(source)],
    ['clause', source.clause ?? '—'],
    ['how far it was checked', STATUS[source.status]],
    ...(source.fromMemory ? [['from memory', source.fromMemory]] : []),
  ];
  return table(['what', 'here'], rows);
}

function section(heading: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : [`## ${heading}`, list(lines).trimEnd()];
}

function readsOf(rule: Rule): readonly string[] {
  const { facts, tests, attributes, events, situations } = ruleReads(rule);
  const line = (what: string, names: readonly string[]) => (names.length === 0 ? [] : [`${what}: ${names.join(', ')}`]);
  return [
    ...line(
      'facts',
      facts.map((fact) => `\`${fact}\``),
    ),
    ...line(
      'tests told apart',
      tests.map((test) => `\`${test}\` (${actInWords('tested', test)})`),
    ),
    ...line(
      'attributes',
      attributes.map((id) => `\`${id}\` (${ATTRIBUTES[id].words}${unitOf(id)})`),
    ),
    ...line(
      'events',
      events.map((event) => `\`${event}\` (${eventInWords(event)})`),
    ),
    ...line(
      'situations',
      situations.map((part) => `\`${part}\``),
    ),
  ];
}

function unitOf(id: AttributeId): string {
  const { kind } = ATTRIBUTES[id].type;
  return kind === 'months' || kind === 'hours' ? `, in ${kind}` : '';
}
