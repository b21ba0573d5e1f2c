/** Small pieces of Markdown that the pages share. */
import { findItemKind, type ItemKindId } from '@garboard/domain/item/item-kind.ts';
import type { Source, SourceStatus } from '@garboard/domain/rule/rule.ts';

export function list(lines: readonly string[]): string {
  return lines.map((line) => `- ${line}\n`).join('');
}

export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |\n`;
  return line(head) + line(head.map(() => '---')) + rows.map(line).join('');
}

export function namesOfKinds(kinds: readonly ItemKindId[]): string {
  return kinds.map((kind) => findItemKind(kind)?.name ?? kind).join(', ');
}

export function publicationOf({ publication, address }: Pick<Source, 'publication' | 'address'>): string {
  if (publication === null) return '—';
  return address === null ? publication : `[${publication}](${address})`;
}

export const STATUS: Record<SourceStatus, string> = {
  read: 'read: its text, or a reproduction of it',
  second_hand: 'second-hand: somebody quotes or summarises it',
  memory: 'from memory: nobody here has seen the text',
  common_practice: 'common practice, no source',
};
