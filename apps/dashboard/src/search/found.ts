/** What the palette lists: pages, vessels, things and rules, as one row each with a place to go to. */
import { PAGES } from '../frame/pages.ts';
import type { May } from '../organisation/may.ts';
import { strings } from '../strings/search.ts';
import type { SearchAnswer } from './search.query.ts';

export type Found = { readonly key: string; readonly words: string; readonly about: string; readonly href: string };
export type FoundGroup = { readonly name: string; readonly found: readonly Found[] };

const MOST_OF_A_RULE = 76;

/** Groups that have nothing are left out. */
export function foundGroups(words: string, answer: SearchAnswer | undefined, may: May): FoundGroup[] {
  const { vessels = [], things = [], rules = [] } = words === '' ? {} : (answer ?? {});
  const groups: FoundGroup[] = [
    { name: strings.vessels, found: vessels.map(vessel) },
    { name: strings.things, found: things.map(thing) },
    { name: strings.pages, found: pages(words, may) },
    { name: strings.rules, found: rules.map(rule) },
  ];
  return groups.filter(({ found }) => found.length > 0);
}

function pages(words: string, may: May): Found[] {
  const asked = words.toLowerCase();
  return PAGES.filter(({ permission }) => permission === undefined || may[permission])
    .filter((page) => page.words.toLowerCase().includes(asked))
    .map((page) => ({ key: `page ${page.to}`, words: page.words, about: '', href: page.to }));
}

const vessel = ({ id, name, type }: SearchAnswer['vessels'][number]): Found => ({
  ...{ key: id, words: name, about: type ?? '', href: `/vessels/${id}` },
});

function thing({ id, label, zone, serialNumber, withdrawn, vessel }: SearchAnswer['things'][number]): Found {
  const about = [vessel.name, zone, serialNumber, withdrawn && strings.withdrawn].filter(Boolean).join(' · ');
  return { key: id, words: label, about, href: `/vessels/${vessel.id}?thing=${id}` };
}

function rule({ id, inWords, publication, clause }: SearchAnswer['rules'][number]): Found {
  return {
    key: `rule ${id}`,
    words: shortened(inWords),
    about: [publication, clause].filter(Boolean).join(' '),
    href: `/rules/${id}`,
  };
}

/** Cut between two words. */
function shortened(text: string): string {
  if (text.length <= MOST_OF_A_RULE) return text;
  return `${text.slice(0, text.lastIndexOf(' ', MOST_OF_A_RULE))} …`;
}
