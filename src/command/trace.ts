import { findTraced } from '../evaluation/find-traced.ts'
import { traceGraph } from '../evaluation/trace-graph.ts'
import type { TraceGraph } from '../evaluation/trace-types.ts'
import { between, reachOf, type Way } from '../evaluation/trace-walk.ts'
import { countOf } from './count-of.ts'
import { type Evaluated, evaluateFile } from './evaluated.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { sayDiagnostics } from './say-diagnostics.ts'
import { Stopped } from './stopped.ts'
import type { Surroundings } from './surroundings.ts'
import { type TracePart, traceData } from './trace-data.ts'
import type { TraceOptions } from './trace-options.ts'
import { traceText } from './trace-text.ts'

/** `trace FILE NAME`: what a value rests on, down to the assumptions and tables, and all that uses it. */
export async function trace(
  around: Surroundings,
  asked: { readonly file: string; readonly name: string },
  options: TraceOptions,
): Promise<ExitStatus> {
  const { terminal, version } = around
  terminal.doing(`evaluating ${asked.file}`)
  const evaluated = await evaluateFile(asked.file)
  const say = (): void => sayDiagnostics(terminal, evaluated.notebook, evaluated.diagnostics)
  const graph = traceGraph(evaluated.results, evaluated.workings)
  const idOf = (name: string): string => {
    const found = findTraced(graph, { plan: evaluated.results.plan, workings: evaluated.workings }, name)
    if (found.ok) return found.id
    if (found.stopped) say()
    throw new Stopped(
      found.stopped ? exitStatus.notebook : exitStatus.called,
      found.says,
      found.stopped ? found.help : helpOf(found.help, evaluated),
    )
  }
  const root = idOf(asked.name)
  const to = options.to === undefined ? undefined : idOf(options.to)
  if (to === root)
    throw new Stopped(exitStatus.called, `\`${options.to}\` is what is traced`, 'Name another value with `--to`')
  say()
  const parts = partsOf(graph, { root, to }, options)
  const about = { graph, root, parts, ...(to === undefined ? {} : { to }) }
  terminal.answer(
    options.format === 'json'
      ? JSON.stringify(traceData(evaluated, about, version), null, 2)
      : traceText(evaluated, about),
  )
  return evaluated.status
}

/** What was lost to an error may have had the name. */
function helpOf(help: string, { diagnostics, status }: Evaluated): string {
  if (status !== exitStatus.notebook) return help
  return `${help}\nThe notebook has ${countOf(diagnostics).errors}, which may be why: \`undercroft check\` shows them`
}

/** Between two values there is one part, or none; otherwise one for each way that is wanted. */
function partsOf(
  graph: TraceGraph,
  { root, to }: { readonly root: string; readonly to: string | undefined },
  { down = false, up = false }: TraceOptions,
): readonly TracePart[] {
  if (to !== undefined) {
    const found = between(graph, root, to)
    return found ? [found] : []
  }
  const ways: readonly Way[] = down === up ? ['down', 'up'] : [down ? 'down' : 'up']
  return ways.map(way => ({ way, ids: reachOf(graph, root, way) }))
}
