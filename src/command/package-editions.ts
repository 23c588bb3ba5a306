import { resultsData } from '../evaluation/results-data.ts'
import { dataDifferences } from './data-differences.ts'
import type { Evaluated } from './evaluated.ts'

/** What a package's attached results say of who made them. */
export interface IssuedResults {
  readonly tool: string
  /** Module and its version, by block. */
  readonly modules: ReadonlyMap<string, { readonly id: string; readonly version: string }>
  readonly data: unknown
}

/** Reads the attached results of a package; of what they do not hold, nothing. */
export function issuedResults(text: string): IssuedResults {
  const data = parsed(text)
  const { tool, blocks } = Object(data) as { readonly tool?: unknown; readonly blocks?: unknown }
  const modules = (Array.isArray(blocks) ? blocks : []).flatMap(block => {
    const { name, module, version } = Object(block) as Record<string, unknown>
    const isWhole = [name, module, version].every(each => typeof each === 'string')
    return isWhole ? [[String(name), { id: String(module), version: String(version) }] as const] : []
  })
  return { tool: typeof tool === 'string' ? tool : 'another tool', modules: new Map(modules), data }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

/**
 * What of an issued package is another edition than here: the tool, modules with their blocks, and how many of its results this program does
 * not give for the same notebook. Sentences; none where all is the same.
 */
export function editionWords(
  issued: IssuedResults,
  evaluated: Evaluated,
  { path, version }: { readonly path: string; readonly version: string },
): readonly string[] {
  const tool = `undercroft ${version}`
  const { notebook } = Object(issued.data) as { readonly notebook?: { path?: string; sha256?: string } }
  const about = { tool: issued.tool, path: notebook?.path ?? '', sha256: notebook?.sha256 ?? '' }
  const given = JSON.parse(JSON.stringify(resultsData(evaluated.results, evaluated.workings, about)))
  const others = dataDifferences(issued.data, given).filter(({ at }) => !at.endsWith('.version')).length
  return [
    ...(issued.tool === tool ? [] : [`The old package was issued by ${issued.tool}, and this is ${tool}`]),
    ...moduleWords(issued, evaluated),
    ...(others === 0
      ? []
      : [`This program gives ${others} other results for its notebook: \`undercroft prove ${path}\` lists them`]),
  ]
}

function moduleWords({ modules }: IssuedResults, { workings }: Evaluated): readonly string[] {
  const blocks = new Map<string, string[]>()
  for (const block of workings.blocks) {
    const was = modules.get(block.name)
    if (block.kind !== 'calc' || was?.id !== block.module || was.version === block.version) continue
    const words = `Module \`${was.id}\` was version ${was.version} in the old package and is ${block.version} now`
    blocks.set(words, [...(blocks.get(words) ?? []), block.name])
  }
  return [...blocks].map(([words, names]) => `${words}: ${names.join(', ')}`)
}
