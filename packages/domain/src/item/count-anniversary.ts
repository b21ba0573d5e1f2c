/** Limits that fall on an anniversary, with its window: of a certificate, or of a date that somebody gives. */
import { type Day, daysBetween } from '../calendar/day.ts';
import { dayInWords } from '../calendar/words.ts';
import type { AnniversaryWindow, CertificateTerms } from '../rule/certificate-terms.ts';
import type { Limit } from '../rule/rule.ts';
import { type Anniversary, anniversaryOf, nextUnanswered } from './anniversaries.ts';
import { ATTRIBUTES, type AttributeId, dateOf } from './attribute.ts';
import { type Certificate, certificateInForce, lengthInWords } from './certificate.ts';
import { type Act, afterRenewal, counted, noCertificate, surveysDuring, withDay } from './certificate-count.ts';
import { actsThatCount } from './last-done.ts';
import { type Grounds, type LimitCount, notCounted } from './limit-count.ts';
import type { FactSetAside } from './unit-aboard.ts';
import { factInWords } from './words.ts';

type Of<Kind extends Limit['kind']> = Extract<Limit, { kind: Kind }>;

export function countAnniversary(limit: Of<'anniversary'>, grounds: Grounds): LimitCount {
  const endorsed = limit.endorsed && dateOf(grounds.attributes, limit.endorsed);
  if (endorsed) return givenAnniversary(limit, endorsed.first, limit.endorsed as AttributeId, limit.window, grounds);
  const certificate = certificateInForce(limit.terms, grounds);
  if (certificate?.begins == null) return noCertificate(limit, limit.terms, grounds);
  const { at, last } = anniversariesOf(certificate, limit);
  const acts = surveysDuring(certificate, limit.terms, grounds);
  const { next, tooEarly } = nextUnanswered(at, 1, acts);
  const before = lastAnswer(acts, tooEarly);
  const start = { ...counted(limit, certificate, grounds, limit.of), setAside: tooEarly.map(early(at(next))) };
  const base = before || certificate.survey ? start : withoutSurvey(start, limit.terms, certificate.begins);
  if (next <= last) return ofAnniversary(base, at(next), before);
  return ofAnniversary(
    afterRenewal(base, certificate),
    anniversaryOf(certificate.expires as Day, 1, limit.window),
    before,
  );
}

/** Only the expiry is on record: what was done before it came on record may be missing. */
function withoutSurvey(base: LimitCount, terms: CertificateTerms, begins: Day): LimitCount {
  const began = `The survey that began it is not on record: it is taken to run for ${lengthInWords(terms)}, from ${dayInWords(begins)}.`;
  const none = 'No survey since then is on record: if one was done, record it.';
  return { ...base, assumed: [...base.assumed, began], doubts: [...base.doubts, none] };
}

/** `null`: the certificate does not live to see one of them. */
export function countOneOf(limit: Of<'one_of_anniversaries'>, grounds: Grounds): LimitCount | null {
  const certificate = certificateInForce(limit.terms, grounds);
  if (certificate?.begins == null || certificate.expires === null) return noCertificate(limit, limit.terms, grounds);
  const { expires } = certificate;
  const { at, last } = anniversariesOf(certificate, { of: 'expiry', window: limit.window });
  const numbers = limit.numbers.filter((number) => number <= last);
  const [first] = numbers;
  if (first === undefined) return null;
  const acts = surveysDuring(certificate, limit.terms, grounds);
  const done = acts.some(({ day }) => day >= at(first).countsFrom);
  const base = counted(limit, certificate, grounds);
  if (!done) return ofLast({ ...base, setAside: acts.map(early(at(first))) }, numbers.map(at));
  return ofLast(
    afterRenewal(base, certificate),
    limit.numbers.map((number) => anniversaryOf(expires, number, limit.window)),
  );
}

export function countGivenAnniversary(limit: Of<'given_anniversary'>, grounds: Grounds): LimitCount {
  const date = dateOf(grounds.attributes, limit.attribute);
  const { words, whereFound: place } = ATTRIBUTES[limit.attribute];
  if (!date) return notCounted(limit, grounds, { what: words, whereFound: place });
  return givenAnniversary(limit, date.first, limit.attribute, limit.window, grounds);
}

function givenAnniversary(
  limit: Limit,
  base: Day,
  attribute: AttributeId,
  window: AnniversaryWindow,
  grounds: Grounds,
): LimitCount {
  const at = (number: number) => anniversaryOf(base, number, window);
  const acts = actsThatCount(grounds.facts, grounds.duty.resets).map(withDay);
  const since = acts.filter(({ day }) => day > at(-1).window.closes);
  const { next, tooEarly } = nextUnanswered(at, 0, since);
  const { words, whereFound: place } = ATTRIBUTES[attribute];
  const none = notCounted(limit, grounds, { what: words, whereFound: place });
  const basis = `On record: ${words}, ${dayInWords(base)}`;
  const known = { ...none, missing: [], basis, setAside: tooEarly.map(early(at(next))) };
  return ofAnniversary(known, at(next), lastAnswer(since, tooEarly));
}

/** Its anniversaries by their number, and the number of the last one before it expires. */
function anniversariesOf(
  { begins, expires }: Certificate,
  { of, window }: Pick<Of<'anniversary'>, 'of' | 'window'>,
): { at: (number: number) => Anniversary; last: number } {
  const first = begins as Day;
  const years = expires === null ? null : Math.max(1, Math.round(daysBetween(first, expires) / 365.25));
  const at =
    of === 'expiry' && expires !== null && years !== null
      ? (number: number) => anniversaryOf(expires, number - years, window)
      : (number: number) => anniversaryOf(first, number, window);
  return { at, last: years === null ? Number.POSITIVE_INFINITY : years - 1 };
}

function ofAnniversary(base: LimitCount, { on, window }: Anniversary, before: Act | null): LimitCount {
  const limit = `the anniversary on ${dayInWords(on)}`;
  const counted = { ...base, on, limit, windows: [window] };
  if (!before) return counted;
  return { ...counted, basis: factInWords(before.fact), factIds: [...base.factIds, before.fact.id] };
}

function ofLast(base: LimitCount, anniversaries: readonly Anniversary[]): LimitCount {
  const windows = anniversaries.map(({ window }) => window);
  const on = Math.max(...anniversaries.map((each) => each.on)) as Day;
  return { ...base, on, windows, limit: `${base.limit}, ${dayInWords(on)}` };
}

function lastAnswer(acts: readonly Act[], tooEarly: readonly Act[]): Act | null {
  return acts.findLast((act) => !tooEarly.includes(act)) ?? null;
}

const early =
  ({ on, countsFrom }: Anniversary) =>
  ({ fact }: Act): FactSetAside => ({
    fact,
    why: `It was done before ${dayInWords(countsFrom)}, too early to count for the anniversary on ${dayInWords(on)}.`,
  });
