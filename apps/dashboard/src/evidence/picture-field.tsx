/** Files are chosen, sent and kept while the rest is still being typed; the box holds the ids of those that are. */
import { useRef, useState } from 'react';
import { newKey } from '../api/new-key.ts';
import { whyItFailed } from '../api/why-it-failed.ts';
import { strings } from '../strings/evidence.ts';
import { type Frame, keepFile } from './keep-file.ts';
import { Picture } from './picture.tsx';
import './evidence.css';

const { field } = strings;
const ACCEPTED = 'image/jpeg,image/png,image/webp,image/avif,image/heic,application/pdf';
const LARGEST = 20 * 1024 * 1024;

type Props = {
  id: string;
  name: string;
  help?: string | undefined;
  fault?: string | undefined;
  vesselId: string;
  frame?: Frame;
  /** Ids with a space between. */
  value: string;
  onChange: (value: string) => void;
};

/** What is said of each file that is on its way or did not arrive. */
type Line = { readonly key: string; readonly words: string; readonly wrong: boolean };

export function PictureField({ id, name, help = field.help, fault, vesselId, frame = {}, value, onChange }: Props) {
  const kept = useRef(value);
  const [lines, setLines] = useState<readonly Line[]>([]);
  const say = (key: string, words: string, wrong = false) =>
    setLines((now) => [...now.filter((line) => line.key !== key), { key, words, wrong }]);
  const keep = (ids: string) => {
    kept.current = ids;
    onChange(ids);
  };
  const send = async (file: File, key: string) => {
    if (file.size > LARGEST) return say(key, field.refused(file.name, field.tooLarge), true);
    try {
      const done = await keepFile(vesselId, file, frame, (share) =>
        say(key, field.sending(file.name, Math.round(share * 100))),
      );
      if (done.kind === 'refused') return say(key, field.refused(file.name, done.why), true);
      keep(`${kept.current} ${done.evidenceId}`.trim());
      setLines((now) => now.filter((line) => line.key !== key));
    } catch (error) {
      say(key, `${field.failed(file.name)} ${whyItFailed(error)}`, true);
    }
  };
  const sendAll = async (files: readonly File[]) => {
    const keyed = files.map((file) => ({ file, key: newKey() }));
    setLines((now) => now.filter(({ wrong }) => !wrong));
    for (const { file, key } of keyed) say(key, field.waiting(file.name));
    for (const { file, key } of keyed) await send(file, key);
  };
  return (
    <div className="field picture-field">
      <label className="field-name" htmlFor={id}>
        {name}
      </label>
      <p className="field-help" id={`${id}-help`}>
        {help}
      </p>
      {fault && <p className="field-fault">{fault}</p>}
      <input
        id={id}
        type="file"
        multiple
        accept={ACCEPTED}
        aria-describedby={`${id}-help`}
        onChange={({ currentTarget }) => {
          void sendAll([...(currentTarget.files ?? [])]);
          currentTarget.value = '';
        }}
      />
      <ul className="on-their-way" aria-live="polite">
        {lines.map(({ key, words, wrong }) => (
          <li key={key} className={wrong ? 'field-fault' : 'quiet'}>
            {words}
          </li>
        ))}
      </ul>
      <ul className="pictures small">
        {idsIn(value).map((each) => (
          <li key={each}>
            <Picture id={each} words={strings.untold} />
            <button
              type="button"
              onClick={() =>
                keep(
                  idsIn(value)
                    .filter((other) => other !== each)
                    .join(' '),
                )
              }
            >
              {field.takeOut}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}

export const idsIn = (value: string): string[] => value.split(' ').filter((id) => id !== '');
