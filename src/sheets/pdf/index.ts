/** From a finished HTML text to a finished PDF: `openBrowser` or `printPackage` print and check, `finishPdf` makes the package of it. */
export { type FinishOptions, finishPdf } from './finish-pdf.ts'
export { type BrowserIdentity, type OpenBrowser, openBrowser } from './open-browser.ts'
export type { PageNumbers } from './pdf-pages.ts'
export type { PrintEnvironment } from './print-environment.ts'
export type { PrintFailure, PrintReason } from './print-failure.ts'
export type { PrintedPackage, PrintOptions } from './print-in-tab.ts'
export { printPackage } from './print-package.ts'
export { type ReadPdf, readPdf } from './read-pdf.ts'
