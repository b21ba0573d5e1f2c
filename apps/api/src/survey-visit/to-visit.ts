/** What the contract takes of a visit, as it is kept: what is absent is `null`. */
import type { Instrument } from '@garboard/contract/survey-visit/codes.ts';
import type { NewVisit, VisitChange } from '@garboard/contract/survey-visit/visit.ts';
import type { VisitDetail } from '@garboard/db/survey-visit/visit-record.ts';
import { given } from '../request/given.ts';

type About = Omit<NewVisit, 'craft' | 'purpose' | 'startedOn'>;

const toInstrument = (instrument: Instrument) => ({
  ...{ serial: null, scale: null, checkedOn: null, nextCheckOn: null },
  ...given(instrument),
});
const toPerson = (person: About['persons'][number]) => ({ qualification: null, ...given(person) });

export function toDetail({ persons, instruments, ...about }: About): VisitDetail {
  return {
    ...{ client: null, instructions: null, place: null, ashoreSince: null, weather: null, hoursAboard: null },
    ...given(about),
    persons: persons.map(toPerson),
    instruments: instruments.map(toInstrument),
  };
}

export function toDetailChange({ persons, instruments, ...about }: Omit<VisitChange, 'purpose'>): Partial<VisitDetail> {
  return {
    ...given(about),
    ...(persons && { persons: persons.map(toPerson) }),
    ...(instruments && { instruments: instruments.map(toInstrument) }),
  };
}
