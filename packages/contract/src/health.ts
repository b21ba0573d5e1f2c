/** What a supervisor asks. */
import * as z from 'zod';

export const Health = z
  .object({ status: z.literal('ok'), version: z.string().meta({ description: 'Of this program.' }) })
  .meta({ id: 'Health', example: { status: 'ok', version: '0.1.0' } });
export type Health = z.infer<typeof Health>;
