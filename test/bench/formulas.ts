import { all, create } from 'mathjs'
import { compile } from '../../src/formula/compile.ts'
import { readFormula } from '../../src/formula/read-formula.ts'
import { inTurn, median, say, timesOf } from './measure.ts'

/** A chain as a two-way slab with its flexure has it: inputs, then steps that use them. Numbers for handwritten and closures are SI. */
const inputs: Readonly<Record<string, readonly [number, string]>> = {
  l_x: [3.4, 'm'],
  l_y: [4.6, 'm'],
  h_s: [0.35, 'm'],
  c_c: [0.05, 'm'],
  d_b: [0.016, 'm'],
  w_k: [47.75e3, 'Pa'],
  f_ck: [30e6, 'Pa'],
  f_y: [500e6, 'Pa'],
  b_w: [1, 'm'],
  g_f: [1.5, ''],
  a_x: [0.0511, ''],
  a_y: [0.035, ''],
}

const steps: readonly (readonly [string, string])[] = [
  ['r_s', 'l_y / l_x'],
  ['w_u', 'g_f * w_k'],
  ['M_x', 'a_x * w_u * l_x^2 * b_w'],
  ['M_y', 'a_y * w_u * l_x^2 * b_w'],
  ['d_x', 'h_s - c_c - d_b / 2'],
  ['d_y', 'd_x - d_b'],
  ['k_x', '4.6 * M_x / (f_ck * b_w * d_x^2)'],
  ['k_y', '4.6 * M_y / (f_ck * b_w * d_y^2)'],
  ['A_x', '0.5 * f_ck / f_y * (1 - sqrt(1 - k_x)) * b_w * d_x'],
  ['A_y', '0.5 * f_ck / f_y * (1 - sqrt(1 - k_y)) * b_w * d_y'],
  ['A_b', 'pi * d_b^2 / 4'],
  ['s_x', 'b_w * A_b / A_x'],
  ['s_y', 'b_w * A_b / A_y'],
  ['x_u', '0.87 * f_y * A_x / (0.36 * f_ck * b_w)'],
  ['x_m', '0.46 * d_x'],
  ['M_l', '0.36 * x_m / d_x * (1 - 0.42 * x_m / d_x) * b_w * d_x^2 * f_ck'],
  ['V_u', 'w_u * l_x / 2 * b_w'],
  ['t_v', 'V_u / (b_w * d_x)'],
  ['p_t', '100 * A_x / (b_w * d_x)'],
  ['u_b', 'max(1, 0.8 * f_ck / (6.89 * f_y) * 1000 / p_t)'],
  ['q_1', 'M_x / M_l'],
  ['q_2', 'x_u / x_m'],
  ['q_3', 'min(q_1, q_2)'],
  ['z_x', 'd_x - 0.42 * x_u'],
  ['T_x', 'M_x / z_x'],
]

function handwritten(v: Float64Array, out: Float64Array): void {
  const [l_x, l_y, h_s, c_c, d_b, w_k, f_ck, f_y, b_w, g_f, a_x, a_y] = v as unknown as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ]
  const w_u = g_f * w_k
  const M_x = a_x * w_u * l_x * l_x * b_w
  const M_y = a_y * w_u * l_x * l_x * b_w
  const d_x = h_s - c_c - d_b / 2
  const d_y = d_x - d_b
  const k_x = (4.6 * M_x) / (f_ck * b_w * d_x * d_x)
  const k_y = (4.6 * M_y) / (f_ck * b_w * d_y * d_y)
  const A_x = ((0.5 * f_ck) / f_y) * (1 - Math.sqrt(1 - k_x)) * b_w * d_x
  const A_y = ((0.5 * f_ck) / f_y) * (1 - Math.sqrt(1 - k_y)) * b_w * d_y
  const A_b = (Math.PI * d_b * d_b) / 4
  const x_u = (0.87 * f_y * A_x) / (0.36 * f_ck * b_w)
  const x_m = 0.46 * d_x
  const M_l = ((0.36 * x_m) / d_x) * (1 - (0.42 * x_m) / d_x) * b_w * d_x * d_x * f_ck
  const V_u = ((w_u * l_x) / 2) * b_w
  const p_t = (100 * A_x) / (b_w * d_x)
  const q_1 = M_x / M_l
  const q_2 = x_u / x_m
  const z_x = d_x - 0.42 * x_u
  out.set([
    l_y / l_x,
    w_u,
    M_x,
    M_y,
    d_x,
    d_y,
    k_x,
    k_y,
    A_x,
    A_y,
    A_b,
    (b_w * A_b) / A_x,
    (b_w * A_b) / A_y,
    x_u,
    x_m,
    M_l,
    V_u,
    V_u / (b_w * d_x),
    p_t,
  ])
  out[19] = Math.max(1, ((0.8 * f_ck) / (6.89 * f_y)) * (1000 / p_t))
  out[20] = q_1
  out[21] = q_2
  out[22] = Math.min(q_1, q_2)
  out[23] = z_x
  out[24] = M_x / z_x
}

/** Closures against mathjs compiled with units and against handwritten JavaScript, one process, warm. */
export function benchFormulas(): void {
  const names = [...Object.keys(inputs), ...steps.map(([name]) => name)]
  const slots = new Float64Array(names.length)
  Object.values(inputs).forEach(([value], index) => {
    slots[index] = value
  })
  const closures = steps.map(([, text]) => {
    const read = readFormula(text)
    if (!read.ok) throw new Error(read.fault.says)
    return compile(read.formula, name => ({ kind: 'slot', slot: names.indexOf(name) }))
  })
  const first = Object.keys(inputs).length
  const ours = (): void => {
    for (let index = 0; index < closures.length; index += 1)
      slots[first + index] = (closures[index] as (s: Float64Array) => number)(slots)
  }
  const out = new Float64Array(steps.length)
  const values = Float64Array.from(Object.values(inputs), ([value]) => value)
  const hand = (): void => handwritten(values, out)
  const math = create(all ?? {})
  const compiled = steps.map(([name, text]) => [name, math.compile(text)] as const)
  const withUnits = (): void => {
    const scope: Record<string, unknown> = Object.fromEntries(
      Object.entries(inputs).map(([name, [value, unit]]) => [name, unit ? math.unit(value, unit) : value]),
    )
    for (const [name, code] of compiled) scope[name] = code.evaluate(scope)
  }
  ours()
  hand()
  const differ = steps.findIndex((_, index) => Math.abs((slots[first + index] ?? 0) / (out[index] ?? 1) - 1) > 1e-12)
  if (differ >= 0) throw new Error(`closures and handwritten differ at ${steps[differ]?.[0]}`)
  const [own, written, units] = inTurn([ours, hand, withUnits])
  const [faster, slower] = [timesOf(units, own), timesOf(own, written)]
  say('closures, 25 steps', `${Math.round(median(own ?? []))} ns`)
  say('  faster than mathjs compiled with units', `${faster.toFixed(0)} times`, {
    text: 'at least 100',
    met: faster >= 100,
  })
  say('  slower than handwritten JavaScript', `${slower.toFixed(1)} times`, { text: 'at most 5', met: slower <= 5 })
}
