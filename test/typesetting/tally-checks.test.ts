import { toHtml } from 'hast-util-to-html'
import { describe, expect, it } from 'vitest'
import type { CheckLine } from '../../src/evaluation/workings.ts'
import { cross, tick, verdict } from '../../src/typesetting/marks.ts'
import { isDoubtful, tallyChecks } from '../../src/typesetting/tally-checks.ts'

const plain = { satisfied: true, doubts: [], verdict: 'satisfied' } as const
const failing = { satisfied: false, doubts: ['outside limits'], verdict: 'not satisfied' } as const
const doubtful = { satisfied: true, doubts: ['outside limits'], verdict: 'satisfied but outside limits' } as const

describe('tally-checks', () => {
  it('tally-checks: only what is satisfied is doubtful', () => {
    expect([plain, failing, doubtful].map(isDoubtful)).toEqual([false, false, true])
  })

  it('tally-checks: a doubtful check is counted apart, the worst first', () => {
    const checks = [plain, doubtful, failing, plain, doubtful] as unknown as CheckLine[]
    expect([...tallyChecks(checks)].map(([words, { length }]) => [words, length])).toEqual([
      ['not satisfied', 1],
      ['satisfied but outside limits', 2],
      ['satisfied', 2],
    ])
    expect([...tallyChecks([])]).toEqual([])
  })
})

describe('the mark of a verdict', () => {
  it('verdict: a doubtful check has neither the tick of a satisfied one nor the cross of one that is not', () => {
    const made = toHtml(verdict(doubtful))
    expect(made).not.toContain(toHtml(tick()))
    expect(made).not.toContain(toHtml(cross()))
    expect(made).toContain('class="mark"')
    expect(made).toMatch(/<b>satisfied but outside limits<\/b><\/span>$/)
  })

  it('verdict: the plain ones have their own', () => {
    expect(toHtml(verdict(plain))).toContain(toHtml(tick()))
    expect(toHtml(verdict(failing))).toContain(toHtml(cross()))
  })
})
