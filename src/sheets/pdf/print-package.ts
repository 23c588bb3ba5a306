import { type BrowserIdentity, openBrowser } from './open-browser.ts'
import type { Part } from './open-parts.ts'
import type { PrintEnvironment } from './print-environment.ts'
import type { PrintFailure } from './print-failure.ts'
import type { PrintedPackage, PrintOptions } from './print-in-tabs.ts'

/** Prints one document, whole or in parts, with a browser started for it. For several, `openBrowser` once. Refuses what `openBrowser` and its `print` refuse. */
export async function printPackage(
  document: string | readonly Part[],
  options: PrintOptions & PrintEnvironment,
): Promise<(PrintedPackage & { readonly browser: BrowserIdentity }) | PrintFailure> {
  const opened = await openBrowser(options)
  if (!opened.ok) return opened
  try {
    return await opened.print(document, options)
  } finally {
    await opened.close()
  }
}
