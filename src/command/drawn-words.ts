import type { Variable } from '../study/assumptions.ts'
import { beyondNought, normalOver } from '../study/draw.ts'
import type { SampleOptions } from '../study/sample.ts'
import { valueWords } from './vary-answer.ts'

/** How samples are drawn. */
export type Drawing = Required<Pick<SampleOptions, 'seed' | 'spread' | 'coverage' | 'latin'>>

export const percent = (share: number): string => `${(share * 100).toFixed(2)} %`

type Drawn = readonly (Variable & { readonly written: number })[]

/** What was drawn and how; of a normal spread also what its ranges do not say by themselves. */
export function drawnWords(variables: Drawn, how: Drawing): string {
  const all = variables.map(variable => `${variable.entity.key} ${rangeWords(variable)}`).join(', ')
  const more = how.spread === 'normal' ? normalWords(variables, how.coverage) : []
  return [`Drawn: ${all}; ${spreadWords(how)}, each by itself`, ...more].join('\n')
}

const rangeWords = ({ entity, range }: Variable): string =>
  range ? `${valueWords(range.from, entity.unit)} to ${valueWords(range.to, entity.unit)}` : ''

const spreadWords = ({ spread, coverage, latin, seed }: Drawing): string => {
  const words = {
    uniform: 'evenly over the range',
    triangular: 'triangular about the value',
    normal: `normal about the middle of the range, which holds ${Number((coverage * 100).toFixed(6))} %`,
  }
  return `${words[spread]}, ${latin ? 'Latin hypercube, ' : ''}seed ${seed}`
}

/** So little is not said: it would print as nought. */
const leastSaid = 0.5e-4

/** That a value as written is not the mean it is drawn about, and how much is drawn where the range has nothing. */
function normalWords(variables: Drawn, coverage: number): string[] {
  const off = variables.flatMap(({ entity, range, written }) => {
    if (!range) return []
    const mean = valueWords(normalOver(range, coverage).mean, entity.unit)
    const own = valueWords(written, entity.unit)
    return mean === own ? [] : [`${entity.key} about ${mean}, written ${own}`]
  })
  const beyond = variables.flatMap(({ entity, range }) => {
    const share = range ? beyondNought(range, coverage) : 0
    return share < leastSaid ? [] : [`${entity.key} in ${percent(share)} of its draws`]
  })
  return [
    ...(off.length > 0 ? [`Not drawn about the value as written: ${off.join('; ')}`] : []),
    ...(beyond.length > 0 ? [`On the other side of nought, where the range has nothing: ${beyond.join(', ')}`] : []),
  ]
}
