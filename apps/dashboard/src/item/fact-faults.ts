/** Brings each fault the API points at to the box it is about. */
import type { Problem } from '@garboard/client/api-problem.ts';
import type { Box, Faults } from './fact-draft.ts';

const BOX_AT: Record<string, Box> = {
  '/fact': 'fact',
  '/on': 'on',
  '/test': 'test',
  '/outcome': 'outcome',
  '/doneBy/name': 'name',
  '/doneBy/capacity': 'capacity',
  '/doneBy/certificate': 'certificate',
  '/evidence': 'evidence',
  '/until': 'until',
  '/reading': 'readingValue',
  '/reading/value': 'readingValue',
  '/reading/unit': 'readingUnit',
  '/readOn': 'readOn',
  '/note': 'note',
};

/** `others` are faults of no box: what is wrong with the whole, or with something the form does not ask. */
export function faultsByBox(problem: Problem, shown: (box: Box) => boolean): { faults: Faults; others: string[] } {
  const faults: Faults = {};
  const others: string[] = [];
  for (const { pointer, detail } of problem.errors ?? []) {
    const box = BOX_AT[pointer];
    if (!box || !shown(box)) others.push(pointer === '' ? detail : `${pointer.slice(1)}: ${detail}`);
    else faults[box] = faults[box] ? `${faults[box]}; ${detail}` : detail;
  }
  if (others.length === 0 && Object.keys(faults).length === 0) others.push(problem.detail ?? problem.title);
  return { faults, others };
}
