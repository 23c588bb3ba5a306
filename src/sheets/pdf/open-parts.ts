import { writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser } from 'puppeteer-core'
import { openTab, type SheetTab } from './sheet-tab.ts'
import { withStandIns } from './stand-ins.ts'

/** A part of a document, HTML by itself; or what finds it, asked when its turn comes: the browser is at the parts before by then. */
export type Part = string | (() => string | Promise<string>)

/** The parts of a document, each in a tab of its own, which is opened when it is asked for. */
export interface OpenParts {
  /** Places of the parts in the document, in the order in which they are opened. */
  readonly order: readonly number[]
  /** Whether the document is in parts at all. */
  readonly parted: boolean
  readonly tab: (place: number) => Promise<SheetTab>
  /** What was opened so far, in the order of the document. */
  readonly opened: () => readonly SheetTab[]
}

interface PartsPlace {
  readonly tabs: Browser
  readonly folder: string
  /** As the parts stand unless given. */
  readonly order?: readonly number[]
}

/** Makes the parts ready to be opened, as files in a folder: a file is loaded far faster than text handed to the browser. */
export function openParts(parts: readonly Part[], { tabs, folder, order = [...parts.keys()] }: PartsPlace): OpenParts {
  const parted = parts.length > 1
  const opened: (SheetTab | undefined)[] = parts.map(() => undefined)
  const open = async (place: number): Promise<SheetTab> => {
    const part = parts[place] ?? ''
    const html = typeof part === 'string' ? part : await part()
    const file = join(folder, parted ? `part-${place + 1}.html` : 'package.html')
    await writeFile(file, hidden(parted ? withStandIns(html) : html))
    const tab = await openTab(tabs, pathToFileURL(file).href)
    opened[place] = tab
    await tab.show()
    return tab
  }
  return {
    order,
    parted,
    tab: async place => opened[place] ?? (await open(place)),
    opened: () => opened.filter(tab => tab !== undefined),
  }
}

/**
 * The document with its root hidden until all of it is there. Otherwise the browser lays out what it has read so far whenever it stops reading,
 * and the line at which it stopped may stand an eighth of a pixel off: other bytes from one print to the next.
 */
function hidden(html: string): string {
  const root = /<html(?=[\s>])/
  if (!root.test(html)) throw new RangeError('expected a document with an `html` element')
  return html.replace(root, '<html hidden')
}
