/** What was typed of a new visit, as the API takes it. */
import { type Read, Reader } from '../finding/said-of.ts';
import type { Typed } from '../ui/quick-form.tsx';
import type { NewVisit } from './visit.query.ts';

export function newVisitOf(typed: Typed): Read<NewVisit> {
  const read = new Reader(typed);
  const name = read.text('surveyor');
  const maker = read.text('maker');
  const isAfloat = read.text('water') === 'afloat';
  return read.told({
    purpose: read.text('purpose') as NewVisit['purpose'],
    startedOn: read.day('startedOn'),
    craft: read.text('craft') as NonNullable<NewVisit['craft']>,
    water: read.text('water') as NewVisit['water'],
    ...(!isAfloat && read.maybeDay('ashoreSince')),
    ...read.maybe('place'),
    ...read.maybe('client'),
    ...read.maybe('instructions'),
    ...read.maybe('weather'),
    ownerAttended: read.text('ownerAttended') === 'yes',
    persons: name === '' ? [] : [{ name, capacity: 'surveyor', ...read.maybe('qualification') }],
    instruments:
      maker === ''
        ? []
        : [{ key: 'meter', maker, model: read.text('model'), ...read.maybe('scale'), ...read.maybeDay('nextCheckOn') }],
  });
}
