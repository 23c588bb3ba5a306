import { toHtml } from 'hast-util-to-html'
import { linesOf } from '../../src/evaluation/block-lines.ts'
import type { Line } from '../../src/evaluation/workings.ts'
import { lineHtml } from '../../src/typesetting/line-html.ts'
import { type Setting, settingIn } from '../../src/typesetting/setting.ts'
import type { RunText } from '../evaluation/run-text.ts'

export interface TypesetLine {
  readonly number: string
  /** Renamed blocks in their old names, here and in the markup. */
  readonly block: string
  readonly html: string
}

/** Lines without what follows their surroundings: who uses them, which source is which number, what was printed in full before. */
const bare: Setting = {
  medium: 'print',
  parsed: false,
  reference: key => ({ number: 0, short: key }),
  users: () => [],
  first: { cautions: () => undefined, second: () => undefined, line: () => undefined },
}

/** Every line as the page has it, with the row that stands over it, its number and its links left out: what the proof of `compare` is held against. */
export function typesetLines({ workings }: RunText, renamed: Readonly<Record<string, string>> = {}): TypesetLine[] {
  const inOld = (text: string): string =>
    Object.entries(renamed).reduce((all, [now, old]) => all.replaceAll(`${now}.`, `${old}.`), text)
  return workings.blocks.flatMap(block =>
    linesOf<Line>(block).map(line => {
      const html = toHtml(lineHtml(line, block.name, settingIn(bare, block)), { allowDangerousHtml: true })
      const plain = html
        .replaceAll(/ (?:id|href|for|aria-labelledby|data-[a-z-]+)="[^"]*"/g, '')
        .replaceAll(`>${line.number}<`, '>N<')
      return {
        number: line.number,
        block: renamed[block.name] ?? block.name,
        html: inOld(JSON.stringify(line.row ? [line.row.index, line.row.label] : null) + plain),
      }
    }),
  )
}
