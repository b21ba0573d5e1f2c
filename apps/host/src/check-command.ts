/** `check`: every due date worked out again, every audit along its chain, every file looked for. */
import { checkAudit } from '@garboard/actions/upkeep/check-audit.ts';
import { countMissing } from '@garboard/actions/upkeep/look-after-files.ts';
import { recompute } from '@garboard/actions/upkeep/recompute.ts';
import type { BlobStore } from '@garboard/blobs/blob-store.ts';
import type { Head } from '@garboard/db/audit/chain.ts';
import type { Break } from '@garboard/db/audit/check-chain.ts';
import { listOrganisations, type OrganisationRecord } from '@garboard/db/organisation/organisations.ts';
import type { Pools } from '@garboard/db/pool.ts';
import { type Answer, type Options, wrong } from './admin-answer.ts';

export async function check(pools: Pools, store: BlobStore, { organisation, kept }: Options): Promise<Answer> {
  const head = kept === undefined ? undefined : readHead(kept);
  if (head === null) return wrong('--kept must be NUMBER:HASH as an earlier check printed it');
  if (head && organisation === undefined) return wrong('--kept needs --organisation');
  const all = await listOrganisations(pools.owner);
  const asked = organisation === undefined ? all : all.filter(({ name }) => isSame(name, organisation));
  if (organisation !== undefined && asked.length === 0)
    return { ok: false, line: `there is no organisation ${organisation}` };
  const dates = await checkDates(pools, asked);
  const audits = [];
  for (const one of asked) audits.push(await auditLine(pools, one, head));
  const answers = [...audits, dates, await checkFiles(pools, store, asked)];
  return { ok: answers.every(({ ok }) => ok), line: answers.map(({ line }) => line).join('\n') };
}

const isSame = (name: string, asked: string) => name.toLowerCase() === asked.toLowerCase();

function readHead(text: string): Head | null {
  const [, sequence, hash] = /^(\d{1,15}):([0-9a-f]{64})$/.exec(text) ?? [];
  return sequence && hash ? { sequence: Number(sequence), hash } : null;
}

async function checkDates(pools: Pools, organisations: readonly OrganisationRecord[]): Promise<Answer> {
  const found = { vessels: 0, obligations: 0, findings: 0, days: 0, unconfirmed: 0 };
  for (const { id } of organisations) {
    const one = await recompute(pools.app, id);
    found.vessels += one.vessels;
    found.obligations += one.obligations;
    found.findings += one.findings;
    found.days += one.days;
    found.unconfirmed += one.unconfirmed;
  }
  const isRepaired = found.obligations + found.findings + found.days > 0;
  const counted = `${found.vessels} vessels, ${found.obligations} obligations differed, ${found.findings} findings differed, ${found.days} day counts differed`;
  const line = isRepaired ? `${counted}; repaired` : counted;
  if (found.unconfirmed === 0) return { ok: !isRepaired, line };
  return { ok: false, line: `${line}; a second reckoning comes to other dates for ${found.unconfirmed} obligations` };
}

async function checkFiles(
  pools: Pools,
  store: BlobStore,
  organisations: readonly OrganisationRecord[],
): Promise<Answer> {
  const found = { kept: 0, missing: 0 };
  for (const { id } of organisations) {
    const one = await countMissing({ db: pools.app, store, organisationId: id });
    found.kept += one.kept;
    found.missing += one.missing;
  }
  return { ok: found.missing === 0, line: `${found.kept} files, ${found.missing} missing` };
}

/** The head is printed to be kept elsewhere: who writes the whole tail anew is found by that alone. */
async function auditLine(pools: Pools, { id, name }: OrganisationRecord, kept?: Head): Promise<Answer> {
  const { rows, head, broken } = await checkAudit(pools.app, id, kept);
  if (broken) return { ok: false, line: `${name}: audit row ${broken.at} ${BROKEN[broken.what]}` };
  return { ok: true, line: `${name}: audit of ${rows} rows is whole, head ${head.sequence}:${head.hash}` };
}

const BROKEN: Readonly<Record<Break['what'], string>> = {
  changed: 'was changed',
  missing: 'is missing',
  not_linked: 'does not follow the one before it',
  cut_off: 'is missing, with all after it',
  not_counted: 'was added behind the head',
  not_as_kept: 'is not the one that was kept',
  before_chain: '(from before the chain) was taken away or added',
};
