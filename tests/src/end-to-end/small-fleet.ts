/** Three invented vessels: a raft out of date, flares out of date, and one of which little is known. */
import { recordSituation } from '@garboard/actions/vessel/record-situation.ts';
import { pools } from '../support/database.ts';
import { accepted, mintOrganisation, type TestOrganisation } from '../support/organisation.ts';
import { anItem, aVessel, state } from '../support/vessels.ts';

const STATION = {
  name: 'Skerry Raft Service',
  capacity: 'liferaft_service_station',
  certificate: '5120',
} as const;

export type SmallFleet = { organisation: TestOrganisation; kittiwakeId: string; dunlinId: string; raftId: string };

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
