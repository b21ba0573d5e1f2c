import { describe, expect, it } from 'vitest';
import { eventsAsAt, firstEventFrom, lastEventBefore, nextEvent } from './events-ahead.ts';
import { day, held, planned } from './facts.test-support.ts';

describe('the next planned event', () => {
  it('is the first after the last that was held', () => {
    const events = [
      planned('inspection', '2026-05-10'),
      held('inspection', '2026-05-12'),
      planned('inspection', '2027-05-10'),
    ];
    expect(nextEvent(events, 'inspection', null)?.on).toBe(day('2027-05-10'));
  });

  it('is the first after the last that was done', () => {
    const events = [planned('inspection', '2026-05-10'), planned('inspection', '2027-05-10')];
    expect(nextEvent(events, 'inspection', day('2026-05-10'))?.on).toBe(day('2027-05-10'));
  });

  it('stays the next when its day has passed and nothing says that it was held', () => {
    expect(nextEvent([planned('inspection', '2020-05-10')], 'inspection', null)?.on).toBe(day('2020-05-10'));
  });

  it('is none when none is planned', () => {
    expect(
      nextEvent([held('inspection', '2026-05-12'), planned('race_start', '2027-01-01')], 'inspection', null),
    ).toBeNull();
  });
});

describe('events about a day', () => {
  const services = [held('liferaft_service', '2026-06-01'), planned('liferaft_service', '2027-06-01')];

  it('the first on or after it may be on the day itself', () => {
    expect(firstEventFrom(services, 'liferaft_service', day('2026-06-01'))).toBe(day('2026-06-01'));
    expect(firstEventFrom(services, 'liferaft_service', day('2027-06-02'))).toBeNull();
  });

  it('the last on or before it is told only when another comes after', () => {
    expect(lastEventBefore(services, 'liferaft_service', day('2027-05-31'))).toBe(day('2026-06-01'));
    expect(lastEventBefore(services, 'liferaft_service', day('2027-06-01'))).toBeNull();
  });
});

describe('events as at a day', () => {
  it('an appointment after the day was still ahead, a mishap after it had not happened', () => {
    const events = [held('grounding', '2026-08-20'), held('inspection', '2026-08-20')];
    expect(eventsAsAt(events, { asOf: day('2026-08-19') })).toEqual([planned('inspection', '2026-08-20')]);
    expect(eventsAsAt(events, { asOf: day('2026-08-20') })).toEqual(events);
  });

  it('an event that was not known yet is not there', () => {
    const later = { ...planned('inspection', '2026-08-20'), recordedAt: '2026-01-02T00:00:00Z' };
    expect(eventsAsAt([later], { knownAt: '2026-01-01T00:00:00Z' })).toEqual([]);
  });
});
