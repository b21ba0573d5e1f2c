/** When the boats are used most: a band on the fleet's horizon. It moves no date. */
import * as z from 'zod';

/** Every year has the day, so 29 February is none. */
const MonthDay = z
  .string()
  .regex(/^\d{2}-\d{2}$/, { error: 'must be a month and a day, MM-DD', abort: true })
  .refine((text) => z.iso.date().safeParse(`2001-${text}`).success, 'is not on every year’s calendar')
  .meta({ id: 'MonthDay', description: 'A day of every year, `MM-DD`.', example: '04-01' });

export const Season = z.strictObject({ from: MonthDay, to: MonthDay }).meta({
  id: 'Season',
  description: 'The first and the last day, both in it. It may run over the turn of the year.',
  example: { from: '04-01', to: '10-15' },
});
export type Season = z.infer<typeof Season>;

/** `null`: the organisation has said nothing of a season. */
export const OwnSeason = z
  .strictObject({ season: z.union([Season, z.null()]) })
  .meta({ id: 'OwnSeason', example: { season: { from: '04-01', to: '10-15' } } });
export type OwnSeason = z.infer<typeof OwnSeason>;
