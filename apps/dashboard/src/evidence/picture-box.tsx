/** The box of a form in which photographs are chosen. */
import { strings } from '../strings/evidence.ts';
import type { Box } from '../ui/quick-form.tsx';
import type { Frame } from './keep-file.ts';
import { PictureField } from './picture-field.tsx';

export const pictureBox = (vesselId: string, frame: Frame, more: Partial<Box> = {}): Box => ({
  key: 'pictures',
  name: strings.field.choose,
  kind: 'own',
  draw: (box) => <PictureField {...box} vesselId={vesselId} frame={frame} />,
  ...more,
});
