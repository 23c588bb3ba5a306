/** Prints and finishes the sample package once and writes it to the path given: run as a program of its own by a test. */
import { writeFileSync } from 'node:fs'
import { finishPdf, printPackage } from '../../../src/sheets/pdf/index.ts'
import { packageOf, SAMPLE_FONTS } from './sample-document.ts'
import { sampleFinish } from './sample-finish.ts'

const printed = await printPackage(packageOf(9), { variables: process.env, fonts: SAMPLE_FONTS })
if (!printed.ok) throw new Error(`${printed.says}\n${printed.help}`)
const finished = finishPdf(printed.pdf, sampleFinish)
if (!finished.ok) throw new Error(finished.says)
const [target] = process.argv.slice(2)
if (target !== undefined) writeFileSync(target, finished.pdf)
const { pages, prints, browser } = printed
process.stdout.write(`${JSON.stringify({ pages, prints, browser, bytes: finished.pdf.length })}\n`)
