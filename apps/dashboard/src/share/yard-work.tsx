/** What a yard sees by its link: the work that it was given, and the form that reports it done. */
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Outside } from '../organisation/outside.tsx';
import { shared as words } from '../strings/share.ts';
import { nameOfZone } from '../strings/zones.ts';
import { formatDay, formatInstant, readersToday } from '../ui/calendar.ts';
import { Caution } from '../ui/caution.tsx';
import { faultsOrDone } from '../ui/form-faults.ts';
import { type Box, type DrawnBox, type FormFault, QuickForm, type Typed } from '../ui/quick-form.tsx';
import { readDate } from '../ui/read-date.ts';
import { reportByLink, type SharedView } from './share.query.ts';
import { smaller } from './smaller.ts';

const { reportBoxes: boxes } = words;
type Work = SharedView['work'][number];

export function YardWork({ view, token }: { view: SharedView; token: string }) {
  const { organisation, label, asOf, expiresAt, work } = view;
  return (
    <Outside
      wide
      title={words.workTitle}
      how={words.by(organisation, label, formatDay(asOf), formatInstant(Date.parse(expiresAt)))}
    >
      <Caution>{words.yardCaution}</Caution>
      {work.length === 0 && <p className="voice">{words.workNone}</p>}
      <ul className="shared-work">
        {work.map((each) => (
          <WorkLine key={each.at} work={each} token={token} />
        ))}
      </ul>
    </Outside>
  );
}

function WorkLine({ work, token }: { work: Work; token: string }) {
  const [open, setOpen] = useState(false);
  const queries = useQueryClient();
  const submit = async (typed: Typed): Promise<readonly FormFault[] | null> => {
    const doneOn = readDate(typed.doneOn ?? '');
    if (doneOn.kind === 'fault') return [{ at: 'doneOn', words: doneOn.why }];
    return faultsOrDone(async () => {
      const said = { at: work.at, work: typed.work ?? '', doneOn: doneOn.date, name: typed.name ?? '' };
      await reportByLink({ token, ...said, ...(typed.photograph && { photograph: typed.photograph }) });
      await queries.invalidateQueries({ queryKey: ['shared', token] });
      setOpen(false);
    });
  };
  return (
    <li>
      <p className="row-name">
        <span className="vessel-name">{work.vessel}</span> {work.number}: {work.what}
      </p>
      <p className="sub">{[nameOfZone(work.zone), work.work].filter(Boolean).join(' · ')}</p>
      <p role="status">{work.reads}</p>
      {work.canBeReported &&
        (open ? (
          <QuickForm id={`work-${work.at}`} boxes={boxesOf(work)} submit={boxes.submit} onSubmit={submit}>
            <button type="button" onClick={() => setOpen(false)}>
              {boxes.leave}
            </button>
          </QuickForm>
        ) : (
          <button type="button" onClick={() => setOpen(true)}>
            {words.report}
          </button>
        ))}
    </li>
  );
}

const boxesOf = ({ work }: Work): readonly Box[] => [
  { key: 'work', name: boxes.work, kind: 'long', start: work ?? '' },
  { key: 'doneOn', name: boxes.doneOn, kind: 'day', start: readersToday() },
  { key: 'name', name: boxes.name, fill: 'name' },
  {
    ...{ key: 'photograph', name: boxes.photograph, help: boxes.photographHelp },
    ...{ kind: 'own', optional: true, draw: (box) => <SmallPicture {...box} /> },
  },
];

function SmallPicture({ id, name, help, fault, value, onChange }: DrawnBox) {
  return (
    <div className="field">
      <label className="field-name" htmlFor={id}>
        {name}
      </label>
      <p className="field-help">{help}</p>
      {fault && <p className="field-fault">{fault}</p>}
      <input
        id={id}
        type="file"
        accept="image/*"
        onChange={({ currentTarget }) => {
          const file = currentTarget.files?.[0];
          if (file) void smaller(file).then((text) => onChange(text ?? ''));
        }}
      />
      {value !== '' && <img className="picture small-picture" alt="" src={`data:image/jpeg;base64,${value}`} />}
    </div>
  );
}
