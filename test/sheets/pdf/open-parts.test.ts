import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { openParts } from '../../../src/sheets/pdf/open-parts.ts'
import { type Looker, openLooker } from '../test-page.ts'
import { documentWith } from './sample-document.ts'

let looker: Looker
let folder: string

beforeAll(async () => {
  looker = await openLooker()
  folder = await mkdtemp(join(tmpdir(), 'undercroft-parts-'))
})

afterAll(async () => {
  await looker?.close()
  await rm(folder, { recursive: true, force: true })
})

/** How often the browser has laid out a document of so many rows when it is shown and read. */
async function layoutsOf(rows: number): Promise<number | undefined> {
  const body = Array.from({ length: rows }, (_, row) => `<p>Row ${row} of the register</p>`).join('')
  const tab = await openParts([documentWith(body)], { tabs: looker.browser, folder }).tab(0)
  expect(await tab.text()).toContain(`Row ${rows - 1} `)
  const page = (await looker.browser.pages()).at(-1)
  const { LayoutCount } = (await page?.metrics()) ?? {}
  await tab.close()
  return LayoutCount
}

test('a long document is laid out no more often than a short one, though the browser pauses while it reads', async () => {
  const short = await layoutsOf(1)
  expect(short).toBeGreaterThan(0)
  expect(await layoutsOf(60_000)).toBe(short)
})
