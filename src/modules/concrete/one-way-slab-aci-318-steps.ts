import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { step, when } from '../words.ts'

const moments = cite('aci-318', 'Table 6.5.2')
const shears = cite('aci-318', 'Table 6.5.4')
const moment = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: { SI: 'kN*m/m', US: 'lbf*ft/ft' }, source: moments })
const shear = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, unit: { SI: 'kN/m', US: 'plf' }, source: shears })
/** Words of an end that is cast with its support, and conditions that the lines and comparisons share. */
export const held = ['spandrel beam', 'column']
const freeEnd = { choice: 'end_support', is: ['turns freely'] }
const twoSpans = { choice: 'spans', is: ['two spans'] }
export const manySpans = { choice: 'spans', is: ['three spans', 'four spans', 'five spans or more'] }
export const shortSpans = { formula: 'span <= 10 ft' }

const first = (parts: string) =>
  moment('M_first', `-w_u * span^2 / ${parts}`, 'hogging moment at the first interior support, end span')
const other = (parts: string) =>
  moment('M_other', `-w_u * span^2 / ${parts}`, 'hogging moment at the faces of other interior supports')
const edge = (parts: string) =>
  moment('M_edge', `-w_u * span^2 / ${parts}`, 'hogging moment at the face of the end support')
const noEdge = moment('M_edge', '0 kN*m/m', 'no hogging moment: the end turns freely')

/** Hogging moments of slabs whose clear spans are at most 10 ft: one coefficient at every support. */
const shortHogging: readonly Step[] = [
  first('12'),
  when(manySpans, { yes: [other('12')] }),
  when(freeEnd, { yes: [noEdge], no: [edge('12')] }),
]

const longHogging: readonly Step[] = [
  when(twoSpans, { yes: [first('9')], no: [first('10')] }),
  when(manySpans, { yes: [other('11')] }),
  when(freeEnd, {
    yes: [noEdge],
    no: [when({ choice: 'end_support', is: ['spandrel beam'] }, { yes: [edge('24')], no: [edge('16')] })],
  }),
]

/** The factored load, moments and shears of the strip. */
export const aciStripSteps: readonly Step[] = [
  step('w_u', 'dead_load + live_load', { says: 'factored load', unit: { SI: 'kN/m^2', US: 'psf' } }),
  when(freeEnd, {
    yes: [moment('M_end', 'w_u * span^2 / 11', 'sagging moment of an end span: the end turns')],
    no: [moment('M_end', 'w_u * span^2 / 14', 'sagging moment of an end span: cast with its support')],
  }),
  when(manySpans, { yes: [moment('M_mid', 'w_u * span^2 / 16', 'sagging moment of an interior span')] }),
  when(shortSpans, { says: 'no clear span is longer than 10 ft', yes: shortHogging, no: longHogging }),
  shear('V_outer', '1.15 * w_u * span / 2', 'shear at the face of the first interior support, end span'),
  shear('V_face', 'w_u * span / 2', 'shear at the face of every other support'),
]
