/** Whether what is stated of a thing can be read: a name that nothing reads, a value of another type. */
import { ATTRIBUTES, type Attribute, type Attributes, dateOf, wholeNumberOf } from './attribute.ts';
import type { FactJudgement } from './fact-problems.ts';
import type { ItemKind } from './item-kind.ts';

export function attributeProblems({ attributes: ofKind }: ItemKind, attributes: Attributes): FactJudgement {
  const known = new Map<string, Attribute>(Object.entries(ATTRIBUTES));
  const names = Object.keys(attributes);
  return {
    problems: names.flatMap((name) => {
      const attribute = known.get(name);
      return attribute && !isReadable(attribute, attributes)
        ? [{ pointer: `/${name}`, detail: `must be ${expected(attribute)}` }]
        : [];
    }),
    doubts: names
      .filter((name) => !ofKind.some((id) => id === name))
      .map((name) => `No rule for this kind reads ${name}.`),
  };
}

function isReadable({ id, type }: Attribute, attributes: Attributes): boolean {
  switch (type.kind) {
    case 'months':
    case 'hours':
      return wholeNumberOf(attributes, id) !== null;
    case 'yes_no':
      return typeof attributes[id] === 'boolean';
    case 'date':
      return dateOf(attributes, id) !== null;
    case 'choice':
      return type.choices.some(({ value }) => value === attributes[id]);
  }
}

function expected({ type }: Attribute): string {
  switch (type.kind) {
    case 'months':
      return 'a whole number of months above nought';
    case 'hours':
      return 'a whole number of hours above nought';
    case 'yes_no':
      return 'true or false';
    case 'date':
      return 'a day, a month or a year: 2024-03-18, 2024-03 or 2024';
    case 'choice':
      return `one of ${type.choices.map(({ value }) => value).join(', ')}`;
  }
}
