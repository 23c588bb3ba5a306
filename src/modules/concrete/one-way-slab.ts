import { defineModule, type Step } from '../module.ts'
import { cite } from '../sources.ts'
import { check, choice, length, pressure, step, when } from '../words.ts'
import { oneWaySlabCases } from './one-way-slab-cases.ts'
import { oneWaySlabSecond } from './one-way-slab-second.ts'
import { oneWaySlabSketch } from './one-way-slab-sketch.ts'

const span = { SI: 'm', US: 'ft' }
const moment = { SI: 'kN*m/m', US: 'lbf*ft/ft' }
const force = { SI: 'kN/m', US: 'plf' }
const source = cite('statics', 'beam of one span, uniform load')

const says = {
  M_sup: 'hogging moment at a fixed end',
  M_span: 'largest sagging moment',
  x_m: 'its distance from the left end',
  V_left: 'shear at the left end',
  V_right: 'shear at the right end',
}
const unit = { M_sup: moment, M_span: moment, x_m: span, V_left: force, V_right: force }

type Name = keyof typeof says
const names = Object.keys(says) as readonly Name[]

/** The five lines of one pair of ends; `nil` says why a value is none. */
const lines = (formulas: Readonly<Record<Name, string>>, nil: Partial<Record<Name, string>> = {}): readonly Step[] =>
  names.map(name => step(name, formulas[name], { says: nil[name] ?? says[name], unit: unit[name], source }))

const simple = lines(
  {
    M_sup: '0 kN*m/m',
    M_span: 'load * span^2 / 8',
    x_m: 'span / 2',
    V_left: 'load * span / 2',
    V_right: 'load * span / 2',
  },
  { M_sup: 'no hogging moment: both ends turn' },
)
const propped = lines({
  M_sup: '-load * span^2 / 8',
  M_span: '9/128 * load * span^2',
  x_m: '5/8 * span',
  V_left: '5/8 * load * span',
  V_right: '3/8 * load * span',
})
const fixed = lines({
  M_sup: '-load * span^2 / 12',
  M_span: 'load * span^2 / 24',
  x_m: 'span / 2',
  V_left: 'load * span / 2',
  V_right: 'load * span / 2',
})
const cantilever = lines(
  { M_sup: '-load * span^2 / 2', M_span: '0 kN*m/m', x_m: 'span', V_left: 'load * span', V_right: '0 kN/m' },
  {
    M_span: 'no sagging moment in a cantilever',
    x_m: 'the moment falls to nil at the tip',
    V_right: 'no shear at the tip',
  },
)

/** Moments and shears of a strip over one span: simple, propped, fixed or a cantilever. */
export const oneWaySlab = defineModule({
  id: 'one-way-slab',
  version: '1.0.0',
  title: 'One-way slab, single span',
  asks: 'What moments and shears act in a slab that spans one way over a single span?',
  inputs: {
    span: length({ says: 'effective span', symbol: 'l', unit: span, above: '0 m', usual: ['0.5 m', '8 m'] }),
    load: pressure({
      says: 'factored load per area, self weight included',
      symbol: 'w',
      unit: { SI: 'kN/m^2', US: 'psf' },
      above: '0 kN/m^2',
      usual: ['5 kN/m^2', '300 kN/m^2'],
    }),
    ends: choice({
      says: 'how the ends are held',
      words: {
        simple: 'both ends turn freely',
        propped: 'the left end is fixed, the right turns freely',
        fixed: 'both ends are fixed',
        cantilever: 'the left end is fixed, the right is free',
      },
    }),
  },
  steps: [
    when(
      { choice: 'ends', is: ['simple'] },
      {
        says: 'both ends turn freely',
        yes: simple,
        no: [
          when(
            { choice: 'ends', is: ['propped'] },
            {
              says: 'one end is fixed: a propped span',
              yes: propped,
              no: [
                when(
                  { choice: 'ends', is: ['fixed'] },
                  {
                    says: 'both ends are fixed',
                    yes: fixed,
                    no: [
                      when(
                        { choice: 'ends', is: ['cantilever'] },
                        { says: 'one end is free: a cantilever', yes: cantilever },
                      ),
                    ],
                  },
                ),
              ],
            },
          ),
        ],
      },
    ),
    check('load_carried', 'V_left + V_right == load * span', {
      says: 'the ends carry the whole load',
      source: cite('statics'),
    }),
  ],
  results: ['M_sup', 'M_span', 'x_m', 'V_left', 'V_right'],
  covers: ['analysis'],
  limits: [],
  cautions: [
    'Hogging moments are negative here, sagging ones positive.',
    'A fixed end is fixed only if the wall or the next span can take the moment, and then it must be designed for it: where unsure, design the span as simple and the end for its share as well.',
    'The load is uniform: a wheel, a partition or an opening is outside these lines.',
    'A slab held on four edges with a long span up to twice the short one spans both ways, and needs steel both ways.',
    'A cantilever turns about its support: its stability and its deflection are cases of their own.',
  ],
  second: oneWaySlabSecond,
  sketch: oneWaySlabSketch,
  published: oneWaySlabCases,
  example: { span: '2.4 m', load: '57 kN/m^2', ends: 'simple' },
})
