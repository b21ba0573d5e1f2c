/** The words for the codes of findings. */
import type { components } from '@garboard/client/generated/api.d.ts';

type Schemas = components['schemas'];
export type UrgencyCode = Schemas['UrgencyCode'];
export type HazardCode = Schemas['HazardCode'];
export type TradeCode = Schemas['TradeCode'];
export type SeenCode = Schemas['SeenCode'];
export type StateCode = Schemas['FindingStateCode'];
export type MatterSource = Schemas['DueMatter']['source'];

export const urgencyWords: Record<UrgencyCode, string> = {
  before_use: 'before use',
  within_weeks: 'within weeks',
  this_season: 'this season',
  next_lay_up: 'at the next lay-up',
  observe: 'to be watched',
};

export const hazardWords: Record<HazardCode, string> = {
  life: 'life',
  watertight_integrity: 'watertight integrity',
  fire_and_gas: 'fire and gas',
  rig: 'rig',
  steering: 'steering',
  propulsion: 'propulsion',
  equipment: 'equipment',
  value: 'value',
};

export const tradeWords: Record<TradeCode, string> = {
  rigger: 'rigger',
  gas_engineer: 'gas engineer',
  marine_engineer: 'marine engineer',
  electrician: 'electrician',
  sailmaker: 'sailmaker',
  liferaft_service_station: 'liferaft service station',
  boatbuilder: 'boatbuilder',
  painter: 'painter',
  compass_adjuster: 'compass adjuster',
  electronics_technician: 'electronics technician',
  own_crew: 'own crew',
};

export const seenWords: Record<SeenCode, string> = {
  unchanged: 'unchanged',
  worse: 'worse',
  better: 'better',
  gone: 'gone',
  not_examined: 'not examined',
};

export const stateWords: Record<StateCode, string> = {
  found: 'nothing decided yet',
  proposed: 'work proposed',
  planned: 'planned',
  in_hand: 'in hand',
  reported_done: 'reported done',
  deferred: 'put off',
  accepted: 'accepted as it is',
  verified: 'verified',
  entered_in_error: 'entered in error',
  merged: 'merged',
};

export const sourceWords: Record<MatterSource, string> = {
  finding: 'found',
  deferral: 'put off, for review',
  referral: 'for a specialist',
  limitation: 'not examined',
};

/** What an entry says happened, as the head of a paragraph of the story. */
export const stepWords: Readonly<Record<string, string>> = {
  owner_answered: 'The owner answered an estimate',
  found: 'Found',
  seen: 'Seen again',
  amended: 'Changed',
  proposed: 'Work proposed',
  planned: 'Planned',
  begun: 'Begun',
  reported_done: 'Reported done',
  sent_back: 'Sent back',
  verified: 'Verified',
  deferred: 'Put off',
  accepted: 'Accepted as it is',
  entered_in_error: 'Closed: entered in error',
  reopened: 'Reopened',
  merged_into: 'Merged into another finding',
  took_in: 'Took in another finding',
  split_off: 'A part became a finding of its own',
  split_from: 'Came out of another finding',
};
