import { type BrowserIdentity, openBrowser } from './open-browser.ts'
import type { PrintEnvironment } from './print-environment.ts'
import type { PrintFailure } from './print-failure.ts'
import type { PrintedPackage, PrintOptions } from './print-in-tab.ts'

/** Prints one document with a browser started for it. For several, `openBrowser` once. Refuses what `openBrowser` and its `print` refuse. */
export async function printPackage(
  html: string,
  options: PrintOptions & PrintEnvironment,
): Promise<(PrintedPackage & { readonly browser: BrowserIdentity }) | PrintFailure> {
  const opened = await openBrowser(options)
  if (!opened.ok) return opened
  try {
    return await opened.print(html, options)
  } finally {
    await opened.close()
  }
}
