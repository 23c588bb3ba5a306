import type { Place } from '../diagnostic/diagnostic.ts'
import type { CaseInput, Module } from '../modules/module.ts'
import type { CalcBlock, Entry, Keyed, Notebook, Written } from '../notebook/types.ts'
import type { System } from '../quantity/types.ts'

const place: Place = { line: 1, column: 1, offset: 0, end: 0 }
const written = (text: string): Written => ({ text, place, exact: false })

function entryOf(value: CaseInput): Entry {
  if (typeof value === 'string') return { kind: 'scalar', written: written(value) }
  return { kind: 'list', place, items: value.map(row => ({ kind: 'map', place, entries: keyedOf(row) })) }
}

const keyedOf = (values: Readonly<Record<string, CaseInput>>): Keyed[] =>
  Object.entries(values).map(([key, value]) => ({ key: written(key), value: entryOf(value) }))

/** A notebook of one calc block called `it`, made without Markdown: how a module's published cases are run. */
export function calcNotebook(module: Module, inputs: Readonly<Record<string, CaseInput>>, units: System): Notebook {
  const block: CalcBlock = {
    kind: 'calc',
    name: written('it'),
    module: written(module.id),
    inputs: keyedOf(inputs),
    place,
    end: place.end,
  }
  return {
    path: module.id,
    text: '',
    title: {
      title: module.title,
      project: '',
      number: '',
      revision: '',
      purpose: '',
      prepared: '',
      checked: '',
      approved: '',
      date: '',
      language: 'en',
      units,
      figures: 4,
      paper: 'A4',
      codes: [],
      ranges: [],
      designBasis: [],
      coverage: [],
      revisions: [],
      references: new Map(),
    },
    blocks: [block],
    mentions: [],
    notices: [],
    tree: { type: 'root', children: [] },
    diagnostics: [],
  }
}
