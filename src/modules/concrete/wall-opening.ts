import { defineModule, type Input } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, length, limit, ratio } from '../words.ts'
import { barInput, size } from './bar-steps.ts'
import { wallOpeningCases } from './wall-opening-cases.ts'
import { drawWallOpening } from './wall-opening-sketch.ts'
import { wallOpeningSteps } from './wall-opening-steps.ts'

const side = (says: string, symbol: string): Input =>
  length({ says, symbol, unit: size, above: '0 mm', most: '3 m', usual: ['50 mm', '1 m'] })
const bar = (says: string, symbol: string): Input =>
  length({
    says,
    note: 'The larger where two sizes take turns',
    symbol,
    unit: size,
    above: '0 mm',
    most: '60 mm',
    usual: ['6 mm', '40 mm'],
  })
const apart = (says: string, symbol: string): Input =>
  length({ says, symbol, unit: size, above: '0 mm', usual: ['75 mm', '450 mm'] })
const count = (says: string, symbol: string): Input => ratio({ says, symbol, least: '0', most: '20' })
const room = (says: string, symbol: string): Input => length({ says, symbol, unit: size, least: '0 mm' })

/** Trimming steel that replaces the bars cut by an opening in a wall: half each side, past the edge by the anchorage. */
export const wallOpening = defineModule({
  id: 'wall-opening',
  version: '1.1.0',
  title: 'Trimming steel round an opening',
  asks: 'Which steel does this opening cut, and do the trimming bars beside it replace it?',
  inputs: {
    shape: choice({
      says: 'shape of the opening',
      words: { round: 'a sleeve; give its diameter as width and as height', rectangular: 'duct, hatch or door' },
    }),
    width: side('width of the opening', 'b_o'),
    height: side('height of the opening', 'h_o'),
    vertical_bar: bar('diameter of the upright bars of the wall', 'phi_v'),
    vertical_spacing: apart('spacing of the upright bars at one face', 's_v'),
    horizontal_bar: bar('diameter of the level bars of the wall', 'phi_h'),
    horizontal_spacing: apart('spacing of the level bars at one face', 's_h'),
    bar_size: barInput,
    upright_bars: count('upright trimming bars, each side and face', 'n_v'),
    level_bars: count('level trimming bars, above and below, each face', 'n_h'),
    anchorage: length({
      says: 'anchorage length of the trimming bars in tension',
      note: 'From the module of the code, at full strength; the lap where the bars are lapped to cut ones',
      symbol: 'l_anc',
      unit: size,
      above: '0 mm',
      usual: ['200 mm', '2 m'],
    }),
    room_beside: room('least concrete beside it, to an end of the wall or another opening', 'l_r'),
    room_above: room('least concrete above or below it', 'r_h'),
    least_rule: choice({
      says: 'least trimming steel',
      words: {
        none: 'only what is cut is replaced: common practice',
        'ACI 318':
          'one No. 5 or more at each side and face, for openings like windows and doors in walls with two layers',
      },
    }),
  },
  steps: wallOpeningSteps,
  results: ['A_side_v', 'A_side_h', 'L_v', 'L_h', 'A_cut_v', 'A_cut_h'],
  covers: ['openings'],
  drawing: ['width', 'height', 'bar_size', 'upright_bars', 'L_v', 'level_bars', 'L_h'],
  limits: [
    limit('width == height', {
      says: 'a round opening is as high as it is wide',
      when: { choice: 'shape', is: ['round'] },
      otherwise: 'refuse',
      on: 'height',
    }),
    limit('max(width, height) <= 1 m', {
      says: 'the opening is at most 1 m wide and high',
      advice: 'Check the wall beside a larger one as strips and a lintel for all that it takes over',
      otherwise: 'warn',
      on: 'width',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'Trimming bars replace what is cut; they do not show that the wall beside carries the load that goes round. Check those strips with the greater load.',
    'Bars are counted with the opening where it meets most of them.',
    'Pipes closer than three diameters, or with fewer than two bars between them, are one opening: enter the group.',
    'At each corner of a rectangular opening a diagonal bar at each face holds the crack that starts there.',
    'Keep 50 mm of concrete between a sleeve and any bar. A sleeve through a wet wall needs a water bar or seal of its own.',
    'Neither IS 456 nor EN 1992-1-1 has a full rule here: this is common practice, for bending across the wall.',
  ],
  sketch: drawWallOpening,
  published: wallOpeningCases,
  example: {
    shape: 'round',
    width: '450 mm',
    height: '450 mm',
    vertical_bar: '12 mm',
    vertical_spacing: '200 mm',
    horizontal_bar: '12 mm',
    horizontal_spacing: '200 mm',
    bar_size: '12 mm',
    upright_bars: '2',
    level_bars: '2',
    anchorage: '500 mm',
    room_beside: '800 mm',
    room_above: '600 mm',
    least_rule: 'none',
  },
})
