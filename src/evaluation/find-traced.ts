import { nearestName } from '../diagnostic/nearest-name.ts'
import { keyedLines } from './line-key.ts'
import type { Plan } from './plan-types.ts'
import type { TraceGraph } from './trace-types.ts'
import type { Workings } from './workings.ts'

/** `stopped` where the name is of something that an error of the notebook stopped: then it is the notebook that is at fault. */
export type Traced =
  | { readonly ok: true; readonly id: string }
  | { readonly ok: false; readonly stopped: boolean; readonly says: string; readonly help: string }

/** Finds what a name or a printed number stands for: `roof.M_x`, `site.cover`, `4.07`, `A3`, a check as the record calls it. Refuses, with the nearest name, what is not there. */
export function findTraced(
  graph: TraceGraph,
  { plan, workings }: { readonly plan: Plan; readonly workings: Workings },
  asked: string,
): Traced {
  const checks = checkNames(graph, workings)
  const id = graph.get(asked)?.name ? asked : (numbered(graph, asked) ?? checks.get(asked))
  if (id !== undefined) return { ok: true, id }
  const names = [...[...graph.values()].flatMap(({ name }) => name || []), ...checks.keys()]
  const rows = plan.names.get(asked)
  if (rows?.kind === 'rows')
    return refused(`\`${asked}\` is a list, and one value is wanted`, `Name one row of it, as in \`${asked}_1\``)
  const [block = ''] = asked.split('.')
  if (plan.broken.has(asked) || plan.broken.has(block))
    return { ...refused(`\`${asked}\` was stopped by an error of the notebook`, 'Mend that first'), stopped: true }
  const inside = names.find(name => name.startsWith(`${asked}.`))
  if (inside !== undefined)
    return refused(`\`${asked}\` is a block, and one value is wanted`, `Name a value of it, as in \`${inside}\``)
  const inRow = [...graph.values()].find(
    ({ number }) => /^[a-z]+$/.test(number.slice(asked.length)) && number.startsWith(asked),
  )
  const nearest = inRow ? `\`${inRow.number}\`, of the first row` : nearestOf(names, asked)
  return refused(
    /^[A-Z]?[\d.]+[a-z]*$/.test(asked) ? `Nothing is numbered \`${asked}\`` : `No value is called \`${asked}\``,
    nearest
      ? `Did you mean ${nearest}?`
      : 'Name a value as `block.name`, or give the number of a step, a check or an assumption',
  )
}

/** Checks and branches by their block and key, as the checking record calls them: `steel.area`. */
const checkNames = (graph: TraceGraph, { blocks }: Workings): ReadonlyMap<string, string> =>
  new Map(
    blocks.flatMap(block =>
      block.kind === 'assume'
        ? []
        : [...keyedLines(block)].flatMap(([key, { id }]) =>
            graph.get(id)?.name === '' ? [[`${block.name}.${key}`, id] as const] : [],
          ),
    ),
  )

/** The value that was most likely meant; without its block, the first ones of that name. */
function nearestOf(names: readonly string[], asked: string): string | undefined {
  const alike = names.filter(name => name.endsWith(`.${asked}`)).slice(0, 3)
  const near = nearestName(asked, names)
  const meant = alike.length > 0 ? alike : near ? [near] : []
  const last = meant.at(-1)
  return (
    last &&
    [
      meant
        .slice(0, -1)
        .map(name => `\`${name}\``)
        .join(', '),
      `\`${last}\``,
    ]
      .filter(Boolean)
      .join(' or ')
  )
}

const refused = (says: string, help: string) => ({ ok: false, stopped: false, says, help }) as const

/** Several values of one numerical method share its number: then the method itself is meant. */
function numbered(graph: TraceGraph, number: string): string | undefined {
  const nodes = [...graph.values()].filter(node => node.number === number && number !== '')
  return (nodes.find(({ kind }) => kind === 'method') ?? nodes[0])?.id
}
