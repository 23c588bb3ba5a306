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

/** Width of runs in points, within a few per cent, from the widths of the face. */
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
  return [...text].reduce((sum, letter) => sum + (widths.get(letter) ?? usual), 0)
}

/** Advance widths of the upright face in em, as the browser sets it; its italic is a little narrower. */
const measured: Readonly<Record<string, string>> = {
  0.14: '\u2009\u202f',
  0.18: "'",
  0.25: ' \u00a0′',
  0.26: ',.',
  0.3: '/!|[]:;j·',
  0.33: '()-{}il°',
  0.36: 'ft',
  0.38: '"IJ',
  0.47: '*rsεξζ?',
  0.51: 'z_τχ–',
  0.53: '$c0123456789#+<=>S^e~θ−×',
  0.56: 'agγνδ',
  0.58: 'xκλΣo',
  0.6: 'Zkvβ',
  0.61: 'FLqyαηρbdpσ',
  0.63: 'PμπµBuΔ',
  0.66: 'EhnTC',
  0.7: 'XYRDKV',
  0.74: 'A&GUφ',
  0.76: 'OQΦΩψNω',
  0.82: '≤≥H@',
  0.85: 'w',
  0.95: '%Mm',
  1.01: 'W',
}
const usual = 0.6
const widths = new Map(
  Object.entries(measured).flatMap(([width, letters]) => [...letters].map(letter => [letter, Number(width)] as const)),
)

function round(value: number): number {
  return Math.round(value * 100) / 100
}
