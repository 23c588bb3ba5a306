import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { table } from '../table.ts'
import { look, step, when } from '../words.ts'
import { checkAnchored, checkLap } from './anchorage-parts.ts'
import { size, strength } from './bar-steps.ts'

const en = (at: string) => cite('en-1992-1-1', at)

/** Shares of the bars lapped in one section. */
export const lappedShares = {
  'up to 25 percent': 'factor 1.0',
  '33 percent': 'factor 1.15',
  '50 percent': 'factor 1.4',
  'more than 50 percent': 'factor 1.5',
} as const

const lapFactor = table(
  {
    title: 'Factor of a lap for the share of bars lapped',
    source: en('Table 8.3'),
    status: 'from memory of the standard; agrees with a published table of laps',
    unit: '',
    row: { kind: 'words', says: 'share of the bars', keys: Object.keys(lappedShares) },
  },
  '1.0 \n 1.15 \n 1.4 \n 1.5',
)

const stress = (name: string, formula: string, says: string, at: string): Step =>
  step(name, formula, { says, unit: strength, source: en(at) })
const factor = (name: string, formula: string, says: string): Step =>
  step(name, formula, { says, source: en('Table 8.2') })
const byCover = 'factor for the cover'
const byForm = 'factor for the form of the end'

/** The factors of Table 8.2: form and cover; a bar in compression has none below 1. */
const factors: readonly Step[] = [
  when(
    { choice: 'force', is: ['compression'] },
    {
      yes: [factor('alpha_1', '1.0', byForm), factor('alpha_2', '1.0', byCover)],
      no: [
        when(
          { choice: 'end', is: ['straight'] },
          {
            yes: [
              factor('alpha_1', '1.0', byForm),
              factor('alpha_2', 'min(max(1 - 0.15 * (cover - bar_size) / bar_size, 0.7), 1.0)', byCover),
            ],
            no: [
              when(
                { formula: 'cover > 3 * bar_size' },
                {
                  says: 'the cover is more than three diameters',
                  yes: [factor('alpha_1', '0.7', byForm)],
                  no: [factor('alpha_1', '1.0', byForm)],
                },
              ),
              factor('alpha_2', 'min(max(1 - 0.15 * (cover - 3 * bar_size) / bar_size, 0.7), 1.0)', byCover),
            ],
          },
        ),
      ],
    },
  ),
]

const leastAnchorage = (part: string): Step =>
  step('l_b_min', `max(${part} * l_b_rqd, 10 * bar_size, 100 mm)`, {
    says: 'least anchorage length',
    unit: size,
    source: en('Eq. 8.6, 8.7'),
  })

/** Bond strength, basic length, factors, anchorage `l_bd` and lap `l_0`. */
export const anchorageEn1992Steps: readonly Step[] = [
  stress(
    'f_ctk',
    '0.7 * 0.30 * (f_ck / (1 MPa))^(2 / 3) * (1 MPa)',
    'lower tensile strength of the concrete',
    'Table 3.1',
  ),
  when(
    { choice: 'bond', is: ['good'] },
    {
      yes: [step('eta_1', '1.0', { says: 'factor for the bond', source: en('8.4.2(2)') })],
      no: [step('eta_1', '0.7', { says: 'factor for the bond', source: en('8.4.2(2)') })],
    },
  ),
  step('eta_2', 'min((132 mm - bar_size) / (100 mm), 1.0)', {
    says: 'factor for the diameter',
    source: en('8.4.2(2)'),
  }),
  stress('f_bd', '2.25 * eta_1 * eta_2 * f_ctk / 1.5', 'design bond strength', 'Eq. 8.2, 3.16'),
  stress('sigma_sd', 'used * f_yk / 1.15', 'stress in the bar', '8.4.3(2)'),
  step('l_b_rqd', 'bar_size / 4 * sigma_sd / f_bd', {
    says: 'basic anchorage length',
    unit: size,
    source: en('Eq. 8.3'),
  }),
  ...factors,
  when({ choice: 'force', is: ['tension'] }, { yes: [leastAnchorage('0.3')], no: [leastAnchorage('0.6')] }),
  step('l_bd', 'max(alpha_1 * alpha_2 * l_b_rqd, l_b_min)', {
    says: 'anchorage length',
    unit: size,
    source: en('Eq. 8.4'),
  }),
  checkAnchored('available >= l_bd', en('8.4.4(1)')),
  look('alpha_6', lapFactor, { row: 'share_lapped', says: 'factor for the share of bars lapped' }),
  step('l_b_lap', 'bar_size / 4 * lap_used * f_yk / 1.15 / f_bd', {
    says: 'basic length for the stress at the lap',
    symbol: 'l_b_rqd_lap',
    unit: size,
    source: en('8.7.3(1), Eq. 8.3'),
  }),
  step('l_0', 'max(alpha_1 * alpha_2 * alpha_6 * l_b_lap, 0.3 * alpha_6 * l_b_lap, 15 * bar_size, 200 mm)', {
    says: 'lap needed',
    unit: size,
    source: en('Eq. 8.10, 8.11'),
  }),
  checkLap('lap_planned >= l_0', en('8.7.3')),
]
