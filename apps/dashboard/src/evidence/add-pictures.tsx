/** Adds photographs to a vessel: where, which survey point, and what they show are said first. */
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { readAnew } from '../api/read-anew.ts';
import { strings } from '../strings/evidence.ts';
import { zoneWords } from '../strings/zones.ts';
import { ChoiceField, TextField } from '../ui/fields.tsx';
import { PictureField } from './picture-field.tsx';

const words = strings.vessel;
const NOTHING = { zone: '', point: '', words: '' };

export function AddPictures({ vesselId }: { vesselId: string }) {
  const [said, setSaid] = useState(NOTHING);
  const queries = useQueryClient();
  const box = (key: keyof typeof NOTHING) => ({
    value: said[key],
    onChange: (value: string) => setSaid({ ...said, [key]: value }),
  });
  const frame = Object.fromEntries(
    Object.entries(said)
      .map(([key, value]) => [key, value.trim()])
      .filter(([key, value]) => value !== '' && (key !== 'point' || said.zone !== '')),
  );
  return (
    <section className="add-pictures" aria-labelledby="add-pictures">
      <h2 id="add-pictures">{words.add}</h2>
      <div className="form">
        <ChoiceField id="picture-zone" name={words.zone} {...box('zone')}>
          <option value="">{words.zoneNone}</option>
          {Object.entries(zoneWords).map(([zone, name]) => (
            <option key={zone} value={zone}>
              {name}
            </option>
          ))}
        </ChoiceField>
        {said.zone !== '' && (
          <TextField id="picture-point" name={words.point} help={words.pointHelp} {...box('point')} />
        )}
        <TextField id="picture-words" name={words.words} {...box('words')} />
        <PictureField
          id="picture-files"
          name={strings.field.choose}
          vesselId={vesselId}
          frame={frame}
          value=""
          onChange={() => void readAnew(queries)}
        />
      </div>
    </section>
  );
}
