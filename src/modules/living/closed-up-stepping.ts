import type { Method } from '../method.ts'
import { stepped } from './gas-stepping.ts'

const layers = 150

/** Rise of the face of a thick wall under an even flux, by explicit differences over six times the depth that heat has reached. */
function faceRise(q: number, about: { k: number; a: number; time: number }): number {
  const dx = (6 * Math.sqrt(about.a * about.time)) / layers
  const count = Math.ceil((about.a * about.time) / (0.4 * dx * dx))
  const fourier = (about.a * about.time) / (count * dx * dx)
  let rises = new Float64Array(layers + 1)
  for (let step = 0; step < count; step += 1) {
    const next = new Float64Array(layers + 1)
    const at = (i: number): number => rises[i] ?? 0
    next[0] = at(0) + 2 * fourier * (at(1) - at(0) + (q * dx) / about.k)
    for (let i = 1; i < layers; i += 1) next[i] = at(i) + fourier * (at(i + 1) - 2 * at(i) + at(i - 1))
    rises = next
  }
  return rises[0] ?? Number.NaN
}

/**
 * The closed room stepped through the time wanted: carbon dioxide and oxygen from their rates of change, the wall layer by layer.
 * Refuses a room that is changed so often that the steps do not settle.
 */
export const closedUpStepping: Method = {
  id: 'closed-up-stepping',
  title: 'The closed room step by step',
  says: `Both gases from their rates of change in 2000 even steps; the wall as ${layers} layers with the heat flowing from one to the next.`,
  takes: {
    volume: 'volume',
    generation: 'flow',
    leakage: 'flow',
    wanted: 'time',
    co2_start: 'ratio',
    co2_outdoor: 'ratio',
    oxygen_start: 'ratio',
    oxygen_outdoor: 'ratio',
    quotient: 'ratio',
    flux: 'power_per_area',
    conductivity: 'conductivity',
    diffusivity: 'flow_per_length',
  },
  run: numbers => {
    const one = (name: string): number => Number(numbers[name])
    const perHour = one('leakage') / one('volume')
    const gas = (steps: number) => {
      const about = { time: one('wanted'), steps }
      const co2 = { perHour, makes: one('generation') / one('volume'), out: one('co2_outdoor') }
      const oxygen = { perHour, makes: -co2.makes / one('quotient'), out: one('oxygen_outdoor') }
      return { c: stepped(one('co2_start'), co2, about), o: stepped(one('oxygen_start'), oxygen, about) }
    }
    const [coarse, fine] = [gas(1000), gas(2000)]
    const change = Math.abs(fine.c - coarse.c)
    if (!(change < 1e-5)) return { ok: false, says: 'the air is changed too often for steps' }
    const rise = faceRise(one('flux'), { k: one('conductivity'), a: one('diffusivity'), time: one('wanted') })
    return {
      ok: true,
      values: { ...fine, rise },
      verified: 'half the steps change the carbon dioxide by less than 0.001 %',
    }
  },
}
