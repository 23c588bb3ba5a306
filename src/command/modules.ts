import { nearestName } from '../diagnostic/nearest-name.ts'
import { catalogue, modulesByWing, wingOrder } from '../modules/catalogue.ts'
import { type Wing, wings } from '../modules/ledger.ts'
import type { Module } from '../modules/module.ts'
import { columns } from './columns.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { modulePage } from './module-page.ts'
import { Stopped } from './stopped.ts'
import type { Terminal } from './terminal.ts'

/** `modules [ID]`: the catalogue by wing, or one module's page. */
export function modules(
  terminal: Terminal,
  id: string | undefined,
  options: { readonly format: 'text' | 'json' },
): ExitStatus {
  if (id === undefined) {
    terminal.answer(options.format === 'json' ? JSON.stringify(wingOrder.flatMap(headsOf), null, 2) : list())
    return exitStatus.well
  }
  const module = catalogue.find(each => each.id === id)
  if (!module) {
    const nearest = nearestName(
      id,
      catalogue.map(each => each.id),
    )
    throw new Stopped(
      exitStatus.called,
      `No module is called \`${id}\``,
      nearest ? `Did you mean \`${nearest}\`?` : '`undercroft modules` lists them',
    )
  }
  terminal.answer(options.format === 'json' ? JSON.stringify(module, null, 2) : modulePage(module))
  return exitStatus.well
}

const list = (): string =>
  wingOrder
    .map(wing => {
      const rows = modulesByWing[wing].map(module => [module.id, module.asks])
      return `${wings[wing]}\n\n${columns(['module', 'asks'], rows)}`
    })
    .join('\n\n')

const headsOf = (wing: Wing) => modulesByWing[wing].map(module => headOf(module, wing))

const headOf = ({ id, version, title, asks, code, results }: Module, wing: Wing) => ({
  id,
  version,
  wing,
  title,
  asks,
  ...(code ? { code } : {}),
  results,
})
