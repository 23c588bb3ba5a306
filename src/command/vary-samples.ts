import { numberLines } from '../evaluation/anchors.ts'
import { usualCoverage } from '../study/draw.ts'
import { proportionInterval } from '../study/proportion-interval.ts'
import { preparedSamples, type Sampled, sample } from '../study/sample.ts'
import type { CheckCount } from '../study/tally.ts'
import { columns } from './columns.ts'
import { plural } from './count-of.ts'
import { type Drawing, drawnWords, percent } from './drawn-words.ts'
import type { Evaluated } from './evaluated.ts'
import { exitStatus } from './exit-status.ts'
import { Stopped } from './stopped.ts'
import type { Surroundings } from './surroundings.ts'
import { type Asked, answerData, valueWords } from './vary-answer.ts'
import type { VaryOptions } from './vary-options.ts'

/** Every range drawn at random: how often each check is satisfied. Says first what it will run. */
export function varySamples(around: Surroundings, { evaluated, measures }: Asked, options: VaryOptions): void {
  const { terminal } = around
  const { samples = 0, latin = false } = options
  const how = {
    seed: options.seed ?? 1,
    spread: options.spread ?? 'uniform',
    coverage: options.coverage === undefined ? usualCoverage : options.coverage / 100,
    latin,
  } as const
  const prepared = preparedSamples(evaluated.results.plan)
  const { variables, runs } = prepared
  if (variables.length === 0)
    throw new Stopped(
      exitStatus.called,
      'No assumption states a range, so there is nothing to draw',
      'Write `range: 2.4 m to 4.0 m` with an assumption',
    )
  refuseTooMany(samples, measures.length + (latin ? variables.length : 0))
  const solves = runs.solves === 0 ? 'no numerical method' : `${plural(runs.solves, 'numerical method')} each time`
  terminal.say(`${plural(variables.length, 'assumption')} drawn ${plural(samples, 'time')}, ${solves}`)
  const about = (done: number): void => terminal.doing(`drawing ${done} of ${samples}`)
  const done = sample(prepared, { samples, ...how, measures, about })
  if (options.format === 'json') answerData(around, evaluated, { samples: dataOf(evaluated, done, how) })
  else {
    const { base } = runs
    const drawn = variables.map(variable => ({ ...variable, written: base[variable.entity.slot] ?? Number.NaN }))
    terminal.answer(textOf(evaluated, done, drawnWords(drawn, how)))
  }
}

/** So many numbers are kept at once, some 1 GB. */
const mostKept = 1e8

function refuseTooMany(samples: number, columns: number): void {
  if (samples * columns <= mostKept) return
  throw new Stopped(
    exitStatus.called,
    `${samples} samples of ${columns} numbers each are more than can be kept`,
    `Draw at most ${Math.floor(mostKept / columns)}, or look at fewer values with \`--on\``,
  )
}

const shareOf = ({ satisfied, asked }: CheckCount) => (asked > 0 ? proportionInterval(satisfied, asked) : undefined)

function dataOf(evaluated: Evaluated, done: Sampled, { seed, spread, coverage, latin }: Drawing) {
  const { lines } = numberLines(evaluated.results)
  return {
    count: done.samples,
    seed,
    spread,
    ...(spread === 'normal' ? { coverage } : {}),
    latin,
    refused: done.lost,
    allSatisfied: { count: done.allSatisfied, ...proportionInterval(done.allSatisfied, done.samples) },
    assumptions: done.variables.map(({ entity, range }) => ({ assumption: entity.key, ...range })),
    checks: done.checks.map(count => ({
      number: lines.get(count.check)?.number ?? '',
      says: count.check.says,
      asked: count.asked,
      satisfied: count.satisfied,
      ...shareOf(count),
    })),
    results: done.measures.map(({ measure, count, mean, deviation, quantiles }) => ({
      on: measure.name,
      unit: measure.unit.text,
      count,
      ...(count > 0 ? { mean, deviation, quantiles } : {}),
    })),
  }
}

function textOf(evaluated: Evaluated, done: Sampled, drawn: string): string {
  const { measures, checks, samples, lost, allSatisfied } = done
  const never = checks.filter(({ asked, satisfied }) => asked === satisfied).length
  const parts = [
    never < checks.length ? checksTable(evaluated, done) : '',
    never > 0 ? `${plural(never, 'check')} satisfied in every sample that asked ${never === 1 ? 'it' : 'them'}` : '',
    measures.length > 0 ? resultsTable(done) : '',
    drawn,
    `${plural(samples, 'sample')}: ${checks.length === 0 ? 'the notebook has no check' : `all checks satisfied in ${intervalWords(proportionInterval(allSatisfied, samples))}`}; ${lost === 0 ? 'no method refused' : `refused in ${percent(lost / samples)}`}`,
  ]
  return parts.filter(Boolean).join('\n\n')
}

const intervalWords = ({ share, low, high }: ReturnType<typeof proportionInterval>): string =>
  `${percent(share)} (95 % interval ${percent(low)} to ${percent(high)})`

/** Checks that are not always satisfied, the rarest first. */
function checksTable(evaluated: Evaluated, { checks }: Sampled): string {
  const { lines } = numberLines(evaluated.results)
  const rows = checks
    .filter(({ asked, satisfied }) => satisfied < asked)
    .sort((a, b) => a.satisfied / a.asked - b.satisfied / b.asked)
    .map(count => {
      const share = shareOf(count)
      const words = share ? [percent(share.share), `${percent(share.low)} to ${percent(share.high)}`] : ['', '']
      return [lines.get(count.check)?.number ?? '', count.check.says, ...words, String(count.asked)]
    })
  return columns(['check', 'says', 'satisfied', '95 % interval', 'asked'], rows)
}

function resultsTable({ measures }: Sampled): string {
  const rows = measures.map(({ measure, mean, deviation, quantiles }) => [
    measure.name,
    valueWords(mean, measure.unit),
    valueWords(deviation, { ...measure.unit, offset: 0 }),
    ...quantiles.map(({ value }) => valueWords(value, measure.unit)),
  ])
  return columns(['result', 'mean', 'deviation', '2.5 %', '5 %', 'middle', '95 %', '97.5 %'], rows)
}
