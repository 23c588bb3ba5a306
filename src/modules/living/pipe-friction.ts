import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { solve, step, when } from '../words.ts'
import { colebrook } from './colebrook.ts'

/** What a pipe is called where its friction is worked out: names or formulas of its Reynolds number, roughness and bore. */
interface Pipe {
  readonly Re: string
  readonly roughness: string
  readonly bore: string
}

const laminar = {
  condition: { formula: 'Re < 2300' },
  says: 'the Reynolds number is below 2300: laminar flow',
} as const

/** `f_d`, the friction factor of Darcy and Weisbach: laminar, or by Colebrook, with the formula printed once more over its answer. */
export const frictionFactor = ({ Re, roughness, bore }: Pipe): Step =>
  when(laminar.condition, {
    says: laminar.says,
    yes: [step('f_d', `64 / ${Re}`, { says: 'friction factor in laminar flow', source: cite('cengel-fluid') })],
    no: [
      solve(colebrook, {
        takes: { Re, roughness, bore },
        gives: { f: { dimension: 'ratio', name: 'f_0', says: 'friction factor', symbol: 'f_0' } },
        says: 'friction factor by the formula of Colebrook, solved for its root',
        source: cite('colebrook'),
      }),
      step('f_d', `(-2 * log10(${roughness} / (3.7 * ${bore}) + 2.51 / (${Re} * sqrt(f_0))))^(-2)`, {
        says: 'the formula with it put in gives the same: it is the root',
        source: cite('colebrook'),
      }),
    ],
  })

/** Loss by an explicit form: Hagen and Poiseuille in laminar flow, the friction factor `f_h` of Haaland in turbulent. */
export const explicitLoss = (
  { Re, roughness, bore }: Pipe,
  more: { readonly laminar: Step; readonly turbulent: Step },
): Step =>
  when(laminar.condition, {
    says: laminar.says,
    yes: [more.laminar],
    no: [
      step('f_h', `(-1.8 * log10((${roughness} / (3.7 * ${bore}))^1.11 + 6.9 / ${Re}))^(-2)`, {
        says: 'friction factor by the explicit formula of Haaland',
        source: cite('haaland'),
      }),
      more.turbulent,
    ],
  })
