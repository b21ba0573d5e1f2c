/** The boxes of each act's form. */
import { pictureBox } from '../evidence/picture-box.tsx';
import { capacityWords } from '../strings/codes.ts';
import { strings } from '../strings/finding.ts';
import { hazardWords, seenWords, tradeWords, urgencyWords } from '../strings/finding-codes.ts';

import { zoneWords } from '../strings/zones.ts';
import { readersToday } from '../ui/calendar.ts';
import type { Box, Typed } from '../ui/quick-form.tsx';
import type { Act } from './act.ts';
import type { Finding } from './finding.query.ts';

const { boxes } = strings;

const long = (key: string, name: string, more: Partial<Box> = {}): Box => ({ key, name, kind: 'long', ...more });
const day = (key: string, name: string, more: Partial<Box> = {}): Box => ({ key, name, kind: 'day', ...more });
const choice = (key: string, name: string, choices: Box['choices'] = {}, more: Partial<Box> = {}): Box => ({
  ...{ key, name, kind: 'choice', choices, start: Object.keys(choices)[0] ?? '' },
  ...more,
});
const optional = { optional: true } as const;

const trade = (start = '') =>
  choice('trade', boxes.trade, { '': boxes.tradeNone, ...tradeWords }, { start, ...optional });
const responsible = (more: Partial<Box> = {}): Box => ({ key: 'responsible', name: boxes.responsible, ...more });
const reason = long('reason', boxes.reason);
const evidence = (help: string, more: Partial<Box> = {}) => long('evidence', boxes.evidence, { help, ...more });
const pictures = ({ vessel, zone }: Finding, more: Partial<Box> = {}) =>
  pictureBox(vessel.id, { zone }, { ...optional, ...more });
const isWeeks = ({ urgency }: Typed) => urgency === 'within_weeks';
const urgentBy = day('urgentBy', boxes.urgentBy, { help: boxes.urgentByHelp, when: isWeeks, ...optional });
const byAnother = ({ by }: Typed) => by === 'another';

export const estimate: readonly Box[] = [
  { key: 'estimate', name: boxes.estimate, help: boxes.estimateHelp, ...optional },
  { key: 'author', name: boxes.author, when: ({ estimate: typed }) => (typed ?? '').trim() !== '' },
];

/** Where, what it threatens, and when it must be dealt with: of a new finding, and of one that is changed. */
export function described(finding?: Finding): readonly Box[] {
  return [
    choice('zone', boxes.where, zoneWords, {
      start: finding?.zone ?? '',
      ...(!finding && { choices: { '': boxes.choose, ...zoneWords } }),
    }),
    long('what', boxes.what, { start: finding?.what ?? '' }),
    choice('hazard', boxes.hazard, hazardWords, {
      start: finding?.hazard ?? '',
      ...(!finding && { choices: { '': boxes.choose, ...hazardWords } }),
    }),
    choice('urgency', boxes.urgency, urgencyWords, {
      start: finding?.urgency ?? '',
      ...(!finding && { choices: { '': boxes.choose, ...urgencyWords } }),
    }),
    { ...urgentBy, start: finding?.urgentBy ?? '' },
    trade(finding?.trade),
  ];
}

export function boxesOf(act: Act, finding: Finding): readonly Box[] {
  switch (act) {
    case 'look':
      return [
        choice('seen', boxes.seen, seenWords),
        day('on', boxes.on, { start: readersToday() }),
        long('words', boxes.words, { help: boxes.wordsHelp, ...optional }),
        choice('urgency', boxes.urgency, { '': boxes.urgencySame, ...urgencyWords }, optional),
        urgentBy,
        evidence(boxes.evidenceGone, { when: ({ seen }) => seen === 'gone' }),
        pictures(finding),
      ];
    case 'propose':
      return [long('work', boxes.work), trade(finding.trade), ...estimate];
    case 'plan':
      return [
        long('work', boxes.work, { start: finding.work ?? '', ...optional }),
        day('forDay', boxes.forDay, optional),
        trade(finding.trade),
        responsible({ start: finding.responsible ?? '', ...optional }),
      ];
    case 'begin':
      return [long('words', boxes.words, optional)];
    case 'report_done':
      return reportBoxes(finding);
    case 'verify':
      return [
        choice('right', boxes.right, { yes: boxes.rightYes, no: boxes.rightNo }),
        evidence('', { when: ({ right }) => right === 'yes' }),
        pictures(finding, { when: ({ right }) => right === 'yes' }),
        long('words', boxes.words, { when: ({ right }) => right === 'no' }),
      ];
    case 'defer':
      return [day('until', boxes.until), day('reviewOn', boxes.reviewOn), responsible(), reason];
    case 'accept':
      return [day('reviewOn', boxes.reviewOn), responsible(), reason];
    case 'change':
      return [
        ...described(finding),
        responsible({ start: finding.responsible ?? '', ...optional }),
        long('reason', boxes.reason, optional),
      ];
    case 'enter_in_error':
    case 'reopen':
      return [reason];
  }
}

function reportBoxes(finding: Finding): readonly Box[] {
  const { item, work } = finding;
  return [
    long('work', boxes.workDone, { start: work ?? '' }),
    day('doneOn', boxes.doneOn, { start: readersToday() }),
    choice('by', boxes.doneBy, { me: boxes.doneByMe, another: boxes.doneByAnother }),
    { key: 'name', name: boxes.name, when: byAnother },
    choice('capacity', boxes.capacity, capacityWords, { when: byAnother, start: 'yard' }),
    { key: 'certificate', name: boxes.certificate, when: byAnother, ...optional },
    ...(item
      ? [
          choice(
            'fact',
            boxes.thing(item.label),
            { '': boxes.thingNone, ...boxes.factsOfWork },
            { help: boxes.thingHelp, ...optional },
          ),
        ]
      : []),
    evidence('', optional),
    pictures(finding),
  ];
}
