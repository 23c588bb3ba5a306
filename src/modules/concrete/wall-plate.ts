import { defineModule, type Given, type Step } from '../module.ts'
import { cite } from '../sources.ts'
import { choice, length, limit, pressure, ratio, solve, step, when } from '../words.ts'
import { wallPlateCases } from './wall-plate-cases.ts'
import { wallEdge, wallWords } from './wall-plate-edges.ts'
import { wallPlateMethod } from './wall-plate-method.ts'
import { wallPlateSecond } from './wall-plate-second.ts'
import { wallPlateSketch } from './wall-plate-sketch.ts'

const size = { SI: 'm', US: 'ft' }
const stress = { SI: 'kPa', US: 'psf' }
const free = wallEdge('top', ['free'])

const given = (name: string, symbol: string, says: string): Given => ({ dimension: 'ratio', name, says, symbol })
const moment = (name: string, coefficient: string, says: string, symbol = name): Step =>
  step(name, `${coefficient} * q_b * height^2`, { says, symbol, unit: { SI: 'kN*m/m', US: 'lbf*ft/ft' } })
const shear = (name: string, coefficient: string, says: string): Step =>
  step(name, `${coefficient} * q_b * height`, { says, unit: { SI: 'kN/m', US: 'plf' } })

/** Moments and edge forces of a wall held on three or four edges under pressure that rises evenly to its base. */
export const wallPlate = defineModule({
  id: 'wall-plate',
  version: '1.0.1',
  title: 'Wall held on three or four edges',
  asks: 'What moments does this pressure make in a wall that spans both ways?',
  inputs: {
    height: length({
      says: 'height between raft and roof',
      symbol: 'H',
      unit: size,
      above: '0 m',
      usual: ['1.5 m', '6 m'],
    }),
    width: length({
      says: 'width between cross walls',
      symbol: 'l_w',
      unit: size,
      above: '0 m',
      usual: ['1 m', '12 m'],
    }),
    pressure_top: pressure({
      says: 'pressure at the top of the wall',
      note: 'The line to the base must nowhere lie below the diagram of the `earth-pressure` block',
      symbol: 'p_top',
      unit: stress,
      least: '0 kPa',
      usual: ['0 kPa', '150 kPa'],
    }),
    pressure_base: pressure({
      says: 'pressure at the base of the wall',
      symbol: 'p_base',
      unit: stress,
      above: '0 kPa',
      usual: ['5 kPa', '300 kPa'],
    }),
    load_factor: ratio({
      says: 'load factor on the pressure',
      note: '1 where the pressures are factored already, or for service',
      symbol: 'gamma_f',
      least: '0.5',
      most: '3',
      default: '1',
    }),
    edges: choice({ says: 'how the edges are held', words: wallWords }),
  },
  steps: [
    step('r', 'width / height', { says: 'width over height' }),
    step('q_t', 'load_factor * pressure_top', { says: 'factored pressure at the top', unit: stress }),
    step('q_b', 'load_factor * pressure_base', { says: 'factored pressure at the base', unit: stress }),
    step('k_t', 'q_t / q_b', { says: 'pressure at the top over that at the base', symbol: 'r_p' }),
    solve(wallPlateMethod, {
      takes: { ratio: 'r', top: 'k_t' },
      words: { edges: { choice: 'edges' } },
      gives: {
        base: given('c_base', 'c_base', 'hogging at the base, vertical'),
        side: given('c_side', 'c_side', 'largest hogging at a side, horizontal'),
        side_middle: given('c_mid', 'c_s,mid', 'hogging at a side, at mid-height'),
        top: given('c_top', 'c_top', 'hogging at the top, vertical'),
        vertical: given('c_vert', 'c_vert', 'largest sagging, vertical'),
        horizontal: given('c_hor', 'c_h', 'largest sagging, horizontal'),
        v_base: given('d_base', 'd_base', 'largest reaction at the base'),
        v_side: given('d_side', 'd_side', 'largest reaction at a side'),
        v_top: given('d_top', 'd_top', 'largest reaction at the top'),
      },
      says: 'the wall as an elastic plate: coefficients',
      source: cite('timoshenko', 'ch. 5 and 6'),
    }),
    when(wallEdge('base', ['fixed']), { yes: [moment('M_base', 'c_base', 'hogging moment at the base, vertical')] }),
    when(wallEdge('sides', ['fixed']), {
      yes: [
        moment('M_side', 'c_side', 'largest hogging moment at a side, horizontal'),
        moment('M_mid', 'c_mid', 'hogging moment at a side, at mid-height', 'M_s,mid'),
      ],
    }),
    when(wallEdge('top', ['fixed']), { yes: [moment('M_top', 'c_top', 'hogging moment at the top, vertical')] }),
    moment('M_vert', 'c_vert', 'largest sagging moment, vertical'),
    moment('M_hor', 'c_hor', 'largest sagging moment, horizontal'),
    shear('V_base', 'd_base', 'largest reaction at the base'),
    shear('V_side', 'd_side', 'largest reaction at a side'),
    when(wallEdge('top', ['simple', 'fixed']), { yes: [shear('V_top', 'd_top', 'largest reaction at the top')] }),
  ],
  results: ['M_base', 'M_side', 'M_mid', 'M_top', 'M_vert', 'M_hor', 'V_base', 'V_side', 'V_top'],
  covers: ['analysis'],
  limits: [
    limit('pressure_top <= pressure_base', {
      says: 'the pressure does not fall from top to base',
      advice: 'Take the larger value at both ends',
      otherwise: 'refuse',
      on: 'pressure_top',
    }),
    limit('r >= 0.25', {
      says: 'the wall is at least a quarter as wide as high',
      advice: 'A narrower wall spans sideways as a strip',
      otherwise: 'refuse',
      on: 'width',
    }),
    limit('r <= 4', {
      says: 'the wall is at most four times as wide as high',
      advice: 'A wider wall spans vertically: use a strip, with horizontal steel at its ends',
      otherwise: 'refuse',
      on: 'width',
    }),
  ],
  cautions: [
    'Hogging moments (tension on the loaded face) are negative here, sagging ones positive.',
    'An edge is fixed only if the member beyond can take the moment: design the cross wall, raft or roof for it. Where two unlike walls meet they share the moment by their stiffness.',
    'Fixed sides need horizontal steel round the corner, on the loaded face, for both walls.',
    'A wall with an opening, and a pressure that does not rise evenly, are outside these lines: a straight line that nowhere lies below the diagram is safe.',
    {
      says: 'Where a free top meets a fixed side an elastic plate has no bounded moment: a tenth of the shorter side is left out there, and the corner takes the steel of the largest moment beside it.',
      when: free,
    },
    { says: 'A free top is for a stage of building, or for a wall without a roof.', when: free },
    {
      says: 'The wall is propped only once the roof is cast and has its strength: check the stage with a free top, or forbid filling before.',
      when: wallEdge('top', ['simple', 'fixed']),
    },
  ],
  second: wallPlateSecond,
  sketch: wallPlateSketch,
  published: wallPlateCases,
  example: {
    height: '2.6 m',
    width: '4.4 m',
    pressure_top: '22 kPa',
    pressure_base: '57 kPa',
    load_factor: '1.5',
    edges: 'all fixed',
  },
})
