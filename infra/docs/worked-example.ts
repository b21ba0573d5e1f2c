/** The example on a rule's page: the first worked case that names the rule, worked out anew by the engine. */
import { parseDay } from '@garboard/domain/calendar/day.ts';
import { parseRecordedDate } from '@garboard/domain/calendar/recorded-date.ts';
import { dayInWords, recordedDateInWords } from '@garboard/domain/calendar/words.ts';
import type { Capacity, FactKind, TestKind } from '@garboard/domain/item/fact.ts';
import type { ItemKindId } from '@garboard/domain/item/item-kind.ts';
import { actInWords, capacitiesInWords, capitalised } from '@garboard/domain/item/words.ts';
import type { Rule } from '@garboard/domain/rule/rule.ts';
import { answerFromDomain } from '@garboard/tests/cases/answer-from-domain.ts';
import type { Answered } from '@garboard/tests/cases/differences.ts';
import { type DueDateCase, readDueDateCases, type StatedFact } from '@garboard/tests/cases/read-cases.ts';
import { list, namesOfKinds, publicationOf, table } from './markdown.ts';

const CASES = readDueDateCases();
const STANDING: Record<string, string> = { overdue: 'overdue', due: 'due', in_date: 'in date', unknown: 'not known' };

export function workedExample({ id }: Rule): string {
  const [example] = CASES.flatMap((each) => answersOf(each, id)).sort((a, b) => Number(b.dated) - Number(a.dated));
  return example ? `## A worked example\n\n${sectionOf(example)}` : '';
}

type Example = { readonly of: DueDateCase; readonly answers: readonly Answered[]; readonly dated: boolean };

function answersOf(of: DueDateCase, ruleId: string): readonly Example[] {
  if (!of.expect.some((expected) => expected.ruleId === ruleId && !expected.absent)) return [];
  const answers = answerFromDomain(of.request).filter((answer) => answer.ruleId === ruleId);
  return answers.length === 0 ? [] : [{ of, answers, dated: answers.some(({ dueOn }) => dueOn !== undefined) }];
}

function sectionOf({ of, answers }: Example): string {
  const { kind, facts, attributes = {}, events = [], situations = [], asOf } = of.request;
  const besides = [
    ...Object.entries(attributes).map(([name, value]) => `\`${name}\`: ${value}`),
    ...events.map(
      ({ event, on, planned }) => `${event.replaceAll('_', ' ')} ${planned ? 'planned ' : ''}on ${inWords(on)}`,
    ),
    ...situations.map(({ from, place, use, dismantled }) => {
      return `from ${inWords(from)}: ${place}, ${use.replaceAll('_', ' ')}${dismantled ? ', dismantled' : ''}`;
    }),
  ];
  return [
    `${capitalised(of.title)}. The thing: ${namesOfKinds([kind as ItemKindId])}; invented facts, as at ${inWords(asOf)}.`,
    facts.length === 0 ? 'Nothing is on record.' : table(['on record', 'outcome', 'by'], facts.map(factRow)).trimEnd(),
    ...(besides.length === 0 ? [] : [list(besides).trimEnd()]),
    table(['duty', 'due on', 'overdue after', 'standing', 'why'], answers.map(answerRow)).trimEnd(),
    `Case \`${of.case}\`: ${[publicationOf(of), of.clause ?? '—', of.derivation].join(', ')}.\n`,
  ].join('\n\n');
}

function factRow({
  fact,
  on,
  test,
  outcome = 'passed',
  doneBy,
  until,
  readOn,
  reading,
}: StatedFact): readonly string[] {
  const date = parseRecordedDate(on);
  const said = [
    `${capitalised(actInWords(fact as FactKind, test as TestKind | undefined))} ${date ? recordedDateInWords(date) : on}`,
    ...(until === undefined ? [] : [`until ${inWords(until)}`]),
    ...(readOn === undefined ? [] : [`read on ${inWords(readOn)}`]),
    ...(reading === undefined ? [] : [`${reading.value} ${reading.unit.replaceAll('_', ' ')}`]),
  ];
  return [said.join(', '), outcome, doneBy?.capacity ? capacitiesInWords([doneBy.capacity as Capacity]) : '—'];
}

function answerRow({ duty, dueOn, overdueAfter, standing, explanation }: Answered): readonly string[] {
  const [due, overdue] = [dueOn, overdueAfter].map((day) => (day === undefined ? '—' : inWords(day))) as [
    string,
    string,
  ];
  return [`\`${duty}\``, due, overdue, STANDING[standing] ?? standing, explanation.sentence];
}

function inWords(text: string): string {
  const day = parseDay(text);
  return day === null ? text : dayInWords(day);
}
