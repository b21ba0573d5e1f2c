/** Words of photographs and papers. */
import { counted, sentenceCase } from '../ui/number-words.ts';

export const strings = {
  photographs: 'Photographs',
  field: {
    choose: 'Photographs or a PDF',
    help: 'JPEG, PNG, WebP, AVIF, HEIC or PDF, each at most 20 MB. What a photograph tells of position and camera is not shown to anybody.',
    sending: (name: string, percent: number) => `${name}: ${percent} % is safe`,
    waiting: (name: string) => `${name}: waits`,
    refused: (name: string, why: string) => `${name} ${why}`,
    failed: (name: string) => `${name} did not arrive. Choose it again.`,
    takeOut: 'Leave it out',
    tooLarge: 'has more than 20 MB',
  },
  missing: 'The file is not in the store any more. What is written about it is still good.',
  notShown: 'Cannot be shown here; take it as it came.',
  document: 'PDF',
  open: (words: string) => `Open: ${words}`,
  untold: 'Without words',
  pair: { title: 'Before and after', before: 'As it was found', after: 'After the work' },
  vessel: {
    link: 'Photographs',
    title: (vessel: string) => `What ${vessel} looked like, and when`,
    answer: (pictures: number, points: number) => {
      if (pictures === 0) return 'No photograph of her has been kept yet.';
      const all = sentenceCase(counted(pictures, 'photograph or paper', 'photographs and papers'));
      return points === 0
        ? `${all}.`
        : `${all}; ${counted(points, 'survey point was', 'survey points were')} photographed more than once.`;
    },
    nothingHow: 'Add one below, or with a finding, or on a visit.',
    waiting: 'Reading the photographs …',
    failed: 'The photographs could not be read',
    back: (vessel: string) => `Back to ${vessel}`,
    over: 'Over the visits',
    others: 'Others',
    nowhere: 'Of no one place',
    add: 'Add photographs',
    zone: 'Where aboard',
    zoneNone: 'no one place',
    point: 'Survey point',
    pointHelp: 'Named the same each time, the pictures stand side by side.',
    words: 'What they show',
    submit: 'Keep them with her',
    needed: 'choose at least one',
  },
  one: {
    waiting: 'Reading the photograph …',
    failed: 'The photograph could not be read',
    where: 'Where',
    point: 'Survey point',
    taken: 'Taken on',
    kept: 'Kept',
    file: 'File',
    visit: 'Visit',
    visitLink: 'the visit it was taken on',
    hash: 'Fingerprint (SHA-256)',
    original: 'Take it as it came',
    originalHow: 'It may tell where it was taken and with which camera.',
    all: (vessel: string) => `All photographs of ${vessel}`,
    size: (bytes: number) =>
      bytes < 1_000_000 ? `${Math.ceil(bytes / 1000)} kB` : `${(bytes / 1_000_000).toFixed(1)} MB`,
    pixels: (width: number, height: number) => `${width} × ${height} pixels`,
  },
};
