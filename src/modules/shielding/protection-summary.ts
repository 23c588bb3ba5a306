import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { check, choice, each, label, limit, list, look, quantity, ratio, step } from '../words.ts'
import { doseUnit } from './fallout-decay-steps.ts'
import { protectionSummaryCases } from './protection-summary-cases.ts'
import { drawProtectionSummary } from './protection-summary-sketch.ts'
import { doseTable, factorTable, publishedDoses, publishedFactors } from './protection-summary-tables.ts'

const percent = { SI: 'percent', US: 'percent' }

/** All paths of radiation into a shelter together, against the required factor and the dose limits. */
export const protectionSummary = defineModule({
  id: 'protection-summary',
  version: '1.0.1',
  title: 'All paths of radiation together',
  asks: 'Do roof, walls, entrance and pipes together keep the required protection factor and the dose limits?',
  inputs: {
    paths: list('paths by which radiation reaches the same person', {
      least: 1,
      most: 20,
      fields: {
        path: label({ says: 'roof, wall, entrance, pipe, door', optional: true }),
        factor: ratio({ says: 'protection factor of this path alone', symbol: 'P_p', least: '1', most: '1e12' }),
      },
    }),
    required_factor: ratio({ says: 'required protection factor', symbol: 'P_req', least: '1', usual: ['10', '1e5'] }),
    dose_outside: quantity('dose', {
      says: 'dose in the open over the stay',
      note: 'From `fallout-decay`',
      symbol: 'D_out',
      unit: doseUnit,
      above: '0 mSv',
    }),
    dose_limit: quantity('dose', {
      says: 'limit of the dose inside, chosen by the engineer',
      symbol: 'D_lim',
      unit: doseUnit,
      above: '0 mSv',
    }),
    published_factor: choice({ says: 'published factor to compare with', words: publishedFactors }),
    published_dose: choice({ says: 'published dose to compare with', words: publishedDoses }),
  },
  steps: [
    each('paths', [
      step('K_i', '1 / factor', {
        says: 'share of the outside rate that comes by this path',
        symbol: 'K_p',
      }),
    ]),
    step('K_all', 'sum(paths.K_i)', {
      says: 'share that comes by all paths',
      source: cite('statics', 'sum of contributions'),
    }),
    step('P', '1 / K_all', { says: 'protection factor of the whole' }),
    each('paths', [
      step('s_path', 'K_i / K_all', { says: 'share of this path in the dose inside', symbol: 's_p', unit: percent }),
    ]),
    step('s_max', 'max(paths.s_path)', { says: 'largest share of one path', unit: percent }),
    step('D_in', 'dose_outside / P', { says: 'dose inside over the stay', unit: doseUnit }),
    check('protection', 'P >= required_factor', { says: 'the protection factor of the whole is as required' }),
    check('dose', 'D_in <= dose_limit', { says: 'the dose inside is within the chosen limit' }),
    look('P_pub', factorTable, { row: 'published_factor', says: 'published protection factor' }),
    check('protection_published', 'P >= P_pub', { says: 'the protection factor reaches the published one' }),
    look('D_pub', doseTable, { row: 'published_dose', says: 'published reference dose', unit: doseUnit }),
    check('dose_published', 'D_in <= D_pub', { says: 'the dose inside is within the published one' }),
  ],
  results: ['P', 'D_in', 's_max', 'K_all'],
  covers: ['all-paths'],
  limits: [
    limit('K_all <= 1', {
      says: 'all paths together let through no more than there is outside',
      advice: 'A path is counted twice, or its factor is wrong',
      otherwise: 'refuse',
      on: 'paths',
      source: cite('statics', 'sum of contributions'),
    }),
  ],
  cautions: [
    'All factors must be for the same place of the person and over the same field outside.',
    'The published figures are for comparison, not a licence: as low as reasonably achievable, always. Those of one year and those of one event are not the same thing.',
    'Above 250 mSv only volunteers who know the risks, and only to save life.',
    'Roentgen, gray, sievert and rem are not mixed: for gamma 1 roentgen may be taken as 10 mSv, on the safe side.',
    'A protection factor covers external gamma only: not what is breathed in or swallowed, not blast, heat or initial radiation.',
  ],
  sketch: drawProtectionSummary,
  published: protectionSummaryCases,
  example: {
    paths: [
      { path: 'roof', factor: '1200' },
      { path: 'entrance', factor: '900' },
      { path: 'vent pipe', factor: '4000' },
    ],
    required_factor: '400',
    dose_outside: '20 Sv',
    dose_limit: '50 mSv',
    published_factor: 'marked shelter',
    published_dose: 'emergency worker',
  },
})
