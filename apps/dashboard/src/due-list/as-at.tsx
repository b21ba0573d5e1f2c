/** The day the answer is asked for. Kept in the address, so that "as at" can be sent to somebody. */
import { Popover } from '@mantine/core';
import { type FormEvent, useState } from 'react';
import { strings } from '../strings/due-list.ts';
import { strings as itemStrings } from '../strings/record.ts';
import { formatDay } from '../ui/calendar.ts';
import { TextField } from '../ui/fields.tsx';
import { readDate } from '../ui/read-date.ts';

export function AsAt({ day, onChoose }: { day: string | undefined; onChoose: (day: string | undefined) => void }) {
  const [open, setOpen] = useState(false);
  const choose = (next: string | undefined) => {
    setOpen(false);
    onChoose(next);
  };
  return (
    <Popover
      opened={open}
      onChange={setOpen}
      position="bottom-end"
      transitionProps={{ duration: 0 }}
      trapFocus
      returnFocus
    >
      <Popover.Target>
        <button type="button" onClick={() => setOpen(!open)}>
          {day ? strings.asAtDay(formatDay(day)).replace('.', ' …') : strings.asAt}
        </button>
      </Popover.Target>
      <Popover.Dropdown className="floating as-at-box" aria-label={strings.anotherDay}>
        <DayForm day={day} onChoose={choose} />
      </Popover.Dropdown>
    </Popover>
  );
}

function DayForm({ day, onChoose }: { day: string | undefined; onChoose: (day: string | undefined) => void }) {
  const [typed, setTyped] = useState(day ? formatDay(day) : '');
  const [fault, setFault] = useState<string>();
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const read = readDate(typed);
    if (read.kind === 'read' && read.date.length === 10) onChoose(read.date);
    else setFault(itemStrings.dateFaults.day);
  };
  return (
    <form onSubmit={submit} noValidate>
      <TextField
        id="as-at"
        name={strings.anotherDay}
        help={strings.anotherDayHelp}
        fault={fault}
        value={typed}
        onChange={setTyped}
      />
      <div className="acts">
        <button type="submit">{strings.show}</button>
        {day && (
          <button type="button" onClick={() => onChoose(undefined)}>
            {strings.today}
          </button>
        )}
      </div>
    </form>
  );
}
