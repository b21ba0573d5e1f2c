/** A photograph as it may be shown; where its file is missing, that is said in its place. */
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { strings } from '../strings/evidence.ts';
import { viewOf } from './evidence.query.ts';
import './evidence.css';

type Props = { id: string; words: string; size?: 'large' | 'small' };

export function Picture({ id, words, size = 'small' }: Props) {
  const [missing, setMissing] = useState(false);
  if (missing) return <span className="picture-missing">{strings.missing}</span>;
  return <img className="picture" src={viewOf(id, size)} alt={words} loading="lazy" onError={() => setMissing(true)} />;
}

/** Leads to the photograph's own page. */
export function PictureLink({ id, words }: { id: string; words: string }) {
  return (
    <Link
      to="/evidence/$evidenceId"
      params={{ evidenceId: id }}
      className="picture-link"
      aria-label={strings.open(words)}
    >
      <Picture id={id} words={words} />
    </Link>
  );
}
