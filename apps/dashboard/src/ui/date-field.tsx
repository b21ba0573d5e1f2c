import { strings } from '../strings/record.ts';
import { formatDayInFull, formatRecordedDate } from './calendar.ts';
import { TextField } from './fields.tsx';
import { readDate } from './read-date.ts';

type Props = {
  id: string;
  name: string;
  help?: string;
  value: string;
  fault?: string | undefined;
  onChange: (value: string) => void;
};

/** Says back what it understood, so that a slip is seen before it is recorded. */
export function DateField(props: Props) {
  const read = readDate(props.value);
  const understood = read.kind === 'read' ? strings.form.asRead(inFull(read.date)) : '';
  return <TextField {...props} beside={understood} />;
}

const inFull = (date: string) => (date.length === 10 ? formatDayInFull(date) : formatRecordedDate(date));
