/** Rules that the fleets made for themselves: invented, as are the people and the letters. */
import { addDays, type Day, formatDay } from '@garboard/domain/calendar/day.ts';
import type { OwnRuleDefinition } from '@garboard/domain/rule/own-rule.ts';
import type { OwnRulePlan } from '../plan.ts';

const before = (today: Day, days: number) => addDays(today, -days);

/** A school's look at its extinguishers: every fortnight at first, every week since one was found empty. */
export function extinguishersLookedAt(today: Day): OwnRulePlan {
  const every = (plus: 'P14D' | 'P7D', words: string): OwnRuleDefinition => ({
    kinds: ['portable_extinguisher_dry_powder', 'portable_extinguisher_foam', 'portable_extinguisher_co2'],
    vessels: { which: 'all' },
    action: { kind: 'inspect', words: 'Look at pin, gauge and bracket' },
    inWords: `Every portable extinguisher is looked at ${words} by whoever prepares the boat.`,
    limits: [{ kind: 'interval', from: 'last_done', plus }],
    window: { before: 'P0D', after: 'P3D' },
    resets: [{ act: 'inspected', by: [] }],
    weight: 'own',
  });
  const said = { decidedBy: 'Nell Sandwick, chief instructor', document: 'Standing orders, sheet 4' };
  const [first, second] = [before(today, 200), before(today, 40)];
  return [
    {
      laidDownOn: first,
      version: {
        ...said,
        takesEffectOn: formatDay(first),
        reason: 'Nobody could say when they had last been looked at.',
        definition: every('P14D', 'every two weeks'),
      },
    },
    {
      laidDownOn: second,
      version: {
        ...said,
        takesEffectOn: formatDay(addDays(second, 7)),
        reason: 'One was found empty between two looks.',
        definition: every('P7D', 'once a week'),
      },
    },
  ];
}

/** A yard's check of the hoses that hold fuel and water. */
export function hosesFelt(today: Day): OwnRulePlan {
  const on = before(today, 90);
  return [
    {
      laidDownOn: on,
      version: {
        takesEffectOn: formatDay(on),
        decidedBy: 'Aslak Tangskjær',
        reason: 'Two boats were launched with clips that had rusted through.',
        document: 'Yard book, page 31',
        definition: {
          kinds: ['fuel_hose', 'wet_exhaust_hose'],
          vessels: { which: 'all' },
          action: { kind: 'inspect', words: 'Feel along the hose and look at both clips, with the engine stopped' },
          inWords: 'Fuel and exhaust hoses of every boat that lies here are felt over within 18 months.',
          limits: [{ kind: 'interval', from: 'last_done', plus: 'P18M' }],
          first: { from: 'installed', plus: 'P18M' },
          resets: [{ act: 'inspected', by: [] }],
          weight: 'own',
        },
      },
    },
  ];
}

/** An insurer's letter about gas hoses, with a stricter figure from the next policy year on. */
export function hosesOfTheInsurer(today: Day): OwnRulePlan {
  const years = (plus: 'P4Y' | 'P3Y', words: string): OwnRuleDefinition => ({
    kinds: ['gas_hose'],
    vessels: { which: 'all' },
    action: { kind: 'replace', words: 'Have the gas hose renewed by a gas engineer' },
    inWords: `Gas hoses of charter boats are renewed ${words} years after fitting.`,
    limits: [{ kind: 'interval', from: 'installed', plus }],
    resets: [{ act: 'replaced', by: ['gas_engineer'] }],
    weight: 'insurer',
  });
  const said = { decidedBy: 'Morag Inverdale, base manager' };
  const [first, second] = [before(today, 300), before(today, 20)];
  return [
    {
      laidDownOn: first,
      version: {
        ...said,
        takesEffectOn: formatDay(first),
        reason: 'A condition of the policy.',
        document: `Insurer’s letter of ${formatDay(before(today, 310))}`,
        definition: years('P4Y', 'four'),
      },
    },
    {
      laidDownOn: second,
      version: {
        ...said,
        takesEffectOn: formatDay(addDays(today, 75)),
        reason: 'The condition is stricter from the next policy year on.',
        document: `Insurer’s letter of ${formatDay(before(today, 25))}`,
        definition: years('P3Y', 'three'),
      },
    },
  ];
}
