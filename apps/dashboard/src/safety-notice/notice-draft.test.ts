import { describe, expect, it } from 'vitest';
import { emptyNotice, noticeFaults, toNewNotice, toTrial } from './notice-draft.ts';

const typed = {
  ...emptyNotice,
  title: ' Hoses that may come off the tail ',
  publisher: 'Quillmere Hose Works',
  issuedOn: '3 Sep 2026',
  document: 'Letter to owners',
  kind: 'gas_hose',
  makers: 'Quillmere\n\nQuillmere Hose Works ',
  serials: 'AB1200 – AB1399',
  hazard: 'gas can escape below',
  action: 'replace',
  actionWords: 'Have it replaced',
  deadline: 'on',
  deadlineOn: '31 Dec 2026',
};

describe('toNewNotice', () => {
  it('sends what was typed, and leaves out what was not', () => {
    expect(toNewNotice(typed)).toEqual({
      kind: 'ready',
      body: {
        title: 'Hoses that may come off the tail',
        publisher: 'Quillmere Hose Works',
        document: 'Letter to owners',
        issuedOn: '2026-09-03',
        kinds: ['gas_hose'],
        makers: ['Quillmere', 'Quillmere Hose Works'],
        models: [],
        serials: [{ from: 'AB1200', to: 'AB1399' }],
        hazard: 'gas can escape below',
        action: { kind: 'replace', words: 'Have it replaced' },
        deadline: { kind: 'on', on: '2026-12-31' },
        weight: 'maker',
      },
    });
  });

  it('names every box that keeps it from being sent', () => {
    const bad = {
      ...emptyNotice,
      issuedOn: 'Sep 2026',
      serials: '–',
      madeFrom: '5/4/26',
      deadline: 'days_after_issue',
    };
    const read = toNewNotice(bad);
    expect(read.kind === 'faults' && Object.keys(read.faults).sort()).toEqual([
      'actionWords',
      'deadlineDays',
      'document',
      'hazard',
      'issuedOn',
      'kind',
      'madeFrom',
      'publisher',
      'serials',
      'title',
    ]);
  });
});

describe('toTrial', () => {
  it('needs only what decides which things the notice names', () => {
    expect(toTrial({ ...emptyNotice, kind: 'gas_hose', serials: 'AB1–AB9' })).toMatchObject({
      kinds: ['gas_hose'],
      serials: [{ from: 'AB1', to: 'AB9' }],
    });
    expect(toTrial(emptyNotice)).toBeNull();
    expect(toTrial({ ...emptyNotice, kind: 'gas_hose', serials: '–' })).toBeNull();
  });
});

describe('noticeFaults', () => {
  it('brings each fault to its box', () => {
    const errors = [
      { pointer: '/serials/1', detail: 'ends before it begins' },
      { pointer: '/deadline/on', detail: 'lies before the day of the notice' },
      { pointer: '/kinds/0', detail: 'is no kind' },
      { pointer: '', detail: 'something else' },
    ];
    const told = noticeFaults({ type: '/problems/invalid', title: 'Not valid', status: 422, errors, instance: 'x' });
    expect(Object.keys(told.faults).sort()).toEqual(['deadlineOn', 'kind', 'serials']);
    expect(told.others).toEqual(['something else']);
  });
});
