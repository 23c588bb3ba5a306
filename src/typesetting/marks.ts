import type { Element } from 'hast'
import { h, s } from 'hastscript'
import type { CheckLine } from '../evaluation/workings.ts'
import { isDoubtful } from './tally-checks.ts'

const ink = '#1a1a1a'

/** A drawn tick, so that no fall-back font is needed. Words always stand beside it. */
export function tick(): Element {
  return s('svg.mark', { viewBox: '0 0 12 12', ariaHidden: 'true' }, [
    s('path', { d: 'M1.6 6.6l3 3.1 5.9-8', fill: 'none', stroke: ink, strokeWidth: 1.9 }),
  ])
}

/** A drawn cross in a filled square: heavier than the tick, in any print. */
export function cross(): Element {
  return s('svg.mark', { viewBox: '0 0 12 12', ariaHidden: 'true' }, [
    s('rect', { x: 0.3, y: 0.3, width: 11.4, height: 11.4, fill: ink }),
    s('path', { d: 'M3.2 3.2l5.6 5.6M8.8 3.2l-5.6 5.6', fill: 'none', stroke: '#fff', strokeWidth: 1.7 }),
  ])
}

/** A triangle with a bar, for a warning or a hold. */
export function caution(): Element {
  return s('svg.mark', { viewBox: '0 0 12 12', ariaHidden: 'true' }, [
    s('path', { d: 'M6 1.2L11.4 10.8H0.6Z', fill: 'none', stroke: ink, strokeWidth: 1.1, strokeLinejoin: 'round' }),
    s('path', { d: 'M6 4.6v3M6 8.6v1', stroke: ink, strokeWidth: 1.2 }),
  ])
}

/** An arrow to what comes of a value. No face of ours has one that stands on the line. */
export function usedIn(): Element {
  return s('svg.to', { viewBox: '0 0 12 8', role: 'img', ariaLabel: 'used in' }, [
    s('path', { d: 'M0.5 4H10.5M7 1.2L10.6 4L7 6.8', fill: 'none', stroke: ink, strokeWidth: 1.1 }),
  ])
}

/** Satisfied, satisfied with a doubt, or not satisfied, in words with the mark. */
export function verdict(check: Pick<CheckLine, 'satisfied' | 'doubts' | 'verdict'>): Element {
  const words = h('b', check.verdict)
  if (!check.satisfied) return h('span.verdict.fails', [cross(), words])
  return isDoubtful(check) ? h('span.verdict.doubt', [caution(), words]) : h('span.verdict', [tick(), words])
}

/** The empty square for the checker's tick. */
export function tickBox(): Element {
  return h('span.box', { ariaHidden: 'true' })
}

const bar = { width: 100, height: 9, whole: 80 }

/**
 * A ratio drawn as a bar: the frame ends at 1, what passes it runs on in solid black, cut off at 1.25. The number always
 * stands beside it.
 */
export function ratioBar(ratio: number): Element {
  const reach = Math.max(0, Math.min(ratio, 1.25)) * bar.whole
  const inside = Math.min(reach, bar.whole)
  const over = reach - inside
  const past =
    over > 0.01 ? [s('rect', { x: bar.whole, y: 0, width: round(over), height: bar.height, fill: '#000' })] : []
  return s('svg.bar', { viewBox: `0 0 ${bar.width} ${bar.height}`, preserveAspectRatio: 'none', ariaHidden: 'true' }, [
    s('rect', {
      x: 0.4,
      y: 0.4,
      width: bar.whole - 0.4,
      height: bar.height - 0.8,
      fill: '#fff',
      stroke: '#777',
      strokeWidth: 0.8,
    }),
    s('rect', { x: 0, y: 0, width: round(inside), height: bar.height, fill: '#4d5a63' }),
    ...past,
    s('path', { d: `M${bar.whole} -1V10`, stroke: '#000', strokeWidth: 1.4 }),
  ])
}

function round(value: number): number {
  return Math.round(value * 100) / 100
}
