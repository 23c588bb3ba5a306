import { describe, expect, it } from 'vitest'
import { defineModule } from '../../src/modules/module.ts'
import { label, list, quantity } from '../../src/modules/words.ts'
import { fence, runText, said } from './run-text.ts'
import { toys } from './toy-modules.ts'

const says = (body: string, units: 'SI' | 'US') =>
  runText(body, { units, modules: toys }).errors.map(fault => fault.says)

describe('dimensions in messages', () => {
  it('dimension words: a formula, an input, an assumption, a line of working and a mention speak the units of the notebook', () => {
    const formula = fence('work v', 'y = 3 ft + 2 psi')
    expect(says(formula, 'SI')).toEqual(['`+` needs two alike, got a length (m) and a pressure (kN/m^2)'])
    expect(says(formula, 'US')).toEqual(['`+` needs two alike, got a length (ft) and a pressure (psf)'])
    expect(says(fence('calc plot plot', 'a: 2 psi\nb: 3 ft'), 'US')).toEqual([
      'Expected a length (ft) for `a`, got a pressure (psf)',
    ])
    expect(says(fence('assume site', 'd: { value: 2 ft, basis: b, measured: 2 psi }'), 'US')).toEqual([
      'Expected a length (ft) here, got a pressure (psf)',
    ])
    expect(says(fence('assume site', 'T: { value: 50 degF, basis: b, measured: 2 psi }'), 'US')).toEqual([
      'Expected a temperature on a scale (degF) here, got a pressure (psf)',
    ])
    expect(says(fence('work v', 'y = 1 ft < 2 ft'), 'US')).toEqual(['`y` must be a number; this is a condition'])
    expect(says(`${fence('work v', 'y = 1 ft')}It is :value[v.y]{unit="psi"} deep.\n`, 'US')).toEqual([
      '`v.y` is a length (ft); it cannot be shown in `psi`',
    ])
  })

  const rooms = defineModule({
    id: 'rooms',
    version: '1.0.0',
    title: 'Rooms',
    asks: 'How warm are they?',
    inputs: {
      rooms: list('rooms', {
        fields: {
          room: label({ says: 'its name' }),
          warmth: quantity('temperature', { says: 'its temperature', unit: { SI: 'degC', US: 'degF' } }),
        },
        least: 1,
        most: 3,
      }),
    },
    steps: [],
    results: [],
    limits: [],
    cautions: [],
    published: [],
    example: {},
  })
  const block = fence('calc rooms house', 'rooms: [{ room: hall, warmth: 17 degC }, { room: store, warmth: 12 degC }]')

  it('dimension words: of temperatures in a list the greatest and least are taken, and no sum', () => {
    const ran = runText(block + fence('work v', 'warmest = max(house.warmth)\nspread = warmest - min(house.warmth)'), {
      modules: [rooms],
    })
    expect(said(ran.errors)).toEqual([])
    expect(ran.si('v.warmest')).toBeCloseTo(290.15, 9)
    expect(ran.line('v', 'warmest')).toMatchObject({ result: { digits: '17.00', unit: { text: 'degC' } } })
    expect(ran.si('v.spread')).toBeCloseTo(5, 9)
    expect(said(runText(block + fence('work v', 'y = sum(house.warmth)'), { modules: [rooms] }).errors)).toEqual([
      'dimension-mismatch: A temperature on a scale can only be compared, or have a difference added or taken away',
    ])
  })
})
