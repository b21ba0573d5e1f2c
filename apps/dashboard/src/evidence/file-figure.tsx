/** One kept file with its words: a photograph, or a paper by its name. */
import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { strings } from '../strings/evidence.ts';
import { formatDay } from '../ui/calendar.ts';
import type { EvidenceFile } from './evidence.query.ts';
import { PictureLink } from './picture.tsx';

type Props = { file: EvidenceFile; children?: ReactNode };

export function FileFigure({ file, children }: Props) {
  const { id, words = strings.untold, takenOn, sizePx } = file;
  return (
    <figure className="file">
      {sizePx ? <PictureLink id={id} words={words} /> : <Paper file={file} />}
      <figcaption>
        <time dateTime={takenOn}>{formatDay(takenOn)}</time> {children ?? words}
      </figcaption>
    </figure>
  );
}

function Paper({ file: { id, kind } }: { file: EvidenceFile }) {
  return (
    <Link to="/evidence/$evidenceId" params={{ evidenceId: id }} className="picture-missing">
      {kind === 'document' ? strings.document : strings.notShown}
    </Link>
  );
}
