import type { Rule } from '../rule.ts';

export const KEEL_INSPECTION_RULES: readonly Rule[] = [
  {
    id: 'rig-osr',
    scheme: 'offshore_racing',
    weight: 'certificate',
    kinds: ['keel_and_rudder'],
    inWords:
      'The structure of keel and rudder is inspected inside and outside by an appropriately qualified person within 24 months before the start of a race, and again after every unintentional grounding. Without a race planned, the latest start that the last inspection covers is told.',
    source: {
      publication: 'World Sailing Offshore Special Regulations',
      clause: '3.02 (3.02.2, 3.02.3, App. L model form)',
      address: 'https://www.jog.org.uk/jog-news/jog-news-article/keel/',
      status: 'second_hand',
    },
    alsoAsks: [
      'Who is appropriately qualified the rules do not define: a surveyor, a yard or another competent person is taken to be.',
    ],
    duties: [
      {
        id: 'structural_inspection',
        action: { kind: 'inspect', words: 'Have the structure of keel and rudder inspected, out of the water' },
        inWords:
          'Keel and rudder are inspected within 24 months before the start of a race, and after every unintentional grounding',
        limits: [
          { kind: 'before_event', event: 'race_start', within: 'P24M' },
          { kind: 'triggered', events: ['grounding'], facts: [] },
        ],
        resets: [{ act: 'inspected', by: ['surveyor', 'yard', 'competent_person'] }],
      },
    ],
    checks: [],
  },
];
