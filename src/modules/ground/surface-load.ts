import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { label, length, limit, list, quantity, ratio, solve } from '../words.ts'
import { boussinesqCells } from './boussinesq-cells.ts'
import { forceUnit, lengthUnit, pressureUnit } from './ground-units.ts'
import { surfaceLoadCases } from './surface-load-cases.ts'
import { surfaceLoadSteps } from './surface-load-steps.ts'

const side = (says: string, symbol: string) => length({ says, symbol, unit: lengthUnit, above: '0 m' })
const offset = (says: string, symbol: string) =>
  length({ says, symbol, unit: lengthUnit, usual: ['-30 m', '30 m'], default: '0 m' })

/** Vertical stress that wheels, plant and stacks on the ground put on one place of a buried roof. */
export const surfaceLoad = defineModule({
  id: 'surface-load',
  version: '1.0.1',
  title: 'Loads on the ground above the roof',
  asks: 'How hard do wheels, plant and stacks on the ground press on this place of the buried roof?',
  inputs: {
    depth: length({
      says: 'depth of the roof slab below the ground, at its least',
      symbol: 'z',
      unit: lengthUnit,
      above: '0 m',
      usual: ['0.3 m', '10 m'],
    }),
    impact: ratio({
      says: 'dynamic allowance: 1 for what stands still',
      symbol: 'f_I',
      least: '1',
      most: '2',
      usual: ['1', '1.75'],
    }),
    loads: list('loads on the ground that can stand there together', {
      note: 'Places are measured from the place of the roof that is asked about to the middle of the load; a strip is a long patch',
      least: 1,
      most: 8,
      fields: {
        name: label({ says: 'what it is', optional: true }),
        load: quantity('force', { says: 'load, standing', symbol: 'F_v', unit: forceUnit, above: '0 kN' }),
        long: side('length of the patch it stands on', 'a_q'),
        wide: side('width of the patch', 'b_q'),
        x: offset('its middle, along', 'x'),
        y: offset('its middle, across', 'y'),
      },
    }),
  },
  steps: surfaceLoadSteps,
  results: ['p_live', 'sigma_z', 'sigma_spread', 'sigma_point'],
  covers: ['surface-loads'],
  drawing: ['p_live'],
  limits: [
    limit('depth >= 0.6 m', {
      says: 'the cover is at least 0.6 m (2 ft)',
      advice: 'Design the slab for the wheel patch itself as well, with its punching',
      otherwise: 'warn',
      on: 'depth',
      source: cite('practice'),
    }),
  ],
  cautions: [
    'Ground is taken as elastic and endless. A stiff roof under loose fill draws more load than this, and edges of the box most of all.',
    'One place is looked at: move the loads, under each wheel and midway between two, until the largest is found.',
    'Both axles and the vehicle in the next lane belong to the list where they can stand there together; pressure sideways on the walls is not in it.',
    'The spread of two to one gives a mean, not a peak: at little depth it lies below the stress of the patch.',
    'Keep plant that is heavier than this off the roof by a fence, also while the pit is being filled.',
  ],
  second: {
    title: 'Point loads added up',
    says: 'Every patch as many small point loads after Boussinesq, added up; no influence factor is used.',
    steps: [
      solve(boussinesqCells, {
        takes: {
          load: { list: 'loads.P_d' },
          long: { list: 'loads.long' },
          wide: { list: 'loads.wide' },
          x: { list: 'loads.x' },
          y: { list: 'loads.y' },
          depth: 'depth',
        },
        gives: {
          stress: { dimension: 'pressure', name: 'sigma_cells', says: 'stress below all loads', unit: pressureUnit },
        },
        says: 'small point loads over every patch',
        source: cite('boussinesq'),
      }),
    ],
    compare: [
      { first: 'sigma_z', second: 'sigma_cells', band: 0.001, says: 'the same theory, integrated cell by cell' },
    ],
  },
  published: surfaceLoadCases,
  example: {
    depth: '1.2 m',
    impact: '1.3',
    loads: [
      { name: 'rear wheel of the supply truck', load: '50 kN', long: '0.25 m', wide: '0.5 m' },
      { name: 'the other rear wheel', load: '50 kN', long: '0.25 m', wide: '0.5 m', y: '1.8 m' },
    ],
  },
})
