import { expect, test } from 'vitest';
import { isOpen, reasoningKey } from './reasoning-key.ts';

test('one reasoning is open: the one that is named', () => {
  expect(isOpen(reasoningKey('i', 'raft', 'service'), reasoningKey('i', 'raft', 'service'))).toBe(true);
  expect(isOpen(reasoningKey('i', 'raft', 'service'), reasoningKey('i', 'raft', 'withdraw'))).toBe(false);
  expect(isOpen(undefined, reasoningKey('i', 'raft', 'service'))).toBe(false);
});

test('a mark on the horizon names no duty, and a rule whose name begins like another’s is not opened', () => {
  expect(isOpen('i~raft', reasoningKey('i', 'raft', 'service'))).toBe(true);
  expect(isOpen('i~raft', reasoningKey('i', 'raft-ext30', 'service'))).toBe(false);
});
