import { expect, it } from 'vitest';
import { likeness } from './likeness.ts';

const described = (what: string, zone = 'gas_locker', itemId: string | null = null) => ({ what, zone, itemId });

it.each([
  [
    'the same thing in other words',
    described('perished', 'gas_locker', 'h1'),
    described('Hose cracked', 'engine', 'h1'),
    ['the same thing aboard'],
  ],
  [
    'the same place and a word',
    described('Cracks in the hose'),
    described('crack at the cooker hose'),
    ['the same place', 'the same words: crack, hose'],
  ],
])('proposes %s', (_, a, b, because) => expect(likeness(a, b)?.because).toEqual(because));

it.each([
  ['the same words elsewhere', described('Hose cracked'), described('Hose cracked', 'engine')],
  ['the same place alone', described('Drain blocked'), described('Lid does not close')],
  ['two findings of no thing', described('a', 'deck', null), described('b', 'cockpit', null)],
])('does not propose %s', (_, a, b) => expect(likeness(a, b)).toBeNull());

it('weighs the thing above the place and the words', () => {
  const thing = likeness(described('x', 'deck', 'h1'), described('y', 'deck', 'h1'));
  const words = likeness(described('hose'), described('hose'));
  expect(thing?.weight).toBeGreaterThan(words?.weight ?? 0);
});
