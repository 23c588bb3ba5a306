import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import type { Browser, Page } from 'puppeteer-core'
import { chooseCacheFolder } from '../../src/sheets/pdf/cache-folder.ts'
import { findBrowser } from '../../src/sheets/pdf/find-browser.ts'
import { writeFontConfig } from '../../src/sheets/pdf/font-config.ts'
import { findChromiumPackage, unpackFonts } from '../../src/sheets/pdf/packed-chromium.ts'
import { startBrowser } from '../../src/sheets/pdf/start-browser.ts'

/** The packed browser, to look at pages with: what a printed page measures, what axe finds. */
export interface Looker {
  readonly browser: Browser
  open(html: string, media: 'screen' | 'print'): Promise<Page>
  close(): Promise<void>
}

export async function openLooker(): Promise<Looker> {
  const folder = await mkdtemp(join(tmpdir(), 'undercroft-look-'))
  const running = await start(folder)
  return {
    browser: running,
    open: async (html, media) => {
      const file = join(folder, `page-${media}.html`)
      await writeFile(file, html)
      const page = await running.newPage()
      await page.emulateMediaType(media)
      await page.goto(pathToFileURL(file).href, { waitUntil: 'load' })
      return page
    },
    close: async () => {
      await running.close()
      await rm(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 })
    },
  }
}

async function start(folder: string): Promise<Browser> {
  const variables = process.env
  const source = await findChromiumPackage()
  if (!source) throw new Error('the packed browser is not installed')
  const place = { cache: await chooseCacheFolder({ variables }), signal: undefined }
  const found = await findBrowser({ variables }, { source, place })
  if (!found.ok) throw new Error(found.says)
  const fontConfig = await writeFontConfig(folder, await unpackFonts(source, place))
  const started = await startBrowser(found, { folder, variables, fontConfig, root: process.getuid?.() === 0 })
  if (!started.ok) throw new Error(started.says)
  return started.running
}
