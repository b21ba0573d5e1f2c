import type { FactCode } from '../strings/codes.ts';
import { strings } from '../strings/record.ts';
import type { ItemKind } from './catalogue.query.ts';
import type { Item } from './item.query.ts';

const { form, happened } = strings;

export function Options({ words }: { words: Record<string, string> }) {
  return Object.entries(words).map(([code, each]) => (
    <option key={code} value={code}>
      {each}
    </option>
  ));
}

export function ItemOptions({ items }: { items: readonly Item[] }) {
  const inOrder = [...items].sort((a, b) => a.label.localeCompare(b.label));
  return (
    <>
      <option value="">{form.choose}</option>
      {inOrder.map((item) => (
        <option key={item.id} value={item.id}>
          {[item.label, item.serialNumber].filter(Boolean).join(', ')}
        </option>
      ))}
    </>
  );
}

/** What usually happens to such a thing comes first; a record may hold anything. */
export function FactOptions({ kind }: { kind: ItemKind | undefined }) {
  const all = Object.entries(happened) as [FactCode, string][];
  const isUsual = ([code]: [FactCode, string]) => kind?.dates.some(({ fact }) => fact === code) ?? false;
  const usual = all.filter(isUsual);
  const others = all.filter((each) => !isUsual(each));
  return (
    <>
      <option value="">{form.choose}</option>
      {usual.length > 0 && (
        <optgroup label={form.usual}>
          <Options words={Object.fromEntries(usual)} />
        </optgroup>
      )}
      <optgroup label={form.others}>
        <Options words={Object.fromEntries(others)} />
      </optgroup>
    </>
  );
}
