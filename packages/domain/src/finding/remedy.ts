/** How it stands with the work that answers a finding. */
import type { IsoDay } from './entry.ts';

/** What stands behind the state, where something does. */
export type Remedy =
  | { readonly state: 'found' | 'proposed' | 'in_hand' | 'entered_in_error' }
  | { readonly state: 'planned'; readonly forDay: IsoDay | null }
  | {
      readonly state: 'reported_done';
      readonly reportedBy: string;
      readonly byAnother: boolean;
      readonly doneOn: IsoDay;
    }
  | { readonly state: 'deferred' | 'accepted'; readonly reviewOn: IsoDay; readonly responsible: string }
  | { readonly state: 'verified'; readonly on: IsoDay; readonly independent: boolean }
  | { readonly state: 'merged'; readonly into: string };
