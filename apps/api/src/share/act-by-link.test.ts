/** What an outsider does by a link: a yard reports the work that it was given, an owner says yes or no. */
import type { AuditPage } from '@garboard/contract/audit/audit.ts';
import type { EvidenceFilePage } from '@garboard/contract/evidence/evidence.ts';
import type { Finding, FindingEntryPage } from '@garboard/contract/finding/finding.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import type { SharedView, ShareLinkWithText } from '@garboard/contract/share/share-link.ts';
import { app, type Client, match, pointersOf, signedIn, tell } from '@garboard/tests/support/api.ts';
import { aBoat, DRAIN, HOSE } from '@garboard/tests/support/boat-with-findings.ts';
import { aJpeg } from '@garboard/tests/support/evidence.ts';
import { NOW, TODAY } from '@garboard/tests/support/organisation.ts';
import { describe, expect, it } from 'vitest';

const expiresAt = new Date(NOW.getTime() + 30 * 86_400_000).toISOString();
const ESTIMATE = { amount: '180.00', currency: 'EUR', author: 'Ines Vale' };
const OFFER = 'Drain runs slowly: put it right, about 180.00 EUR, says Ines Vale.';
const DONE = { at: 0, work: 'Hose renewed, tested for ten minutes', doneOn: TODAY, name: 'Tangle Quay Yard' };

const byLink = <Body>(act: 'look' | 'reports' | 'answers', body: object) =>
  tell<Body>(app.request, 'POST', `/v1/shared/${act}`, { 'content-type': 'application/json' }, body);
const make = <Body = ShareLinkWithText>(owner: Client, more: object) =>
  owner.post<Body>('/v1/share-links', { label: 'the yard', expiresAt, ...more });

async function aYard() {
  const owner = await signedIn();
  const { vessel, enter } = await aBoat(owner);
  const hose = await enter();
  const other = await enter(DRAIN);
  const { body } = await make(owner, { purpose: 'yard', findingIds: [hose.id] });
  return { owner, vessel, hose, other, link: body, token: body.token ?? '' };
}

async function anOwner() {
  const owner = await signedIn();
  const { vessel, enter } = await aBoat(owner);
  await enter();
  const drain = await enter({ ...DRAIN, estimate: ESTIMATE });
  const { body } = await make(owner, { purpose: 'owner', vesselIds: [vessel.id] });
  return { owner, vessel, drain, token: body.token ?? '' };
}

