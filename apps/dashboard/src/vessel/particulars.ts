/** What a vessel is, in a few words. */
import type { components } from '@garboard/client/generated/api.d.ts';
import { formatDay } from '../ui/calendar.ts';

type Vessel = components['schemas']['Vessel'];
type Situation = components['schemas']['Situation'];

const metres = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 1 });

/** "11 m sloop". */
export function particularsInShort({ lengthOverallM, type }: { lengthOverallM?: number; type?: string }): string {
  return [lengthInMetres(lengthOverallM), type].filter(Boolean).join(' ');
}

/** "10.4 m"; nothing where it is not known. */
export function lengthInMetres(length: number | undefined): string {
  return length === undefined ? '' : `${metres.format(length)} m`;
}

/** "11 m sloop, GRP, 2009 · Skerry · ashore, laid up since 18 Oct 2026". */
export function particularsInFull(vessel: Vessel, now: Situation | undefined): string {
  const built = [particularsInShort(vessel), vessel.hullMaterial, vessel.builtYear].filter(Boolean).join(', ');
  return [built, vessel.homePort, now && situationInWords(now)].filter(Boolean).join(' · ');
}

const USE: Record<Situation['use'], string> = {
  in_commission: 'in commission',
  laid_up: 'laid up',
  out_of_service: 'out of service',
};

function situationInWords({ place, use, dismantled, underRepair, from }: Situation): string {
  const words = [place, USE[use], dismantled && 'dismantled', underRepair && 'under repair'].filter(Boolean);
  return `${words.join(', ')} since ${formatDay(from)}`;
}

/** The situation that holds on a day: the latest that began by then. */
export function situationOn(situations: readonly Situation[], day: string): Situation | undefined {
  return situations.filter(({ from }) => from <= day).sort((a, b) => (a.from < b.from ? 1 : -1))[0];
}
