/** The answer to "what is out of date", as somebody would say it. */
import { counted, inAList, numberInWords, sentenceCase } from '../ui/number-words.ts';
import { countAdvice, countAll, countBinding, type StandingCounts } from './counts.ts';

/** "Twenty-three things on seven vessels: nine by law or certificate, fourteen by advice." */
export function overdueSentence(counts: StandingCounts, vessels: number, found = 0): string {
  const all = countAll(counts.overdue) + found;
  if (all === 0) return 'Nothing on record is out of date. That is not the same as safe: the skipper decides.';
  const where = `${sentenceCase(counted(all, 'thing', 'things'))} on ${counted(vessels, 'vessel', 'vessels')}`;
  return `${where}: ${inAList(shares(counts, found))}.`;
}

function shares({ overdue }: StandingCounts, found: number): string[] {
  const parts: [number, string][] = [
    [countBinding(overdue), 'by law or certificate'],
    [overdue.insurer, 'by an insurer’s terms'],
    [countAdvice(overdue), 'by advice'],
    [found, 'found and not put right'],
  ];
  const some = parts.filter(([count]) => count > 0);
  if (some.length === 1)
    return some.map(([count, by]) => (count === 1 ? by : count === 2 ? `both ${by}` : `all ${by}`));
  return some.map(([count, by]) => `${numberInWords(count)} ${by}`);
}

/** "Eleven more have no date to go by." Empty when there are none. */
export function unknownSentence(counts: StandingCounts, found = 0): string {
  const unknown = countAll(counts.unknown) + found;
  if (unknown === 0) return '';
  const more = countAll(counts.overdue) === 0 ? '' : ' more';
  return `${sentenceCase(numberInWords(unknown))}${more} ${unknown === 1 ? 'has' : 'have'} no date to go by.`;
}
