import type { ElementContent } from 'hast'
import { s } from 'hastscript'
import type { Label } from '../modules/sketch.ts'
import { pieces } from './small-figures.ts'
import { type Run, symbolRuns } from './symbol-runs.ts'

/** Size of a sketch's lettering, in points. */
export const letterSize = 8
const shrink = 0.72
const drops = { line: 0, sub: 0.24, sup: -0.34 } as const

/** A label as runs of text: the symbol as in the working, an equals sign, the value; or plain words. */
export function labelRuns(label: Label): readonly Run[] {
  const runs: Run[] = label.symbol ? [...symbolRuns(label.symbol)] : []
  if (label.symbol && label.value) runs.push(...upright(' = '))
  if (label.value) runs.push(...upright(label.value))
  if (label.text) runs.push(...upright(runs.length > 0 ? ` ${label.text}` : label.text))
  return runs
}

const upright = (text: string): Run[] => pieces(text).map(piece => ({ ...piece, style: 'upright' }))

/** Width of runs in points, within a few per cent, from the mean widths of the face. */
export function runsWidth(runs: readonly Run[]): number {
  return runs.reduce((sum, run) => sum + textWidth(run.text) * letterSize * (run.level === 'line' ? 1 : shrink), 0)
}

/** Runs as tspans of one text element. A subscript lowers the line, and the next run raises it again. */
export function runSpans(runs: readonly Run[]): ElementContent[] {
  let lowered = 0
  return runs.map(run => {
    const wanted = letterSize * drops[run.level]
    const dy = round(wanted - lowered)
    lowered = wanted
    return s('tspan', spanProperties(run, dy), run.text)
  })
}

function spanProperties(run: Run, dy: number): Record<string, string | number> {
  return {
    ...(dy === 0 ? {} : { dy }),
    ...(run.level !== 'line' ? { fontSize: round(letterSize * shrink) } : {}),
    ...(run.style === 'italic' ? { fontStyle: 'italic' } : {}),
  }
}

function textWidth(text: string): number {
  let em = 0
  for (const letter of text) em += letterWidth(letter)
  return em
}

function letterWidth(letter: string): number {
  if (/[ilj.,:;'·′|!()/]/.test(letter)) return 0.29
  if (letter === ' ' || letter === '\u202f' || letter === '\u2009') return 0.22
  if (/[mwMW@%]/.test(letter)) return 0.83
  if (/[A-Z]/.test(letter)) return 0.64
  if (/[frts-]/.test(letter)) return 0.39
  return 0.53
}

function round(value: number): number {
  return Math.round(value * 100) / 100
}
