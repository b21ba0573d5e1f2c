import type { Box } from './fact-draft.ts';

/** What a box of the form needs besides its name. */
export type FieldOf = (box: Box) => {
  id: string;
  value: string;
  fault: string | undefined;
  onChange: (value: string) => void;
};
