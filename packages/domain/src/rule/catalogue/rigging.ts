import type { Rule } from '../rule.ts';
import { every, NO_SOURCE, sinceLastOrFitted } from './shapes.ts';

export const RIGGING_RULES: readonly Rule[] = [
  {
    id: 'rig-wire-life',
    scheme: 'insurer',
    weight: 'insurer',
    kinds: ['standing_rigging_wire'],
    inWords:
      "Wire standing rigging is renewed ten years after it was fitted, or at the insurer's own figure. Owners report 10 to 15 years asked by some insurers; others found no such clause in any policy.",
    source: {
      publication: 'none; figure asked by some insurers',
      clause: null,
      address: null,
      status: 'common_practice',
    },
    duties: [
      {
        id: 'replacement',
        action: { kind: 'replace', words: 'Have a rigger renew all wire and terminals' },
        inWords:
          "Some insurers ask for wire standing rigging to be renewed after 10 years, or after the policy's own figure",
        limits: [
          {
            kind: 'after',
            from: 'installed',
            plus: { kind: 'own_figure', attribute: 'insurerLifeMonths', otherwise: 'P10Y' },
          },
        ],
        resets: [{ act: 'replaced', by: ['rigger'] }],
      },
    ],
    checks: [],
  },
  {
    id: 'rig-wire-insp',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['standing_rigging_wire', 'standing_rigging_rod'],
    inWords:
      'The owner looks over the rig from deck level and aloft once a year; a rigger inspects it every two years. The first look by a rigger is often at five years (from memory).',
    source: { ...NO_SOURCE, fromMemory: 'that the first professional inspection is often at five years' },
    duties: [
      {
        id: 'visual',
        action: { kind: 'inspect', words: 'Look over mast, spars and rigging, on deck and aloft' },
        inWords: 'The rig is looked over once a year, on deck and aloft',
        limits: [{ kind: 'after', from: 'last_done', plus: { kind: 'fixed', period: 'P1Y' } }],
        fallback: [
          {
            kind: 'after',
            from: 'installed',
            plus: { kind: 'fixed', period: 'P1Y' },
            reading: 'no look is on record, so the first is counted from fitting',
          },
        ],
        resets: [{ act: 'inspected', by: [] }],
      },
      {
        id: 'inspection',
        action: { kind: 'inspect', words: 'Have a rigger inspect mast, spars and rigging' },
        inWords: 'A rigger inspects the rig every 2 years, often for the first time at 5 years',
        limits: [{ kind: 'after', from: 'last_done', plus: { kind: 'fixed', period: 'P2Y' } }],
        fallback: [{ kind: 'after', from: 'installed', plus: { kind: 'fixed', period: 'P5Y' }, fromMemory: true }],
        resets: [{ act: 'inspected', by: ['rigger'] }],
      },
    ],
    checks: [],
  },
  {
    id: 'rig-running',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['running_rigging'],
    inWords:
      'Halyards, sheets and furling lines are gone over every year, at lay-up or fit-out. They have no fixed life; five to ten years of use are often heard, from memory, and not counted.',
    source: { ...NO_SOURCE, fromMemory: 'the five to ten years of use' },
    duties: [
      {
        id: 'visual',
        action: { kind: 'inspect', words: 'Go over halyards, sheets and furling lines: chafe, splices, shackles' },
        inWords: 'Running rigging is gone over once a year',
        ...sinceLastOrFitted(every('P1Y'), 'look'),
        resets: [{ act: 'inspected', by: [] }],
      },
    ],
    checks: [],
  },
  {
    id: 'rig-rod',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['standing_rigging_rod'],
    inWords:
      "Rod rigging is taken down, crack-tested and re-headed, and in the end renewed, at the maker's intervals. Often heard, from memory: re-heading at about 5 to 6 years or by miles, renewal at about 12 to 15 years.",
    source: { ...NO_SOURCE, fromMemory: 'the ranges of years' },
    alsoAsks: ['Re-heading by sea miles sailed is not worked out here.'],
    duties: [
      {
        id: 're_heading',
        action: { kind: 'overhaul', words: 'Have a rigger strip, crack-test and re-head the rods' },
        inWords: "Rod rigging is re-headed at the maker's interval",
        limits: [{ kind: 'after', from: 'last_done', plus: { kind: 'own_figure', attribute: 'makerIntervalMonths' } }],
        fallback: [
          { kind: 'after', from: 'installed', plus: { kind: 'own_figure', attribute: 'makerIntervalMonths' } },
        ],
        resets: [{ act: 'overhauled', by: ['rigger'] }],
      },
      {
        id: 'replacement',
        action: { kind: 'replace', words: 'Have a rigger renew the rods' },
        inWords: 'Rod rigging is renewed at the end of the life that its maker gives it',
        limits: [{ kind: 'after', from: 'installed', plus: { kind: 'own_figure', attribute: 'makerLifeMonths' } }],
        resets: [{ act: 'replaced', by: ['rigger'] }],
      },
    ],
    checks: [],
  },
  {
    id: 'rig-chainplate',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['chainplate'],
    inWords:
      'Chainplates and bonded tie-rods are looked at once a year, and withdrawn and crack-tested at an interval that somebody competent sets. Often heard, from memory: when the mast is unstepped, or at about 10 to 15 years.',
    source: { ...NO_SOURCE, fromMemory: 'all of it' },
    alsoAsks: ['Withdrawing them whenever the mast is unstepped is not worked out here.'],
    duties: [
      {
        id: 'visual',
        action: { kind: 'inspect', words: 'Look at the chainplates for weeping, movement and cracks' },
        inWords: 'Chainplates are looked at once a year',
        limits: [{ kind: 'after', from: 'last_done', plus: { kind: 'fixed', period: 'P1Y' }, fromMemory: true }],
        fallback: [
          {
            kind: 'after',
            from: 'installed',
            plus: { kind: 'fixed', period: 'P1Y' },
            fromMemory: true,
            reading: 'no look is on record, so the first is counted from fitting',
          },
        ],
        resets: [{ act: 'inspected', by: [] }],
      },
      {
        id: 'crack_test',
        action: { kind: 'test', words: 'Have the chainplates withdrawn and crack-tested' },
        inWords: 'Chainplates are withdrawn and crack-tested at the interval set for them',
        limits: [{ kind: 'after', from: 'last_done', plus: { kind: 'own_figure', attribute: 'makerIntervalMonths' } }],
        fallback: [
          { kind: 'after', from: 'installed', plus: { kind: 'own_figure', attribute: 'makerIntervalMonths' } },
        ],
        resets: [{ act: 'tested', tests: ['crack_test'], by: ['rigger', 'surveyor'] }],
      },
    ],
    checks: [],
  },
  {
    id: 'rig-coi',
    scheme: 'us_sailing_school',
    weight: 'law',
    kinds: ['standing_rigging_wire', 'standing_rigging_rod', 'chainplate', 'running_rigging'],
    inWords:
      'Spars, standing and running rigging, blocks, fittings and sails are examined at each inspection for certification and each periodic inspection.',
    source: {
      publication: '46 CFR',
      clause: '169.239(c) (and 169.223)',
      address: 'https://www.govregs.com/regulations/title46_chapterI_part169_subpart169.200_subjgrp36_section169.239',
      status: 'read',
    },
    duties: [
      {
        id: 'inspection',
        action: { kind: 'inspect', words: 'Have the rig ready for the marine inspector' },
        inWords: 'The rig is examined at each inspection for certification and each periodic inspection',
        limits: [{ kind: 'next_event', event: 'inspection' }],
        resets: [{ act: 'inspected', by: ['marine_inspector'] }],
      },
    ],
    checks: [],
  },
  {
    id: 'rig-coi-T',
    scheme: 'us_small_passenger',
    weight: 'law',
    kinds: ['standing_rigging_wire', 'standing_rigging_rod', 'chainplate', 'running_rigging', 'seacock'],
    inWords:
      'Spars, rigging and sails, and through-hull fittings and sea valves, are examined at each initial and subsequent inspection for certification.',
    source: {
      publication: '46 CFR',
      clause: '115.802(a)(2),(3)',
      address: 'https://law.lawstack.com/laws/46-cfr_s_115-802_hull-5035a7de-7d58-46c8-9160-345f538b6ffe',
      status: 'read',
      fromMemory: 'the number of the like section in subchapter T, 176.802; the text read is that of subchapter K',
    },
    duties: [
      {
        id: 'inspection',
        action: { kind: 'inspect', words: 'Have it ready for the marine inspector' },
        inWords: 'Rigging and sea valves are examined at each inspection for certification',
        limits: [{ kind: 'next_event', event: 'inspection' }],
        resets: [{ act: 'inspected', by: ['marine_inspector'] }],
      },
    ],
    checks: [],
  },
];