describe('a yard’s link', () => {
  it('shows the work that was given, and nothing else of the boat or the fleet', async () => {
    const { token, other } = await aYard();
    const { body, text } = await byLink<SharedView>('look', { token });
    expect(body).toMatchObject({ purpose: 'yard', vessels: [], due: [], offers: [] });
    expect(body.work).toMatchObject([
      { at: 0, vessel: 'Marsh Harrier', number: 1, what: HOSE.what, canBeReported: true },
    ]);
    expect(text).not.toContain(other.what);
    expect(text).not.toMatch(/[0-9a-f]{8}-[0-9a-f]{4}-7/);
  });

  it('reports it done with a photograph; somebody of the house verifies, and who wrote it is known', async () => {
    const { token, owner, vessel, hose, link } = await aYard();
    const photograph = (await aJpeg(600, 400)).toString('base64');
    const told = await byLink<{ reads: string }>('reports', { ...DONE, token, photograph });
    expect([told.status, told.body.reads]).toEqual([200, `Reported done on ${TODAY}; nobody else has looked yet`]);

    const { items } = (await owner.get<FindingEntryPage>(`/v1/findings/${hose.id}/entries`)).body;
    expect(items.at(-1)).toMatchObject({
      step: 'reported_done',
      recordedBy: `share_link:${link.id}`,
      said: { work: DONE.work, doneBy: { name: 'Tangle Quay Yard', capacity: 'yard' } },
      evidence: [{ kind: 'photograph', evidenceId: expect.any(String) }],
    });
    const kept = (await owner.get<EvidenceFilePage>(`/v1/vessels/${vessel.id}/evidence`)).body.items;
    expect(kept).toMatchObject([{ zone: HOSE.zone, recordedBy: `share_link:${link.id}` }]);
    const lines = (await owner.get<AuditPage>('/v1/audit')).body.items.slice(0, 2);
    expect(lines.map(({ actor, verb }) => `${actor.kind} ${actor.name} ${verb}`)).toEqual([
      'share_link the yard finding_reported_done',
      'share_link the yard keep_evidence',
    ]);
    const verdict = { right: true, evidence: [{ kind: 'looked', words: 'dated 2026' }] };
    expect((await owner.post(`/v1/findings/${hose.id}/verification`, verdict, match(2))).status).toBe(200);
  });

  it('reports once: what is reported already, or was ended, is 409, and keeps no photograph', async () => {
    const { token, owner, vessel } = await aYard();
    await byLink('reports', { ...DONE, token });
    const again = await byLink<Problem>('reports', { ...DONE, token, photograph: (await aJpeg()).toString('base64') });
    expect([again.status, again.body.type]).toEqual([409, '/problems/conflict']);
    expect((await owner.get<EvidenceFilePage>(`/v1/vessels/${vessel.id}/evidence`)).body.items).toEqual([]);
  });

  it('is told every fault of a report, and of its photograph', async () => {
    const { token } = await aYard();
    const late = await byLink<Problem>('reports', { ...DONE, token, doneOn: '2026-12-01' });
    expect(pointersOf(late)).toEqual(['/doneOn']);
    const text = Buffer.from('<script>alert(1)</script>').toString('base64');
    const bad = await byLink<Problem>('reports', { ...DONE, token, photograph: text });
    expect([bad.status, bad.body.errors?.[0]?.pointer]).toEqual([422, '/photograph']);
    expect((await byLink<Problem>('reports', { token, at: -1 })).status).toBe(422);
  });

  it('does nothing else: no other work, no answer to an estimate, and nothing once it is revoked', async () => {
    const { token, owner, link } = await aYard();
    const answer = { token, number: 2, yes: true, name: 'Maren Holt', offer: OFFER };
    for (const told of [await byLink('reports', { ...DONE, token, at: 1 }), await byLink('answers', answer)])
      expect(told.status).toBe(404);
    await owner.post(`/v1/share-links/${link.id}/revocation`, {}, match(1));
    expect((await byLink('reports', { ...DONE, token })).status).toBe(404);
  });

  it('is made for open findings of one’s own, and for nobody without them', async () => {
    const { owner } = await aYard();
    const theirs = (await aYard()).hose.id;
    expect(pointersOf(await make<Problem>(owner, { purpose: 'yard', findingIds: [theirs] }))).toEqual([
      '/findingIds/0',
    ]);
    expect(pointersOf(await make<Problem>(owner, { purpose: 'yard' }))).toEqual(['/findingIds']);
    expect(pointersOf(await make<Problem>(owner, { findingIds: [theirs] }))).toEqual(['/findingIds', '/findingIds/0']);
  });
});

describe('an owner’s link', () => {
  it('shows that boat alone, with what waits for a yes or a no in words', async () => {
    const { token } = await anOwner();
    const { body } = await byLink<SharedView>('look', { token });
    expect(body.vessels.map(({ name }) => name)).toEqual(['Marsh Harrier']);
    expect(body.offers).toEqual([{ number: 2, zone: 'gas_locker', offer: OFFER }]);
  });

  it('says yes in the very words that were shown; the house reads who, when and to what', async () => {
    const { token, owner, drain } = await anOwner();
    const answer = { token, number: 2, yes: true, name: 'Maren Holt', offer: OFFER, words: 'before Easter, please' };
    expect((await byLink('answers', answer)).status).toBe(200);

    const ownerSaid = { yes: true, name: 'Maren Holt', on: TODAY, offer: OFFER };
    expect((await owner.get<Finding>(`/v1/findings/${drain.id}`)).body).toMatchObject({
      ownerSaid,
      remedy: { state: 'found' },
    });
    expect((await byLink<SharedView>('look', { token })).body.offers).toMatchObject([{ answered: ownerSaid }]);
    const no = await byLink('answers', { ...answer, yes: false });
    expect(no.status).toBe(200);
    expect((await owner.get<Finding>(`/v1/findings/${drain.id}`)).body.ownerSaid?.yes).toBe(false);
  });

  it('is refused where the offer was changed meanwhile, and where nothing is offered', async () => {
    const { token, owner, drain } = await anOwner();
    await owner.patch(`/v1/findings/${drain.id}`, { estimate: { ...ESTIMATE, amount: '480.00' } }, match(1));
    const answer = { token, number: 2, yes: true, name: 'Maren Holt', offer: OFFER };
    const told = await byLink<Problem>('answers', answer);
    expect([told.status, told.body.detail]).toEqual([409, expect.stringContaining('was changed since it was shown')]);
    expect((await byLink('answers', { ...answer, number: 1 })).status).toBe(404);
  });

  it('is for one vessel', async () => {
    const { owner } = await anOwner();
    expect(pointersOf(await make<Problem>(owner, { purpose: 'owner' }))).toEqual(['/vesselIds']);
  });
});
