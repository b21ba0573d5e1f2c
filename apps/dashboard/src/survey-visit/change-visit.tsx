/** What is known of an open visit can be put right while it is walked: where, for whom, the weather, the hours. */
import { useQueryClient } from '@tanstack/react-query';
import { strings, waterWords } from '../strings/survey-visit.ts';
import { faultsOrDone } from '../ui/form-faults.ts';
import { type Box, type FormFault, QuickForm, type Typed } from '../ui/quick-form.tsx';
import { changeVisit, type Visit, type VisitChange } from './visit.query.ts';

const { start, change } = strings;

const boxesOf = (visit: Visit): readonly Box[] => {
  const text = (
    key: 'place' | 'client' | 'instructions' | 'weather',
    name: string,
    kind: Box['kind'] = 'text',
  ): Box => ({
    ...{ key, name, kind, optional: true, start: visit[key] ?? '' },
  });
  return [
    { key: 'water', name: start.water, kind: 'choice', choices: waterWords, start: visit.water },
    text('place', start.place),
    text('client', start.client),
    text('instructions', start.instructions, 'long'),
    text('weather', start.weather),
    { key: 'hoursAboard', name: change.hours, optional: true, start: visit.hoursAboard?.toString() ?? '' },
  ];
};

/** Only what differs: what somebody else changed meanwhile stays. `null` where the hours are no number. */
export function visitChangeOf(typed: Typed, visit: Visit): VisitChange | null {
  const hours = (typed.hoursAboard ?? '').trim().replace(',', '.');
  if (hours !== '' && Number.isNaN(Number(hours))) return null;
  const now: VisitChange = {
    water: typed.water as Visit['water'],
    place: typed.place?.trim() || null,
    client: typed.client?.trim() || null,
    instructions: typed.instructions?.trim() || null,
    weather: typed.weather?.trim() || null,
    hoursAboard: hours === '' ? null : Number(hours),
  };
  const differs = Object.entries(now).filter(([key, value]) => value !== (visit[key as keyof Visit] ?? null));
  return Object.fromEntries(differs);
}

export function ChangeVisit({ visit, version }: { visit: Visit; version: string }) {
  const queries = useQueryClient();
  const submit = async (typed: Typed): Promise<readonly FormFault[] | null> => {
    const body = visitChangeOf(typed, visit);
    if (body === null) return [{ at: 'hoursAboard', words: change.noNumber }];
    return faultsOrDone(async () => {
      await changeVisit(visit.id, body, version);
      await queries.invalidateQueries({ queryKey: ['visit', visit.id] });
    });
  };
  return (
    <details className="change-visit">
      <summary>{change.open}</summary>
      <QuickForm id="visit" boxes={boxesOf(visit)} submit={change.submit} onSubmit={submit} quiet />
    </details>
  );
}
