import type { Method, Solved } from '../method.ts'
import type { Comparison, Second } from '../module.ts'
import { beamDifferences } from '../numerics/beam-differences.ts'
import type { BeamEnd } from '../numerics/beam-solution.ts'
import { NumericRefusal } from '../numerics/numeric-refusal.ts'
import { cite } from '../sources.ts'
import { solve } from '../words.ts'

const moment = { SI: 'kN*m/m', US: 'lbf*ft/ft' }
const force = { SI: 'kN/m', US: 'plf' }

const endsOf: Readonly<Record<string, readonly [BeamEnd, BeamEnd]>> = {
  simple: ['pinned', 'pinned'],
  propped: ['fixed', 'pinned'],
  fixed: ['fixed', 'fixed'],
  cantilever: ['fixed', 'free'],
}

/** The strip 1 m wide as a chain of links with springs: moments (hogging negative) and reactions. Refuses what `beamDifferences` refuses. */
export const oneWaySlabDifferences: Method = {
  id: 'one-way-slab-differences',
  title: 'Beam by finite differences',
  says: 'The strip as 400 rigid links with a spring at every joint (central differences of the beam equation), the load shared out to the joints.',
  takes: { span: 'length', load: 'pressure' },
  run: ({ span, load }, { ends = '' }) => {
    try {
      return answered(Number(span), Number(load), endsOf[ends] ?? ['pinned', 'pinned'])
    } catch (error) {
      if (error instanceof NumericRefusal) return { ok: false, says: error.message }
      throw error
    }
  },
}

function answered(length: number, load: number, [start, end]: readonly [BeamEnd, BeamEnd]): Solved {
  const solved = beamDifferences({
    length,
    start,
    end,
    load: [
      [0, load],
      [length, load],
    ],
  })
  return {
    ok: true,
    values: {
      start: solved.start.moment,
      span: Math.max(0, solved.sagging.moment),
      left: solved.start.reaction,
      right: solved.end.reaction,
    },
    verified: `moments change by ${(100 * solved.change).toPrecision(1)} % from half as many links`,
  }
}

const says = 'the same theory in 400 links'
const spans = { choice: 'ends', is: ['simple', 'propped', 'fixed'] }
const compare = (name: string, more: Partial<Comparison> = {}): Comparison => ({
  first: name,
  second: `${name}_2`,
  band: 0.002,
  says,
  ...more,
})

/** The span again by finite differences, from its supports and load alone. */
export const oneWaySlabSecond: Second = {
  title: 'Finite differences',
  says: 'The strip is solved again as a chain of 400 links with springs, from its supports and load alone; no coefficient is used.',
  steps: [
    solve(oneWaySlabDifferences, {
      takes: { span: 'span', load: 'load' },
      words: { ends: { choice: 'ends' } },
      gives: {
        start: { dimension: 'moment_per_length', name: 'M_sup_2', says: 'hogging moment', unit: moment },
        span: { dimension: 'moment_per_length', name: 'M_span_2', says: 'largest sagging moment', unit: moment },
        left: { dimension: 'force_per_length', name: 'V_left_2', says: 'reaction at the left end', unit: force },
        right: { dimension: 'force_per_length', name: 'V_right_2', says: 'reaction at the right end', unit: force },
      },
      says: 'the strip as a chain of links',
      source: cite('statics', "EI w'''' = p"),
    }),
  ],
  compare: [
    compare('M_sup', { when: { choice: 'ends', is: ['propped', 'fixed', 'cantilever'] } }),
    compare('M_span', { when: spans }),
    compare('V_left'),
    compare('V_right', { when: spans }),
  ],
}
