/** The words a finding is written in: what it threatens, when it must be dealt with, who does the work. */

/** What it threatens, the worst first: findings of one urgency are listed in this order. */
export const HAZARDS = [
  'life',
  'watertight_integrity',
  'fire_and_gas',
  'rig',
  'steering',
  'propulsion',
  'equipment',
  'value',
] as const;
export type Hazard = (typeof HAZARDS)[number];

/** When it must be dealt with, the most urgent first. */
export const URGENCIES = ['before_use', 'within_weeks', 'this_season', 'next_lay_up', 'observe'] as const;
export type Urgency = (typeof URGENCIES)[number];

export const isMoreUrgent = (a: Urgency, b: Urgency): boolean => URGENCIES.indexOf(a) < URGENCIES.indexOf(b);

/** Sorts the most urgent first, and of one urgency the worst hazard. */
export const rankOf = ({ urgency, hazard }: { readonly urgency: Urgency; readonly hazard: Hazard }): number =>
  URGENCIES.indexOf(urgency) * HAZARDS.length + HAZARDS.indexOf(hazard);

/** What one visit saw of it. */
export const SIGHTINGS = ['unchanged', 'worse', 'better', 'gone', 'not_examined'] as const;
export type Seen = (typeof SIGHTINGS)[number];

/** Whom the work, or a closer look, is for. */
export const TRADES = [
  'rigger',
  'gas_engineer',
  'marine_engineer',
  'electrician',
  'sailmaker',
  'liferaft_service_station',
  'boatbuilder',
  'painter',
  'compass_adjuster',
  'electronics_technician',
  'own_crew',
] as const;
export type Trade = (typeof TRADES)[number];
