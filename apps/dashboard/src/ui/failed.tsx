import { strings } from '../strings/frame.ts';

export function Failed(props: { what: string; why: string; again: () => void }) {
  return (
    <div role="alert" className="failed">
      <p className="voice">{props.what}</p>
      <p className="quiet">{props.why}</p>
      <button type="button" onClick={props.again}>
        {strings.tryAgain}
      </button>
    </div>
  );
}
