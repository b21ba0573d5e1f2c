import { ApiProblem } from '@garboard/client/api-problem.ts';
import { answer } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { api } from '../api/client.ts';
import { whyItFailed } from '../api/why-it-failed.ts';
import { strings } from '../strings/season.ts';
import { formatDayOfYear, monthNames } from '../ui/calendar.ts';
import { FaultSummary } from '../ui/fault-summary.tsx';
import { ChoiceField } from '../ui/fields.tsx';

type Season = NonNullable<components['schemas']['OwnSeason']['season']>;
const ENDS = ['from', 'to'] as const;
/** Where nothing was ever said, what is offered. */
const OFFERED: Season = { from: '04-01', to: '10-15' };

export function SeasonForm({ season, version }: { season: Season | null; version: string }) {
  const [draft, setDraft] = useState(season ?? OFFERED);
  const queries = useQueryClient();
  const set = useMutation({
    mutationFn: (next: Season | null) =>
      answer(api.PUT('/v1/season', { params: { header: { 'If-Match': version } }, body: { season: next } })),
    onSuccess: () => Promise.all(['season', 'fleet'].map((key) => queries.invalidateQueries({ queryKey: [key] }))),
  });
  const problem = set.error instanceof ApiProblem ? set.error.problem : undefined;
  const faultAt = (end: keyof Season) => problem?.errors?.find(({ pointer }) => pointer === `/season/${end}`)?.detail;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    set.mutate(draft);
  };
  return (
    <form className="form" onSubmit={submit} noValidate>
      <FaultSummary
        heading={strings.notSet}
        why={strings.notSetWhy}
        faults={ENDS.flatMap((end) => {
          const fault = faultAt(end);
          return fault ? [{ id: `season-${end}-day`, name: strings[end], fault }] : [];
        })}
        others={set.error && !problem?.errors ? [problem?.detail ?? whyItFailed(set.error)] : []}
      />
      {ENDS.map((end) => (
        <DayOfYear
          key={end}
          end={end}
          value={draft[end]}
          fault={faultAt(end)}
          onChange={(value) => setDraft({ ...draft, [end]: value })}
        />
      ))}
      <p className="acts">
        <button type="submit" className="first" disabled={set.isPending}>
          {strings.set}
        </button>
        {season && (
          <button type="button" disabled={set.isPending} onClick={() => set.mutate(null)}>
            {strings.none}
          </button>
        )}
      </p>
      <p role="status">{set.isSuccess && strings.done(season && [season.from, season.to].map(formatDayOfYear))}</p>
    </form>
  );
}

type DayProps = { end: keyof Season; value: string; fault: string | undefined; onChange: (value: string) => void };

function DayOfYear({ end, value, fault, onChange }: DayProps) {
  const [month = '', day = ''] = value.split('-');
  const days = Array.from({ length: 31 }, (_, index) => String(index + 1).padStart(2, '0'));
  return (
    <fieldset>
      <legend>{strings[end]}</legend>
      <div className="field-pair">
        <ChoiceField
          id={`season-${end}-day`}
          name={strings.day}
          value={day}
          fault={fault}
          onChange={(next) => onChange(`${month}-${next}`)}
        >
          {days.map((each) => (
            <option key={each} value={each}>
              {Number(each)}
            </option>
          ))}
        </ChoiceField>
        <ChoiceField
          id={`season-${end}-month`}
          name={strings.month}
          value={month}
          onChange={(next) => onChange(`${next}-${day}`)}
        >
          {monthNames().map((name, index) => (
            <option key={name} value={String(index + 1).padStart(2, '0')}>
              {name}
            </option>
          ))}
        </ChoiceField>
      </div>
    </fieldset>
  );
}
