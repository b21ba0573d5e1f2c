import type { Attribute, AttributeId, AttributeType } from '../attribute.ts';

const MONTHS: AttributeType = { kind: 'months' };
const HOURS: AttributeType = { kind: 'hours' };

/** Somebody's own figure: the maker's, the insurer's, the operator's. */
export const FIGURES = {
  makerIntervalMonths: {
    id: 'makerIntervalMonths',
    type: MONTHS,
    words: "maker's interval",
    whereFound: "the maker's manual or the last service certificate",
  },
  makerLifeMonths: {
    id: 'makerLifeMonths',
    type: MONTHS,
    words: 'life that the maker gives it',
    whereFound: "the maker's manual or the label",
  },
  insurerLifeMonths: {
    id: 'insurerLifeMonths',
    type: MONTHS,
    words: "life that the vessel's own insurer allows",
    whereFound: "the insurer's letter or the policy's conditions",
  },
  seasonMonths: {
    id: 'seasonMonths',
    type: MONTHS,
    words: 'months a year that the vessel operates',
    whereFound: 'the operating schedule',
  },
  registrationMonths: {
    id: 'registrationMonths',
    type: MONTHS,
    words: "interval at which the beacon's own registry wants the details confirmed",
    whereFound: "the registry's letter or website",
  },
  oilChangeHours: {
    id: 'oilChangeHours',
    type: HOURS,
    words: "maker's running hours between oil and filter changes",
    whereFound: "the engine maker's book",
  },
  impellerHours: {
    id: 'impellerHours',
    type: HOURS,
    words: "maker's running hours between impeller changes",
    whereFound: "the engine maker's book",
  },
  insurerIntervalMonths: {
    id: 'insurerIntervalMonths',
    type: MONTHS,
    words: "interval between surveys that the vessel's own insurer asks for",
    whereFound: "the insurer's letter or the policy's conditions",
  },
  insurerFirstSurveyMonths: {
    id: 'insurerFirstSurveyMonths',
    type: MONTHS,
    words: "age at which the vessel's own insurer first asks for a survey",
    whereFound: "the insurer's letter or the policy's conditions",
  },
  coolantIntervalMonths: {
    id: 'coolantIntervalMonths',
    type: MONTHS,
    words: "maker's interval between coolant changes",
    whereFound: "the engine maker's book",
  },
  coolantHours: {
    id: 'coolantHours',
    type: HOURS,
    words: "maker's running hours between coolant changes",
    whereFound: "the engine maker's book",
  },
  beltInspectionHours: {
    id: 'beltInspectionHours',
    type: HOURS,
    words: "maker's running hours between inspections of the belts",
    whereFound: "the engine maker's book",
  },
  beltLifeMonths: {
    id: 'beltLifeMonths',
    type: MONTHS,
    words: "maker's interval between belt changes",
    whereFound: "the engine maker's book",
  },
  beltHours: {
    id: 'beltHours',
    type: HOURS,
    words: "maker's running hours between belt changes",
    whereFound: "the engine maker's book",
  },
} as const satisfies { readonly [Id in AttributeId]?: Attribute };
