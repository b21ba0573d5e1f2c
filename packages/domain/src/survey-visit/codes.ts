/** The words a survey visit is written in. */

/** What somebody asked for: `deficiency_list` is an authority's own list, entered as a visit. */
export const PURPOSES = [
  'pre_purchase',
  'condition',
  'insurance',
  'damage',
  'out_of_water',
  'statutory',
  'deficiency_list',
  'house_check',
] as const;
export type Purpose = (typeof PURPOSES)[number];

export const WATER = ['afloat', 'ashore', 'in_slings'] as const;
export type Water = (typeof WATER)[number];

/** Why something could not be examined. Themes of four public pages on the limits of surveys; the wording is ours. */
export const LIMITATION_REASONS = [
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
] as const;

export const ZONE_ANSWERS = ['sound', 'sighting', 'not_examined'] as const;

/** What is measured at a survey point, with its unit. Moisture compares: it is no water content. */
export const MEASURES = {
  moisture: 'scale',
  thickness: 'mm',
  length: 'mm',
  blisters: 'per m2',
  rig_tension: 'kgf',
  rudder_play: 'mm',
  shaft_play: 'mm',
  battery_voltage: 'V',
  insulation: 'MOhm',
  tap_test_dull_area: 'mm2',
} as const;
export type Measure = keyof typeof MEASURES;
