import type { Rule } from '../rule.ts';
import { every, NO_SOURCE, ownFigure, sinceFitted, sinceLastDone, sinceLastOrFitted } from './shapes.ts';

export const ENGINE_HOURS_RULES: readonly Rule[] = [
  {
    id: 'eng-oil',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['engine'],
    inWords:
      "Engine oil and filter are changed every year, or after the running hours in the maker's book, whichever is first. Between 100 and 200 hours are often heard: a range is no figure, so none is counted until the maker's is given.",
    source: NO_SOURCE,
    duties: [
      {
        id: 'oil_change',
        action: { kind: 'service', words: 'Change the engine oil and its filter' },
        inWords: "Engine oil and filter are changed every year or after the maker's running hours, whichever is first",
        limits: [sinceLastDone(every('P1Y')), { kind: 'running_hours', attribute: 'oilChangeHours' }],
        fallback: sinceLastOrFitted(every('P1Y'), 'oil change').fallback ?? [],
        resets: [{ act: 'serviced', tests: ['oil_and_filter'], by: [] }],
      },
    ],
    checks: [],
  },
  {
    id: 'eng-imp',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['engine'],
    inWords:
      "The impeller of the raw-water pump is changed every year, or after the running hours in the maker's book, whichever is first. Between 200 and 300 hours are often heard: a range is no figure, so none is counted until the maker's is given.",
    source: NO_SOURCE,
    duties: [
      {
        id: 'impeller_change',
        action: { kind: 'service', words: 'Change the impeller of the raw-water pump' },
        inWords: "The raw-water impeller is changed every year or after the maker's running hours, whichever is first",
        limits: [sinceLastDone(every('P1Y')), { kind: 'running_hours', attribute: 'impellerHours' }],
        fallback: sinceLastOrFitted(every('P1Y'), 'impeller change').fallback ?? [],
        resets: [{ act: 'serviced', tests: ['impeller'], by: [] }],
      },
    ],
    checks: [],
  },
  {
    id: 'eng-cool',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['engine'],
    inWords:
      "Coolant is changed at the interval in the maker's book, by months or by running hours, whichever is first. Two to five years are often heard, by the coolant: a range is no figure, so none is counted.",
    source: NO_SOURCE,
    duties: [
      {
        id: 'coolant_change',
        action: { kind: 'service', words: 'Change the coolant, with the engine cold' },
        inWords: "Coolant is changed at the maker's interval by months or running hours, whichever is first",
        limits: [
          sinceLastDone(ownFigure('coolantIntervalMonths')),
          { kind: 'running_hours', attribute: 'coolantHours' },
        ],
        fallback: [sinceFitted(ownFigure('coolantIntervalMonths'))],
        resets: [{ act: 'serviced', tests: ['coolant'], by: [] }],
      },
    ],
    checks: [],
  },
  {
    id: 'eng-belt',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['engine'],
    inWords:
      "Belts are inspected every year or 100 running hours, and renewed about every two years or 500 running hours, whichever is first. The figures of the maker's book take their place.",
    source: NO_SOURCE,
    duties: [
      {
        id: 'belt_inspection',
        action: { kind: 'inspect', words: 'Inspect the belts, with the engine stopped: tension, cracks, glazing' },
        inWords: 'Belts are inspected every year or 100 running hours, whichever is first',
        limits: [
          sinceLastDone(every('P1Y')),
          { kind: 'running_hours', attribute: 'beltInspectionHours', otherwise: 100 },
        ],
        fallback: sinceLastOrFitted(every('P1Y'), 'inspection of the belts').fallback,
        resets: [
          { act: 'inspected', tests: ['belt_inspection'], by: [] },
          { act: 'serviced', tests: ['belts'], by: [] },
        ],
      },
      {
        id: 'belt_change',
        action: { kind: 'service', words: 'Change the belts, with the engine stopped' },
        inWords: 'Belts are renewed about every 2 years or 500 running hours, whichever is first',
        limits: [
          sinceLastDone(ownFigure('beltLifeMonths', 'P2Y')),
          { kind: 'running_hours', attribute: 'beltHours', otherwise: 500 },
        ],
        fallback: [sinceFitted(ownFigure('beltLifeMonths', 'P2Y'))],
        resets: [{ act: 'serviced', tests: ['belts'], by: [] }],
      },
    ],
    checks: [],
  },
];
