import { describe, expect, it } from 'vitest';
import { passwordFault } from './password.ts';

const ABOUT = ['ines.falkenberg@curlew.example', 'Ines Falkenberg'];

describe('a password', () => {
  it.each([
    ['correct horse battery', null],
    ['aaaaaaaabbbbbbbbcccc', null],
    ['все люди рождаются свободными', null],
    ['⚓⚓⚓🛶🛶🛶🪢🪢🪢🐚🐚🐚🦀🦀🦀', null],
    ['fourteen chars', 'too_short'],
    ['⚓🛶🪢🐚🦀⚓🛶🪢🐚🦀⚓🛶🪢🐚', 'too_short'],
    ['x'.repeat(257), 'too_long'],
    ['aaaaaaaaaaaaaaaa', 'common'],
    ['passwordpassword', 'common'],
    ['123456123456123456', 'common'],
    ['PASSWORDPASSWORD', 'common'],
    ['garboard-garboard', 'says_who'],
    ['falkenberg curlew', 'says_who'],
    ['falkenberg sails the seven seas', null],
  ] as const)('%s: %s', (password, fault) => {
    expect(passwordFault(password, ABOUT)).toBe(fault);
  });
});
