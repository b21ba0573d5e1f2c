/** The words a survey visit is written in. */
import * as z from 'zod';
import { CalendarDay, words } from '../shared.ts';

export const CraftCode = z
  .enum(['sailing_yacht', 'motor_boat', 'open_boat'])
  .meta({ id: 'CraftCode', description: 'Which sort of boat: it decides the places of the route.' });

export const PurposeCode = z
  .enum([
    'pre_purchase',
    'condition',
    'insurance',
    'damage',
    'out_of_water',
    'statutory',
    'deficiency_list',
    'house_check',
  ])
  .meta({
    id: 'VisitPurposeCode',
    description: 'What somebody asked for. `deficiency_list`: an authority’s own list, entered as a visit.',
  });

export const WaterCode = z.enum(['afloat', 'ashore', 'in_slings']).meta({ id: 'WaterCode' });

export const LimitationReasonCode = z
  .enum([
    'no_access_lining',
    'no_access_stowed_gear',
    'not_dismantled',
    'coating_not_removed',
    'afloat',
    'in_slings_short_time',
    'mast_stepped_head_height_only',
    'tank_not_opened',
    'no_power',
    'engine_not_run',
    'wet_or_frozen_surface',
    'too_recently_lifted',
    'ice_or_weather',
    'owner_refused',
    'item_not_on_board',
    'specialist_scope',
  ])
  .meta({ id: 'LimitationReasonCode', description: 'Why it could not be examined or tested.' });

export const ZoneAnswerCode = z
  .enum(['sound', 'sighting', 'not_examined'])
  .meta({ id: 'ZoneAnswerCode', description: '`sighting`: something was seen there, and it is entered as a finding.' });

export const MeasureCode = z
  .enum([
    'moisture',
    'thickness',
    'length',
    'blisters',
    'rig_tension',
    'rudder_play',
    'shaft_play',
    'battery_voltage',
    'insulation',
    'tap_test_dull_area',
  ])
  .meta({
    id: 'MeasureCode',
    description: 'What is measured. `moisture` compares on the meter’s own scale; it is no water content.',
  });

export const Instrument = z
  .strictObject({
    key: z
      .string()
      .regex(/^[a-z0-9_-]{1,20}$/, 'must be a short name in lower case')
      .meta({ description: 'Names it within the visit.', example: 'meter' }),
    maker: words(80),
    model: words(80),
    serial: words(80).optional(),
    scale: words(80).optional().meta({ example: '0-100 relative' }),
    checkedOn: CalendarDay.optional().meta({ description: 'When it was last checked.' }),
    nextCheckOn: CalendarDay.optional().meta({
      description: 'When it is next to be checked. Read after that day, each of its readings says so.',
    }),
  })
  .meta({
    id: 'Instrument',
    example: { key: 'meter', maker: 'Quillmere', model: 'QM-2', scale: '0-100 relative', nextCheckOn: '2027-03-01' },
  });
export type Instrument = z.infer<typeof Instrument>;

export const VisitPerson = z
  .strictObject({
    name: words(160),
    capacity: z.enum(['surveyor', 'owner', 'skipper', 'yard', 'crew', 'authority', 'other']),
    qualification: words(160).optional(),
  })
  .meta({
    id: 'VisitPerson',
    example: { name: 'Ines Vale', capacity: 'surveyor', qualification: 'Small craft surveyor, S-311' },
  });
