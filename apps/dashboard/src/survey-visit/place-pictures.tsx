/** Photographs of one place of a visit; while it is open more can be added, out of the way of whoever types. */
import { useQueryClient } from '@tanstack/react-query';
import { FileFigure } from '../evidence/file-figure.tsx';
import { PictureField } from '../evidence/picture-field.tsx';
import { strings } from '../strings/evidence.ts';
import type { Stop, Visit } from './visit.query.ts';

type Props = { visit: Visit; stop: Stop; writing: boolean };

export function PlacePictures({ visit, stop, writing }: Props) {
  const queries = useQueryClient();
  const { zone, name, evidence } = stop;
  const frame = { zone, visitId: visit.id };
  return (
    <>
      {evidence.length > 0 && (
        <ul className="pictures small">
          {evidence.map((file) => (
            <li key={file.id}>
              <FileFigure file={file} />
            </li>
          ))}
        </ul>
      )}
      {writing && (
        <details className="place-pictures">
          <summary>{strings.photographs}</summary>
          <PictureField
            id={`pictures-${zone}`}
            name={`${strings.field.choose}: ${name}`}
            vesselId={visit.vessel.id}
            frame={frame}
            value=""
            onChange={() => void queries.invalidateQueries({ queryKey: ['visit', visit.id] })}
          />
        </details>
      )}
    </>
  );
}
