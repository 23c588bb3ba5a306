import { defineModule, type PublishedCase } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, length, limit } from '../words.ts'
import { anchorageEn1992Steps, lappedShares } from './anchorage-en-1992-steps.ts'
import { anchorageCautions, barDiameter, lappedUpTo, lengthsGiven, usedAtLap, usedStrength } from './anchorage-parts.ts'
import { size } from './bar-steps.ts'
import { cylinderStrength, ribbedStrength } from './en1992-concrete.ts'

const en = (at: string) => cite('en-1992-1-1', at)
const manual = 'Institution of Civil Engineers, Manual of Structural Design: Buildings, table of anchorages and laps'
const c25 = {
  force: 'tension',
  end: 'straight',
  f_ck: '25 MPa',
  f_yk: '1.15 * 435 MPa',
  cover: '25 mm',
  share_lapped: 'up to 25 percent',
  available: '1000 mm',
}
const anchored = (id: string, bond: string, bar: string, printed: string): PublishedCase => ({
  id,
  source: manual,
  status: 'looked up',
  says: `C25/30, cover 25 mm, 435 MPa, straight, ${bond} bond, ${bar}; the table is rounded up to 10 mm`,
  inputs: { ...c25, bond, bar_size: bar },
  answers: { l_bd: printed },
  tolerance: { units: 1 },
})
const lap = (id: string, lapped: string, printed: string): PublishedCase => ({
  id,
  source: manual,
  status: 'looked up',
  says: `the same, 12 mm in good bond, laps of ${lapped}; rounded up to 10 mm`,
  inputs: { ...c25, share_lapped: lapped, bond: 'good', bar_size: '12 mm' },
  answers: { l_0: printed },
  tolerance: { units: 1 },
})

/** Anchorage length and laps by EN 1992-1-1, 8.4 and 8.7, against what the drawing gives. */
export const anchorageEn1992 = defineModule({
  id: 'anchorage-en-1992',
  version: '1.1.0',
  title: 'Anchorage and laps by EN 1992-1-1',
  asks: 'Does this bar reach far enough past the section to hold its stress, and how long is its lap?',
  code: 'EN 1992-1-1',
  inputs: {
    bar_size: barDiameter,
    f_ck: cylinderStrength('50 MPa'),
    f_yk: ribbedStrength(),
    force: choice({ says: 'what the bar does', words: { tension: 'tension', compression: 'compression' } }),
    used: usedStrength,
    bond: choice({
      says: 'bond where the bar lies when cast',
      note: 'Fig. 8.2',
      words: {
        good: 'upright bars; bars in the lower half, or within 250 mm of the bottom',
        poor: 'bars near the top of anything deeper than 250 mm, and in doubt',
      },
    }),
    end: choice({
      says: 'end of the bar',
      words: { straight: 'no bend', bent: 'bend, hook or loop of Fig. 8.1' },
    }),
    cover: length({
      says: 'least of the covers and half the clear distance of the bars',
      symbol: 'c_d',
      unit: size,
      above: '0 mm',
      usual: ['15 mm', '100 mm'],
      source: en('Fig. 8.3'),
    }),
    lap_used: usedAtLap,
    share_lapped: choice({ says: 'share of the bars that are lapped in one section', words: lappedShares }),
    ...lengthsGiven,
  },
  steps: anchorageEn1992Steps,
  results: ['l_bd', 'l_0', 'l_b_rqd', 'f_bd'],
  covers: ['anchorage'],
  drawing: ['bar_size', 'l_bd', 'l_0'],
  limits: [
    limit('cover >= 0.5 * bar_size', {
      says: 'cover and half the clear distance are at least half a diameter',
      advice: 'Bars lie at least a diameter apart',
      otherwise: 'refuse',
      on: 'cover',
      source: en('8.2(2)'),
    }),
    lappedUpTo('bar_size <= 32 mm', {
      says: 'bars that are lapped are of 32 mm or less',
      advice: 'Larger bars have rules of their own in 8.8',
      source: en('8.8'),
    }),
  ],
  cautions: [
    ...anchorageCautions,
    'Nothing is counted for bars welded or lying across, or for pressure across the bar: on the safe side. Laps also need bars across them by 8.7.4.',
    'A bend is measured along its centre line. Values recommended by the standard: a National Annex may set others.',
  ],
  published: [
    anchored('anch-1a', 'good', '8 mm', '23 cm'),
    anchored('anch-1b', 'good', '10 mm', '32 cm'),
    anchored('anch-1c', 'good', '12 mm', '41 cm'),
    anchored('anch-1d', 'good', '20 mm', '78 cm'),
    anchored('anch-1e', 'good', '32 mm', '130 cm'),
    anchored('anch-1f', 'good', '40 mm', '176 cm'),
    anchored('anch-2a', 'poor', '10 mm', '45 cm'),
    anchored('anch-2b', 'poor', '12 mm', '58 cm'),
    anchored('anch-2c', 'poor', '20 mm', '112 cm'),
    anchored('anch-2d', 'poor', '32 mm', '185 cm'),
    anchored('anch-2e', 'poor', '40 mm', '251 cm'),
    lap('anch-3a', '33 percent', '47 cm'),
    lap('anch-3b', '50 percent', '57 cm'),
    lap('anch-3c', 'more than 50 percent', '61 cm'),
  ],
  example: {
    bar_size: '12 mm',
    f_ck: '30 MPa',
    f_yk: '500 MPa',
    force: 'tension',
    bond: 'poor',
    end: 'straight',
    cover: '40 mm',
    share_lapped: 'more than 50 percent',
    available: '500 mm',
    lap_planned: '650 mm',
  },
})
