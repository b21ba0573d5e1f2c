import { strings } from '../strings/frame.ts';
import { Failed } from '../ui/failed.tsx';

/** A fault in our own code: said plainly, with a way on. */
export function Broken() {
  return <Failed what={strings.fault} why={strings.faultWhy} again={() => window.location.reload()} />;
}
