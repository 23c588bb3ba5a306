import type { Element, Root } from 'hast'
import { h } from 'hastscript'
import type { Place } from '../../src/diagnostic/diagnostic.ts'
import { evaluate } from '../../src/evaluation/evaluate.ts'
import { makeWorkings } from '../../src/evaluation/make-workings.ts'
import { passportsOf } from '../../src/evaluation/passport.ts'
import { plan } from '../../src/evaluation/plan.ts'
import { catalogue } from '../../src/modules/catalogue.ts'
import type { CaseInput } from '../../src/modules/module.ts'
import type {
  AssumeBlock,
  Assumption,
  Block,
  Entry,
  Mention,
  Notebook,
  Notice,
  Statement,
  TitleBlock,
  Written,
} from '../../src/notebook/types.ts'
import type { PackageModel } from '../../src/sheets/package-model.ts'

let at = 0
const place = (): Place => {
  at += 10
  return { line: at / 10, column: 1, offset: at, end: at + 5 }
}
const written = (text: string): Written => ({ text, place: place(), exact: false })

interface Assumed {
  readonly value: string
  readonly basis?: string
  readonly symbol?: string
  readonly range?: readonly [string, string]
  readonly closes?: string
  readonly measured?: string
  readonly evidence?: string
}

export function assume(name: string, values: Readonly<Record<string, Assumed>>): AssumeBlock {
  const assumptions = Object.entries(values).map(
    ([key, one]): Assumption => ({
      name: written(key),
      value: written(one.value),
      status: one.closes ? 'hold' : 'confirmed',
      ...(one.basis ? { basis: written(one.basis) } : {}),
      ...(one.symbol ? { symbol: written(one.symbol) } : {}),
      ...(one.range ? { range: { from: written(one.range[0]), to: written(one.range[1]) } } : {}),
      ...(one.closes ? { closes: written(one.closes) } : {}),
      ...(one.measured ? { measured: written(one.measured) } : {}),
      ...(one.evidence ? { evidence: written(one.evidence) } : {}),
    }),
  )
  return { kind: 'assume', name: written(name), assumptions, place: place(), end: at + 10 }
}

export function calc(module: string, name: string, inputs: Readonly<Record<string, CaseInput>>): Block {
  const keyed = Object.entries(inputs).map(([key, value]) => ({ key: written(key), value: entry(value) }))
  return { kind: 'calc', module: written(module), name: written(name), inputs: keyed, place: place(), end: at + 10 }
}

function entry(value: CaseInput): Entry {
  if (typeof value === 'string') return { kind: 'scalar', written: written(value) }
  return {
    kind: 'list',
    place: place(),
    items: value.map(row => ({
      kind: 'map',
      place: place(),
      entries: Object.entries(row).map(([key, text]) => ({ key: written(key), value: entry(text) })),
    })),
  }
}

export function work(
  name: string,
  lines: readonly (readonly [name: string, formula: string, remark: string])[],
): Block {
  const statements = lines.map(
    ([step, formula, remark]): Statement =>
      step
        ? { kind: 'step', name: written(step), formula: written(formula), remark: written(remark) }
        : { kind: 'check', formula: written(formula), remark: written(remark) },
  )
  return { kind: 'work', name: written(name), statements, place: place(), end: at + 10 }
}

export const titleBlock: TitleBlock = {
  title: 'Roof and walls of the buried shelter',
  project: 'Skerry Point field station',
  number: 'SP-C-014',
  revision: 'B',
  purpose: 'for review',
  prepared: 'M. Aird, Skerry Works',
  checked: '',
  approved: '',
  checkLevel: 'other person',
  date: '2026-03-02',
  language: 'en',
  units: 'SI',
  figures: 4,
  paper: 'A4',
  ranges: [],
  designBasis: [],
  coverage: [],
  codes: ['IS 456:2000', 'EN 1997-1:2004'],
  revisions: [
    { mark: 'A', date: '2026-01-20', note: 'first issue' },
    { mark: 'B', date: '2026-03-02', note: 'water level raised after the wet season' },
  ],
  references: new Map([['site-report', 'Skerry Works. Site report 14: standpipes and trial pits, 2025.']]),
}

export interface Made {
  readonly blocks: readonly Block[]
  readonly mentions?: readonly Mention[]
  readonly notices?: readonly Notice[]
  readonly body: Root
  readonly title?: Partial<TitleBlock>
  readonly draft?: boolean
}

/** A package's model through the real plan, evaluation and workings; only the reading of Markdown is left out. */
export function modelOf({ blocks, mentions = [], notices = [], body, title, draft = false }: Made): PackageModel {
  const notebook: Notebook = {
    path: 'shelter.md',
    text: '',
    title: { ...titleBlock, ...title },
    blocks,
    mentions,
    notices,
    tree: { type: 'root', children: [] },
    diagnostics: [],
  }
  const results = evaluate(plan(notebook, catalogue))
  const workings = makeWorkings(results)
  const used = new Set(workings.blocks.flatMap(block => (block.kind === 'calc' ? [block.module] : [])))
  const modules = catalogue
    .filter(module => used.has(module.id))
    .map(({ id, version, title: name, code }) => ({ id, version, title: name, ...(code ? { code } : {}) }))
  return {
    notebook,
    workings,
    body,
    record: {
      tool: 'undercroft',
      version: '0.1.0',
      sha256: 'ab'.repeat(32),
      command: 'undercroft issue shelter.md',
      modules,
    },
    passports: [...passportsOf(results, workings)],
    draft,
    paper: notebook.title.paper,
    date: notebook.title.date,
  }
}

export const blockAt = (index: number): Element => h('div', { dataUndercroftBlock: String(index) })
export const mentionAt = (index: number): Element => h('span', { dataUndercroftMention: String(index) })

export const value = (name: string): Mention => ({ kind: 'value', name: written(name), place: place() })
export const see = (name: string): Mention => ({ kind: 'see', name: written(name), place: place() })
export const citing = (name: string): Mention => ({ kind: 'cite', name: written(name), place: place() })
export const notice = (kind: 'caution' | 'hold', text: string): Notice => ({ kind, text, place: place() })
