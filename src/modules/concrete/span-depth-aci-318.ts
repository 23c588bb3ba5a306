import { defineModule } from '../module.ts'
import { cite } from '../sources.ts'
import { type Axis, table } from '../table.ts'
import { check, choice, length, limit, look, quantity, step } from '../words.ts'
import { spanDepthCautions, spanOfMember } from './span-depth-inputs.ts'

const size = { SI: 'mm', US: 'in' }
const source = cite('aci-318', 'Table 7.3.1.1')

const supportWords = {
  cantilever: 'fixed at one end, free at the other',
  simple: 'turns freely at both ends',
  'one end continuous': 'runs on over one support',
  'both ends continuous': 'runs on over both supports',
} as const
const supports: Axis = { kind: 'words', says: 'how the slab is held', keys: Object.keys(supportWords) }
const divisor = table(
  {
    title: 'Span over least thickness, Grade 60',
    source,
    status: 'from memory of the code',
    unit: '',
    row: supports,
  },
  '10 \n 20 \n 24 \n 28',
)

/** Whether a one-way slab is thick enough for its deflection, by ACI 318-19 Table 7.3.1.1. */
export const spanDepthAci318 = defineModule({
  id: 'span-depth-aci-318',
  version: '1.0.0',
  title: 'Deflection by least thickness, ACI 318',
  asks: 'Is this one-way slab thick enough that its deflection need not be worked out?',
  code: 'ACI 318-19',
  inputs: {
    span: { ...spanOfMember, says: 'span of the one-way slab' },
    support: choice({ says: 'how the slab is held', words: supportWords }),
    f_y: quantity('stress', {
      says: 'specified yield strength of the steel',
      unit: { SI: 'MPa', US: 'psi' },
      least: '40000 psi',
      most: '100000 psi',
      source: cite('aci-318', 'Table 20.2.2.4(a)'),
    }),
    thickness: length({
      says: 'overall depth of the slab',
      symbol: 'h',
      unit: size,
      above: '0 mm',
      usual: ['100 mm', '1 m'],
    }),
  },
  steps: [
    look('r_b', divisor, { row: 'support', says: 'span over least thickness, Grade 60' }),
    step('k_y', '0.4 + f_y / (100000 psi)', {
      says: 'factor for the strength of the steel',
      source: cite('aci-318', '7.3.1.1.1'),
    }),
    step('h_min', 'k_y * span / r_b', { says: 'least thickness', unit: size, source }),
    check('deflection', 'thickness >= h_min', { says: 'thickness against the least thickness', source }),
  ],
  results: ['h_min', 'k_y'],
  covers: ['deflection'],
  limits: [
    limit('span <= 40 ft', {
      says: 'the span is one of a solid slab, at most 40 ft',
      otherwise: 'warn',
      on: 'span',
      source: cite('practice'),
    }),
  ],
  cautions: [
    ...spanDepthCautions,
    'For one-way slabs of normal weight concrete that do not carry or touch partitions likely to be damaged. Two-way slabs and walls have other rules.',
  ],
  published: [
    {
      id: 'span-4',
      source: 'ACI 318-19, Table 7.3.1.1: one part in 20 of 15 ft, Grade 60',
      status: 'computed',
      says: 'simple span of 15 ft',
      inputs: { span: '15 ft', support: 'simple', f_y: '60000 psi', thickness: '9 in' },
      answers: { h_min: '9.0 in' },
    },
    {
      id: 'span-5',
      source:
        'A. H. Nilson, D. Darwin and C. W. Dolan, Design of Concrete Structures, one-way slab of two spans of 15 ft built into its supports',
      status: 'memory',
      says: 'both ends continuous, Grade 60; the book takes 6.50 in',
      inputs: { span: '15 ft', support: 'both ends continuous', f_y: '60000 psi', thickness: '6.5 in' },
      answers: { h_min: '6.43 in' },
    },
  ],
  example: { span: '10.5 ft', support: 'one end continuous', f_y: '60000 psi', thickness: '10 in' },
})
