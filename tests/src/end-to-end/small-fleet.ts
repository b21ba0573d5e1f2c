/** Three invented vessels: a raft out of date, flares out of date, and one of which little is known. */
import type { ActionContext } from '@garboard/actions/context.ts';
import { takeRemedyStep } from '@garboard/actions/finding/take-remedy-step.ts';
import { takeReading } from '@garboard/actions/survey-visit/take-reading.ts';
import { recordSituation } from '@garboard/actions/vessel/record-situation.ts';
import { pools } from '../support/database.ts';
import { aFinding } from '../support/findings.ts';
import { accepted, mintOrganisation, type TestOrganisation } from '../support/organisation.ts';
import { anItem, aVessel, state } from '../support/vessels.ts';
import { aLimitation, aReferral, aVisit } from '../support/visits.ts';

const STATION = {
  name: 'Skerry Raft Service',
  capacity: 'liferaft_service_station',
  certificate: '5120',
} as const;

export type SmallFleet = {
  organisation: TestOrganisation;
  kittiwakeId: string;
  dunlinId: string;
  raftId: string;
};

export async function smallFleet(): Promise<SmallFleet> {
  const organisation = await mintOrganisation(pools);
  const ctx = organisation.ctx();
  const kittiwake = await aVessel(ctx, ['solas'], 'Kittiwake', {
    builtYear: 2001,
    identifiers: { hin: 'GB-QZX00042C898', mmsi: '232123456', callSign: 'MABC2' },
  });
  const petrel = await aVessel(ctx, ['us_recreational'], 'Petrel');
  const dunlin = await aVessel(ctx, ['nfpa10'], 'Dunlin');

  const raft = (await anItem(ctx, kittiwake.id, 'liferaft', 'Liferaft, 8 persons')).item.id;
  await state(ctx, raft, { fact: 'manufactured', on: '2024-06', evidence: 'stamped' });
  const wrong = await state(ctx, raft, {
    fact: 'serviced',
    on: '2025-02-22',
    doneBy: STATION,
    evidence: 'certificate',
  });
  await state(ctx, raft, {
    fact: 'serviced',
    on: '2025-09-22',
    doneBy: STATION,
    evidence: 'certificate',
    corrects: wrong.fact.id,
    note: 'the certificate of another raft',
  });
  const rig = (await anItem(ctx, kittiwake.id, 'standing_rigging_wire', 'Standing rigging, wire')).item.id;
  await state(ctx, rig, { fact: 'installed', on: '2024-04-02', doneBy: { capacity: 'rigger' } });
  await state(ctx, rig, { fact: 'inspected', on: '2026-05-10', doneBy: { capacity: 'rigger' } });

  const flares = (await anItem(ctx, petrel.id, 'hand_flare', 'Hand flares')).item.id;
  await state(ctx, flares, { fact: 'printed_expiry', on: '2026-10', evidence: 'printed', readOn: '2024-05-01' });
  await anItem(ctx, dunlin.id, 'portable_extinguisher_dry_powder', 'Extinguisher, galley');
  const ashore = {
    from: '2026-10-18',
    place: 'ashore',
    use: 'laid_up',
    dismantled: false,
    underRepair: false,
  } as const;
  accepted(await recordSituation(ctx, { vesselId: dunlin.id, ...ashore }));
  return { organisation, kittiwakeId: kittiwake.id, dunlinId: dunlin.id, raftId: raft };
}

/** The same, with what was found aboard one of them. */
export async function smallFleetWithFindings(): Promise<SmallFleet & { hoseId: string; visitId: string }> {
  const fleet = await smallFleet();
  const ctx = fleet.organisation.ctx();
  const { hoseId } = await someFindings(ctx, fleet.kittiwakeId, fleet.raftId);
  const persons = [{ name: 'Ines Vale', capacity: 'surveyor', qualification: 'Small craft surveyor, S-311' }];
  const before = await aVisit(ctx, fleet.kittiwakeId, { startedOn: '2026-05-10', detail: { persons } });
  await aLimitation(ctx, before.id);
  await aReferral(ctx, before.id);
  const instrument = {
    key: 'meter',
    maker: 'Quillmere',
    model: 'QM-2',
    serial: null,
    scale: '0-100',
    checkedOn: null,
    nextCheckOn: '2026-10-01',
  };
  const now = await aVisit(ctx, fleet.kittiwakeId, {
    startedOn: '2026-11-24',
    detail: { persons, place: 'Tangle Quay, hard standing', instruments: [instrument] },
  });
  const reading = {
    zone: 'hull_below_water',
    point: 'port, frame 4',
    measure: 'moisture',
    value: 18,
    words: null,
  } as const;
  accepted(await takeReading(ctx, { visitId: now.id, said: { ...reading, instrument: 'meter' } }));
  return { ...fleet, hoseId, visitId: now.id };
}

/** A hose that cannot wait, a weep that somebody has mended, a scratch that can wait, and a lid to be watched. */
async function someFindings(ctx: ActionContext, vesselId: string, raftId: string): Promise<{ hoseId: string }> {
  const hose = await aFinding(
    ctx,
    vesselId,
    { urgency: 'before_use', trade: 'gas_engineer', words: 'Bent hard behind the cooker.' },
    '2026-11-12',
  );
  const { id, version } = await aFinding(
    ctx,
    vesselId,
    {
      zone: 'seacocks',
      what: 'Seacock of the heads weeps',
      hazard: 'watertight_integrity',
      urgency: 'next_lay_up',
      trade: 'boatbuilder',
    },
    '2026-09-30',
  );
  const doneBy = { name: 'Tangle Quay Yard', capacity: 'yard', certificate: null } as const;
  const step = {
    step: 'reported_done',
    work: 'Seacock renewed in bronze',
    doneOn: '2026-11-20',
    doneBy,
    evidence: [],
    facts: [],
  } as const;
  accepted(await takeRemedyStep(ctx, { findingId: id, expectedVersion: version, step, facts: [] }));
  await aFinding(
    ctx,
    vesselId,
    { zone: 'lifesaving', itemId: raftId, what: 'Cradle of the raft loose', hazard: 'life' },
    '2026-11-12',
  );
  await aFinding(
    ctx,
    vesselId,
    { zone: 'gas_locker', what: 'Lid of the gas locker does not seal', urgency: 'observe' },
    '2026-11-12',
  );
  return { hoseId: hose.id };
}
