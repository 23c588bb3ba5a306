import type { Step } from '../module.ts'
import { type Citation, cite } from '../sources.ts'
import { carried, each, step, when } from '../words.ts'
import { lengthUnit, pressureUnit } from './ground-units.ts'
import { beforeDigging, settlementUnit, settles } from './settlement-inputs.ts'

const statics = cite('statics')
const das = cite('das-geotechnical', 'from memory')
const swollen = { choice: 'heave', is: ['swollen'] } as const
const stress = (name: string, formula: string, more: { says: string; symbol: string; source?: Citation }): Step =>
  step(name, formula, { source: statics, ...more, unit: pressureUnit })
const ratio = (formula: string, says: string): Step => step('r_p', formula, { says, symbol: 'r_p', source: das })
const shortens = (name: string, formula: string, more: { says: string; symbol: string }): Step =>
  step(name, formula, { ...more, unit: settlementUnit, source: das })

/** What the base adds to the stress before: less than nothing where swollen ground is only loaded again. */
const added: Step = when(swollen, {
  yes: [
    stress('p_net', 'pressure - q_tot', {
      says: 'pressure of the base less that of the ground dug out',
      symbol: 'p_net',
    }),
  ],
  no: [
    stress('p_net', 'max(pressure - q_tot, 0 kPa)', {
      says: 'net pressure: more than the ground that was dug out',
      symbol: 'p_net',
    }),
  ],
})

const place: readonly Step[] = [
  carried('z_top', { first: '0 m', next: 'z_bottom', says: 'top of the layer, below the base', unit: lengthUnit }),
  carried('sv_top', {
    first: 'q_tot',
    next: 'sv_bottom',
    says: 'total stress there',
    symbol: 'sigma_v_top',
    unit: pressureUnit,
  }),
  step('z_bottom', 'z_top + thickness', { says: 'its bottom', unit: lengthUnit, source: statics }),
  stress('sv_bottom', 'sv_top + gamma_layer * thickness', { says: 'total stress there', symbol: 'sigma_v_bottom' }),
  step('z_mid', '(z_top + z_bottom) / 2', { says: 'its middle', unit: lengthUnit, source: statics }),
]

const stresses: readonly Step[] = [
  stress('s_0', '(sv_top + sv_bottom) / 2 - gamma_w * max(depth + z_mid - water_depth, 0 m)', {
    says: 'effective stress there, before',
    symbol: "sigma'_0",
  }),
  step('I_z', 'width * length / ((width + z_mid) * (length + z_mid))', {
    says: 'share of the pressure that reaches there, spread two to one',
    source: das,
  }),
  when(swollen, {
    yes: [
      stress('s_open', 's_0 - I_z * q_eff', {
        says: 'effective stress there, the pit open and the clay swollen',
        symbol: "sigma'_open",
      }),
    ],
  }),
  stress('s_1', 's_0 + I_z * p_net', { says: 'effective stress there, after', symbol: "sigma'_1" }),
  when(
    { given: 'sigma_p' },
    {
      yes: [ratio('sigma_p / s_0', 'overconsolidation ratio, by the stress borne before')],
      no: [
        when(
          { given: 'OCR' },
          {
            yes: [ratio('OCR', 'overconsolidation ratio, as given')],
            no: [ratio('1', 'normally consolidated, for want of a past stress')],
          },
        ),
      ],
    },
  ),
  stress('s_y', 'r_p * s_0', {
    says: 'stress at which the clay begins to yield',
    symbol: "sigma'_y",
    source: das,
  }),
]

/** The flat branch from the stress named up to the yield stress, the steep one beyond it. */
const branches = (from: string): Step =>
  when(
    { formula: 's_1 <= s_y' },
    {
      says: 'the clay does not yield: recompression alone',
      yes: [
        shortens('s_layer', `thickness / (1 + e_0) * C_r * log10(s_1 / ${from})`, {
          says: 'what the layer shortens',
          symbol: 's',
        }),
      ],
      no: [
        shortens('s_re', `thickness / (1 + e_0) * C_r * log10(s_y / ${from})`, {
          says: 'recompression, up to the yield stress',
          symbol: 's_rec',
        }),
        shortens('s_new', 'thickness / (1 + e_0) * C_c * log10(s_1 / s_y)', {
          says: 'compression beyond it',
          symbol: 's_new',
        }),
        shortens('s_layer', 's_re + s_new', { says: 'what the layer shortens', symbol: 's' }),
      ],
    },
  )

/** Consolidation of clay layers, each by its middle. */
export const settlementOedometerSteps: readonly Step[] = [
  ...beforeDigging,
  added,
  each('layers', [...place, ...stresses, when(swollen, { yes: [branches('s_open')], no: [branches('s_0')] })]),
  step('s_all', 'sum(layers.s_layer)', {
    says: 'settlement by consolidation',
    symbol: 's_con',
    unit: settlementUnit,
    source: statics,
  }),
  settles('s_all'),
]
