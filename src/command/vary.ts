import { type Measure, measureOf, sectionMeasures } from '../study/measure.ts'
import { type Evaluated, evaluateFile } from './evaluated.ts'
import { type ExitStatus, exitStatus } from './exit-status.ts'
import { refuseOwnFiles } from './refuse-own-files.ts'
import { sayDiagnostics } from './say-diagnostics.ts'
import { Stopped } from './stopped.ts'
import type { Surroundings } from './surroundings.ts'
import { varyMargins } from './vary-margins.ts'
import type { VaryOptions } from './vary-options.ts'
import { varyRanges } from './vary-ranges.ts'
import { varySamples } from './vary-samples.ts'
import { varySweep } from './vary-sweep.ts'
import { chartHelp } from './write-chart.ts'

/** `vary FILE`: how far can it move? Margins, or one of `--ranges`, `--sweep` and `--samples`. A notebook with errors is not varied. */
export async function vary(around: Surroundings, file: string, options: VaryOptions): Promise<ExitStatus> {
  const { terminal } = around
  const study = studyOf(options)
  if (options.svg) await refuseOwnFiles(options.svg, file, chartHelp)
  terminal.doing(`evaluating ${file}`)
  const evaluated = await evaluateFile(file)
  if (evaluated.status === exitStatus.notebook) {
    sayDiagnostics(terminal, evaluated.notebook, evaluated.diagnostics)
    terminal.say('Nothing was varied: the notebook has errors')
    return exitStatus.notebook
  }
  const measures = measuresOf(evaluated, options)
  if (study === 'ranges') await varyRanges(around, { evaluated, measures }, options)
  else if (study === 'sweep') await varySweep(around, { evaluated, measures }, options)
  else if (study === 'samples') varySamples(around, { evaluated, measures }, options)
  else varyMargins(around, evaluated, options)
  return evaluated.status
}

/** The one study that is asked for. `--on` alone asks for the ranges. */
function studyOf(options: VaryOptions): 'margins' | 'ranges' | 'sweep' | 'samples' {
  const { ranges, sweep, samples, on, svg } = options
  const asked = [ranges && 'ranges', sweep && 'sweep', samples && 'samples'].filter(Boolean)
  if (asked.length > 1)
    throw called(
      `\`${asked.map(name => `--${name}`).join('` and `')}\` are studies of their own`,
      'Ask for one at a time',
    )
  const study = sweep ? 'sweep' : samples ? 'samples' : ranges || on ? 'ranges' : 'margins'
  if (svg && study !== 'ranges' && study !== 'sweep')
    throw called('`--svg` draws the answer of `--ranges` or of `--sweep`', 'Add one of them')
  refuseIdleDraws(options)
  return study
}

/** Refuses ways to draw where nothing is drawn, and a share of a spread that has none. */
function refuseIdleDraws({ samples, latin, seed, spread, coverage }: VaryOptions): void {
  const given = Object.entries({ latin, seed, spread, coverage }).find(([, value]) => value !== undefined)
  if (given && !samples) throw called(`\`--${given[0]}\` is a way to draw samples`, 'Add `--samples N`')
  if (coverage !== undefined && spread !== 'normal')
    throw called('`--coverage` is what a range holds of a normal spread', 'Add `--spread normal`')
}

const called = (says: string, help: string): Stopped => new Stopped(exitStatus.called, says, help)

/** What the study looks at: what `--on` names, or the largest ratio of each section. */
function measuresOf({ results }: Evaluated, { on }: VaryOptions): readonly Measure[] {
  if (!on) return sectionMeasures(results)
  return on.map(name => {
    const measure = measureOf(results, name)
    if (measure) return measure
    throw called(
      `No value and no check with a ratio is called \`${name}\``,
      'Name a value, `roof.M_x`, or a check, `4.11`',
    )
  })
}
