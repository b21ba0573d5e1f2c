/** Codes stand in the domain, the contract and the dashboard's words, because the walls ask for it: they are the same. */
import { HazardCode, SeenCode, StateCode, TradeCode, UrgencyCode } from '@garboard/contract/finding/codes.ts';
import {
  CraftCode,
  LimitationReasonCode,
  MeasureCode,
  PurposeCode,
  WaterCode,
  ZoneAnswerCode,
} from '@garboard/contract/survey-visit/codes.ts';
import { zoneWords } from '@garboard/dashboard/src/strings/zones.ts';
import { HAZARDS, SIGHTINGS, TRADES, URGENCIES } from '@garboard/domain/finding/codes.ts';
import { STATES } from '@garboard/domain/finding/next-state.ts';
import { LIMITATION_REASONS, MEASURES, PURPOSES, WATER, ZONE_ANSWERS } from '@garboard/domain/survey-visit/codes.ts';
import { CRAFT, ZONES } from '@garboard/domain/survey-visit/zones.ts';
import { expect, it } from 'vitest';

it.each([
  ['hazards', HAZARDS, HazardCode.options],
  ['urgencies', URGENCIES, UrgencyCode.options],
  ['sightings', SIGHTINGS, SeenCode.options],
  ['trades', TRADES, TradeCode.options],
  ['states', STATES, StateCode.options],
  ['reasons of limitations', LIMITATION_REASONS, LimitationReasonCode.options],
  ['answers of places', ZONE_ANSWERS, ZoneAnswerCode.options],
  ['measures', Object.keys(MEASURES), MeasureCode.options],
  ['purposes', PURPOSES, PurposeCode.options],
  ['ways to lie', WATER, WaterCode.options],
  ['sorts of craft', CRAFT, CraftCode.options],
])('the contract has the domain’s %s, in the same order', (_, domain, contract) => {
  expect(contract).toEqual(domain);
});

it('the dashboard calls every place of the route by the domain’s name, in the order of the walk', () => {
  expect(Object.entries(zoneWords)).toEqual(ZONES.map(({ zone, name }) => [zone, name]));
});
