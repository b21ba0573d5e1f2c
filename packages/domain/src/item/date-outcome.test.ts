import { describe, expect, it } from 'vitest';
import { datesOf, day, fact, held, owedUnder, planned, type Question } from './facts.test-support.ts';

describe('what is overdue after', () => {
  it('is the due date, where nothing else is said', () => {
    const facts = [fact('installed', '2020-05-01')];
    expect(datesOf(owedUnder('lpg-reg', { kind: 'gas_regulator', facts }))).toEqual({
      dueOn: '2030-05-01',
      overdueAfter: '2030-05-01',
    });
  });

  it("is the window's close, where the rule has one", () => {
    const facts = [fact('serviced', '2025-11-30', { by: 'fire_equipment_technician' })];
    const system: Question = { kind: 'fixed_co2_system', schemes: ['solas'], facts };
    expect(datesOf(owedUnder('fe-fixed', system, 'service'))).toEqual({
      dueOn: '2027-11-30',
      overdueAfter: '2028-02-29',
      windows: [['2027-08-30', '2028-02-29']],
    });
  });

  it('is the expiry, where something expires, whatever the day by which it is to be replaced', () => {
    const flares: Question = {
      kind: 'hand_flare',
      schemes: ['us_sailing_school'],
      facts: [fact('printed_expiry', '2026-05')],
    };
    const events = [
      held('inspection', '2026-02-01'),
      planned('inspection', '2026-08-20'),
      planned('inspection', '2027-02-10'),
    ];
    expect(datesOf(owedUnder('pyro-us-school', { ...flares, events }))).toEqual({
      dueOn: '2026-05-31',
      overdueAfter: '2026-05-31',
      expiresOn: '2026-05-31',
      replaceBy: '2026-08-20',
    });
    expect(datesOf(owedUnder('pyro-us-school', flares))).not.toHaveProperty('replaceBy');
  });
});

describe('what is packed in a raft', () => {
  const packed = (expiry: string, ...services: string[]) =>
    datesOf(
      owedUnder('raft-pack', {
        kind: 'liferaft_packed_contents',
        schemes: ['solas'],
        facts: [fact('printed_expiry', expiry)],
        events: services.map((on) => planned('liferaft_service', on)),
      }),
    );

  it('is replaced at the last service before it expires, when the next comes too late', () => {
    expect(packed('2027-02-28', '2026-06-01', '2027-06-01')).toEqual({
      dueOn: '2026-06-01',
      overdueAfter: '2027-02-28',
      expiresOn: '2027-02-28',
      replaceBy: '2026-06-01',
    });
  });

  it('waits for the next service when that comes on the day it expires', () => {
    expect(packed('2027-06-01', '2026-06-01', '2027-06-01', '2028-06-01')).toMatchObject({ replaceBy: '2027-06-01' });
  });

  it('has only its expiry while the next service is not planned', () => {
    expect(packed('2027-06-30', '2026-06-01', '2027-06-01')).toEqual({
      dueOn: '2027-06-30',
      overdueAfter: '2027-06-30',
      expiresOn: '2027-06-30',
    });
  });
});

describe('grace tied to the next inspection', () => {
  const raft = (inspection: string): Question => ({
    kind: 'liferaft',
    schemes: ['us_small_passenger'],
    facts: [fact('serviced', '2025-03-15', { by: 'liferaft_service_station' })],
    events: [planned('inspection', inspection)],
  });

  it.each([
    ['2026-03-15', 'on the due day itself'],
    ['2026-07-01', 'inside five months'],
    ['2026-08-15', 'on the last day of the five months'],
  ])('reaches to the inspection of %s (%s), without moving what is overdue', (inspection) => {
    expect(datesOf(owedUnder('raft-us', raft(inspection)))).toEqual({
      dueOn: '2026-03-15',
      overdueAfter: '2026-03-15',
      latestPermittedOn: inspection,
    });
  });

  it.each(['2026-03-14', '2026-08-16'])('is none when the inspection is on %s', (inspection) => {
    expect(datesOf(owedUnder('raft-us', raft(inspection)))).not.toHaveProperty('latestPermittedOn');
  });

  it('counts once it is on record', () => {
    const extended = fact('extended', '2026-03-01', { until: day('2026-06-30'), by: 'marine_inspector' });
    const question = raft('2026-07-01');
    expect(datesOf(owedUnder('raft-us', { ...question, facts: [...(question.facts ?? []), extended] }))).toMatchObject({
      dueOn: '2026-03-15',
      overdueAfter: '2026-06-30',
    });
  });
});

describe('what is due at the next inspection', () => {
  const rig = (more: Partial<Question>): Question => ({
    kind: 'standing_rigging_wire',
    schemes: ['us_sailing_school'],
    ...more,
  });

  it('is due on the day planned', () => {
    expect(datesOf(owedUnder('rig-coi', rig({ events: [planned('inspection', '2027-02-10')] })))).toMatchObject({
      dueOn: '2027-02-10',
    });
  });

  it('moves to the next plan once the inspector has passed it', () => {
    const facts = [fact('inspected', '2027-02-10', { by: 'marine_inspector' })];
    const events = [planned('inspection', '2027-02-10'), planned('inspection', '2028-02-10')];
    expect(datesOf(owedUnder('rig-coi', rig({ facts, events })))).toMatchObject({ dueOn: '2028-02-10' });
  });

  it('is unknown when none is planned', () => {
    expect(datesOf(owedUnder('rig-coi', rig({})))).toEqual({ missing: ['the next inspection'] });
  });
});
