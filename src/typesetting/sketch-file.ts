import { toHtml } from 'hast-util-to-html'
import type { Drawing } from '../modules/sketch.ts'
import { sketchSvg } from './sketch-svg.ts'

const sheet = { width: 480, height: 300 }

/** A drawing as the text of an SVG file of its own, on white. */
export function sketchFile(drawing: Drawing): string {
  const svg = sketchSvg(drawing, 'chart', sheet)
  const properties = {
    ...svg.properties,
    xmlns: 'http://www.w3.org/2000/svg',
    style: 'background: #fff; font-family: serif',
  }
  return `${toHtml({ ...svg, properties }, { space: 'svg', closeEmptyElements: true })}\n`
}
