/** A small drawing beside the places, only to show where each one is that wants somebody. The list leads. */
import type { DueRow } from '../due-list/due.query.ts';
import type { Finding } from '../finding/finding.query.ts';
import { strings } from '../strings/vessel.ts';
import './where.css';

type Standing = 'overdue' | 'due';
export type PlaceAsked = {
  readonly zone: string;
  readonly rows: readonly DueRow[];
  readonly findings: readonly Finding[];
};

/** Where a place lies on the drawing, and which way its word runs from the mark. */
type Spot = { readonly x: number; readonly y: number; readonly word: string; readonly left?: true };
const SPOTS: Readonly<Record<string, Spot>> = {
  'papers and identity': { x: 168, y: 306, word: 'papers' },
  'hull below the waterline': { x: 205, y: 168, word: 'bottom' },
  hull: { x: 205, y: 168, word: 'hull' },
  'keel and rudder': { x: 150, y: 196, word: 'keel, rudder' },
  'propeller, shaft and anodes': { x: 66, y: 184, word: 'stern gear' },
  'topsides and rubbing strake': { x: 232, y: 148, word: 'topsides' },
  'deck, fittings and hatches': { x: 216, y: 122, word: 'deck' },
  'cockpit and drains': { x: 70, y: 126, word: 'cockpit' },
  'gas locker': { x: 36, y: 112, word: 'gas locker' },
  'mast and rigging': { x: 160, y: 40, word: 'rig' },
  sails: { x: 112, y: 88, word: 'sails', left: true },
  'structure from inside': { x: 208, y: 258, word: 'structure' },
  'seacocks and their hoses': { x: 120, y: 276, word: 'seacocks' },
  'engine, fuel and exhaust': { x: 62, y: 252, word: 'engine' },
  steering: { x: 26, y: 268, word: 'steering' },
  'batteries and electrics': { x: 128, y: 242, word: 'electrics' },
  'gas below deck': { x: 136, y: 259, word: 'gas' },
  'water, sewage and bilge pumps': { x: 62, y: 276, word: 'bilge' },
  'fire gear': { x: 206, y: 242, word: 'fire gear' },
  'lifesaving and distress gear': { x: 96, y: 108, word: 'lifesaving' },
  'anchors, chain and warps': { x: 268, y: 126, word: 'anchor' },
  'lights, radio and compass': { x: 176, y: 62, word: 'lights, radio' },
  cabin: { x: 206, y: 275, word: 'cabin' },
};

export function Where({ places, hasRig }: { places: readonly PlaceAsked[]; hasRig: boolean }) {
  const marks = places.flatMap((place) => {
    const spot = SPOTS[place.zone];
    const standing = standingOf(place);
    return spot && standing ? [{ ...spot, standing, zone: place.zone }] : [];
  });
  if (marks.length === 0) return null;
  return (
    <aside className="where" aria-hidden="true">
      <h2>{strings.where}</h2>
      <svg viewBox="0 0 330 316" aria-hidden="true">
        <Lines hasRig={hasRig} />
        {marks.map(({ zone, x, y, word, left, standing }) => (
          <g key={zone} className={standing}>
            <path d={`M${x} ${y - 5} l5 5 l-5 5 l-5 -5 z`} />
            <text x={left ? x - 9 : x + 9} y={y + 4} textAnchor={left ? 'end' : 'start'}>
              {word}
            </text>
          </g>
        ))}
      </svg>
    </aside>
  );
}

/** From the side with her mast, where she has one, and from above. */
function Lines({ hasRig }: { hasRig: boolean }) {
  return (
    <g className="where-lines">
      {hasRig && <path d="M152 12 V118 M152 12 L20 130 M152 12 L296 122 M152 96 H78" />}
      <path d="M12 134 Q20 156 60 164 H226 Q280 158 296 124 Z" />
      <path d="M84 131 L94 116 H178 L206 126" />
      <path d="M136 164 L144 206 H186 L194 164 M40 162 V192 H58 L62 164" />
      <path className="where-water" d="M0 152 H330" />
      <path d="M12 262 Q16 232 96 230 Q230 230 304 262 Q230 294 96 294 Q16 292 12 262 Z" />
      <path d="M100 230 V294 M188 233 V291" />
    </g>
  );
}

function standingOf({ rows, findings }: PlaceAsked): Standing | null {
  const all = [...rows.map(({ standing }) => standing), ...findings.map(({ due }) => due?.standing)];
  if (all.includes('overdue') || findings.some(({ urgency }) => urgency === 'before_use')) return 'overdue';
  return all.includes('due') ? 'due' : null;
}
