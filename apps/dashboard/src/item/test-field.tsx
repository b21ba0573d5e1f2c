import { useQuery } from '@tanstack/react-query';
import { type TestCode, testWords } from '../strings/codes.ts';
import { strings } from '../strings/record.ts';
import { ChoiceField } from '../ui/fields.tsx';
import { rulesQuery } from './catalogue.query.ts';
import type { FieldOf } from './field-of.ts';
import { Options } from './options.tsx';

const WITH_TESTS = ['tested', 'serviced', 'inspected'];

/** Only where a rule for that kind of thing tells one test from another. */
export function TestField({ kind, fact, ...field }: ReturnType<FieldOf> & { kind: string; fact: string }) {
  const rules = useQuery(rulesQuery()).data ?? [];
  const asked = new Set(rules.filter((rule) => rule.kinds.includes(kind)).flatMap((rule) => rule.reads.tests));
  const tests = (Object.keys(testWords) as TestCode[]).filter((test) => asked.has(test) || test === field.value);
  if (tests.length === 0 || !WITH_TESTS.includes(fact)) return null;
  return (
    <ChoiceField {...field} name={strings.form.test}>
      <option value="">{strings.form.noTest}</option>
      <Options words={Object.fromEntries(tests.map((test) => [test, testWords[test]]))} />
    </ChoiceField>
  );
}
