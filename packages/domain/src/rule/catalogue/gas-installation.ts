import type { FactKind } from '../../item/fact.ts';
import type { Rule } from '../rule.ts';
import { every, sinceLastDone } from './shapes.ts';

/** Fitted, renewed, or repaired and altered. */
const WORK_ON_IT: readonly FactKind[] = ['installed', 'replaced', 'overhauled'];

export const GAS_INSTALLATION_RULES: readonly Rule[] = [
  {
    id: 'lpg-test',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['gas_installation'],
    inWords:
      'A gas installation is tested for tightness every year (common practice, no source), and whenever its regulator or a hose is changed or it is altered (a trade statement).',
    source: {
      publication: 'marine gas trade page',
      clause: 'tightness test note',
      address: 'https://marineheating.co.uk/when-was-your-lpg-regulator-and-hose-last-changed',
      status: 'common_practice',
    },
    duties: [
      {
        id: 'tightness_test',
        action: { kind: 'test', words: 'Have a gas engineer test the installation for tightness' },
        inWords: 'A gas installation is tested for tightness every year, and whenever something in it is changed',
        limits: [
          sinceLastDone(every('P1Y')),
          { kind: 'triggered', events: ['gas_system_change', 'alteration'], facts: WORK_ON_IT },
        ],
        resets: [{ act: 'tested', tests: ['tightness'], by: ['gas_engineer'] }],
      },
    ],
    checks: [],
  },
  {
    id: 'lpg-eu',
    scheme: 'eu_inland',
    weight: 'certificate',
    kinds: ['gas_installation'],
    inWords:
      'A gas installation is accepted by an approved expert before it is first used, after any important modification or repair, and at each renewal of its attestation, which runs three years at most (from memory).',
    source: {
      publication: 'Arrete 30 Dec 2008, annexed technical rules',
      clause: 'art. 14.13 (14.15 for validity)',
      address: 'https://tricoteuses.fr/legifrance/articles/LEGIARTI000028862403',
      status: 'read',
      fromMemory: 'the three years of art. 14.15',
    },
    alsoAsks: [
      'That an alteration of the vessel or a structural repair counts as important work on it is our reading.',
    ],
    duties: [
      {
        id: 'acceptance_test',
        action: { kind: 'test', words: 'Have an approved gas expert test and attest the installation' },
        inWords:
          'A gas installation is accepted by an expert before first use, after important work on it, and every 3 years',
        limits: [
          { kind: 'after', from: 'last_done', plus: every('P3Y'), fromMemory: true },
          { kind: 'triggered', events: ['gas_system_change', 'alteration', 'structural_repair'], facts: WORK_ON_IT },
        ],
        resets: [
          { act: 'tested', tests: ['acceptance'], by: ['gas_engineer', 'surveyor'] },
          { act: 'inspected', tests: ['acceptance'], by: ['gas_engineer', 'surveyor'] },
        ],
      },
    ],
    checks: [],
  },
];
