import type { Attachment } from '../sheets/attachment.ts'
import {
  type Composed,
  compose,
  composeAround,
  composeScreen,
  composeTextPart,
  countExpected,
  countTextParts,
} from '../sheets/compose.ts'
import type { EarlyModel, PackageRecord, PencilCount } from '../sheets/package-model.ts'
import type { Part } from '../sheets/pdf/index.ts'
import { type PencilProof, pencilProof } from '../sheets/pencil/pencil-proof.ts'
import { earlyModel, type TextOptions } from './early-model.ts'
import type { Evaluated } from './evaluated.ts'
import { lateModel, lateModelInTurns } from './late-model.ts'
import { type IssueFacts, packageAttachments } from './package-attachments.ts'

type Browser = NonNullable<PackageRecord['browser']>

/** A package whose page was recomputed by the independent reader, to be composed with that count on its cover. */
export interface ProvedPackage {
  /** Formulas of the author's text that could not be set; they stand on the page as typed. */
  readonly faults: Composed['faults']
  readonly count: PencilCount
  /** Composes the package, naming the browser that prints it, if one does; with what travels inside it. */
  readonly compose: (browser?: Browser) => Composed & { readonly attachments: readonly Attachment[] }
  /** The same for the screen alone. */
  readonly screen: (browser?: Browser) => string
}

/** Composes the package and has the independent reader recompute its page. Throws where a printed line does not close: that is our fault. */
export function provePackage(evaluated: Evaluated, options: TextOptions): ProvedPackage {
  return proveModel(evaluated, options, earlyModel(evaluated, options))
}

/** The parts to print, with the count on its cover that the proof comes to where every line closes, and what travels inside the PDF. */
export interface ToPrint {
  readonly print: readonly Part[]
  /** In which order the browser gets them: those that wait for the margins last. */
  readonly order?: readonly number[]
  readonly attachments: readonly Attachment[]
}

/** A package to be printed while its page is being proved. */
export interface ExpectedPackage {
  /** Stopped by the signal, the parts that wait for the margins throw its reason. */
  readonly toPrint: (browser: Browser, signal?: AbortSignal) => ToPrint
  /** Proves the page, as `provePackage` does; `stands` where the cover to print has the count of the proof, and may be issued. */
  readonly prove: () => { readonly proved: ProvedPackage; readonly stands: boolean }
}

/** Makes a package ready to be composed for print before it is proved. */
export function expectPackage(evaluated: Evaluated, options: TextOptions): ExpectedPackage {
  const model = earlyModel(evaluated, options)
  return {
    toPrint: (browser, signal) => {
      const attachments = attached(evaluated, options, browser)
      const { assets } = options
      const early = { ...model, record: { ...model.record, browser }, attachments }
      // Found a little at a time, whenever the browser is waited for.
      const late = lateModelInTurns(evaluated, signal)
      late.catch(() => undefined)
      let around: ReturnType<typeof composeAround> | undefined
      const find = async () => {
        const found = await late
        around ??= composeAround({ ...early, proof: countExpected(model), ...found }, assets)
        return around
      }
      const text = Array.from(
        { length: countTextParts(early) },
        (_, place) => () => composeTextPart(early, place, assets),
      )
      const print = [async () => (await find()).front, ...text, async () => (await find()).back]
      const order = [...text.map((_, place) => place + 1), 0, text.length + 1]
      return { print, order, attachments }
    },
    prove: () => {
      const proved = proveModel(evaluated, options, model)
      return { proved, stands: isSame(proved.count, countExpected(model)) }
    },
  }
}

function proveModel(evaluated: Evaluated, options: TextOptions, early: EarlyModel): ProvedPackage {
  const model = { ...early, ...lateModel(evaluated) }
  const { screen, faults } = composeScreen(model, options.assets)
  const proof = pencilProof(screen)
  refuseOpenLines(proof)
  const { lines, closing, notPencil } = proof
  const count = { lines, closing, notPencil }
  const proved = { ...model, proof: count }
  return {
    count,
    faults,
    compose: browser => {
      const record = { ...model.record, ...(browser ? { browser } : {}) }
      const attachments = attached(evaluated, options, browser)
      return { ...compose({ ...proved, record, attachments }, options.assets), attachments }
    },
    screen: browser => {
      const record = { ...model.record, ...(browser ? { browser } : {}) }
      return composeScreen({ ...proved, record, attachments: attached(evaluated, options, browser) }, options.assets)
        .screen
    },
  }
}

const isSame = (one: PencilCount, other: PencilCount): boolean =>
  one.lines === other.lines && one.closing === other.closing && one.notPencil === other.notPencil

function attached(evaluated: Evaluated, options: TextOptions, browser: Browser | undefined): readonly Attachment[] {
  const { name, kept, old } = options
  const beside = { ...(kept ? { kept } : {}), ...(old ? { old } : {}) }
  return packageAttachments(evaluated, { name, facts: factsOf(options, browser), ...beside })
}

function factsOf({ version, command, draft, paper, date, old }: TextOptions, browser: Browser | undefined): IssueFacts {
  return {
    format: 1,
    tool: `undercroft ${version}`,
    command,
    draft,
    paper,
    ...(date ? { date: date.toISOString() } : {}),
    ...(old ? { since: old.label, ...(old.says.length > 0 ? { sinceSays: old.says } : {}) } : {}),
    ...(browser ? { browser: { name: browser.name, version: browser.version, pinned: browser.pinned } } : {}),
  }
}

function refuseOpenLines({ lines, closing, failing }: PencilProof): void {
  if (closing === lines) return
  const first = failing
    .slice(0, 5)
    .map(({ number, printed, recomputed }) => `  ${number}: printed ${printed}, recomputed ${recomputed}`)
  throw new Error(`${lines - closing} of ${lines} printed lines do not close:\n${first.join('\n')}`)
}
