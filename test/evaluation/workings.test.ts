import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { tablesUsedBy, usedBy } from '../../src/evaluation/used-by.ts'
import type { Line, Printed, Workings } from '../../src/evaluation/workings.ts'
import { digitsOf } from '../../src/quantity/number-print.ts'
import { faultsOf } from './recompute.ts'
import { linesOf, type RunText, runText, said, shownOf } from './run-text.ts'
import { sampleBody } from './sample-sheet.ts'

const sheet = runText(sampleBody())
const american = runText(sampleBody(), { units: 'US' })
const broken = runText(
  sampleBody().replace('plan_length: 8.6 m', 'plan_length: 0 m').replace('k = site.wall / 6', 'k = site.wall / 0'),
)
const sheets: readonly (readonly [string, RunText])[] = [
  ['SI', sheet],
  ['US', american],
  ['with faults', broken],
]

function anchors({ blocks }: Workings): string[] {
  return blocks.flatMap(block => {
    if (block.kind === 'assume') return [block.id, ...block.rows.map(({ id }) => id)]
    const given = block.kind === 'calc' ? block.given.map(({ id }) => id) : []
    const lines = linesOf(block).flatMap(line => [
      line.id,
      ...(line.kind === 'solve' ? line.gives.map(({ id }) => id) : []),
    ])
    return [block.id, ...given, ...lines]
  })
}

const printedIn = (line: Line): Printed[] => {
  const of = (working: { operands: ReadonlyMap<string, Printed | readonly Printed[]> } | undefined): Printed[] =>
    [...(working?.operands.values() ?? [])].flatMap(each => ('shown' in each ? [each] : [...each]))
  switch (line.kind) {
    case 'formula':
    case 'check':
    case 'branch':
      return of(line.working)
    case 'look':
      return line.interpolations.flatMap(({ working }) => of(working))
    case 'solve':
      return line.takes.flatMap(({ value }) =>
        typeof value === 'string' ? [] : 'shown' in value ? [value] : [...value],
      )
  }
}

describe('the sample sheet', () => {
  it('evaluates without an error, with its few warnings', () => {
    expect(said(sheet.errors)).toEqual([])
    expect(said(american.errors)).toEqual([])
    expect(sheet.workings.blocks.map(({ name }) => name)).toEqual([
      'site',
      'heights',
      'pit',
      'pressure',
      'loads',
      'roof',
      'shield',
      'thrust',
    ])
    expect(sheet.workings.blocks.every(({ complete }) => complete)).toBe(true)
  })

  for (const [title, ran] of sheets) {
    it(`${title}: every line closes`, () => {
      expect(ran.workings.blocks.flatMap(block => linesOf(block).flatMap(line => faultsOf(line)))).toEqual([])
    })
  }
})

for (const [title, ran] of sheets) {
  const { workings } = ran
  describe(`numbers and anchors, ${title}`, () => {
    it('every anchor is there once', () => {
      const all = anchors(workings)
      expect(all.filter((id, index) => all.indexOf(id) !== index)).toEqual([])
    })

    it('every link leads to an anchor', () => {
      const known = new Set(anchors(workings))
      const links = workings.blocks.flatMap(block => {
        if (block.kind === 'assume') return block.rows.flatMap(({ users }) => users.map(({ id }) => id))
        const given = block.kind === 'calc' ? block.given.flatMap(({ to }) => to ?? []) : []
        const shares = block.kind === 'calc' ? (block.second?.shares.flatMap(({ to }) => to ?? []) ?? []) : []
        return [...given, ...shares, ...linesOf(block).flatMap(line => printedIn(line).flatMap(({ to }) => to ?? []))]
      })
      const users = [...workings.users.values()].flatMap(each => each.map(({ id }) => id))
      const cited = workings.references
        .flatMap(each => each.cited.map(({ id }) => id))
        .filter(id => !id.startsWith('m-'))
      const answers = workings.answers.flatMap(answer =>
        'to' in answer ? [answer.to] : answer.kind === 'value' ? [answer.printed.to ?? ''] : [],
      )
      expect(links.length).toBeGreaterThan(50)
      expect([...links, ...users, ...cited, ...answers].filter(id => !known.has(id))).toEqual([])
    })

    it('blocks, lines and assumptions are numbered without a gap', () => {
      const numbered = workings.blocks.filter(({ kind }) => kind !== 'assume')
      const all = ran.plan.notebook.blocks.filter(({ kind }) => kind !== 'assume').map(({ name }) => name.text)
      for (const block of numbered) {
        expect(block.number).toBe(String(all.indexOf(block.name) + 1))
        const numbers = linesOf(block).map(({ number }) => number)
        const steps = [...new Set(numbers.map(number => number.replace(/[a-z]+$/, '')))]
        expect(steps).toEqual(steps.map((_, index) => `${block.number}.${String(index + 1).padStart(2, '0')}`))
        for (const step of steps) {
          const rows = numbers.filter(number => number.replace(/[a-z]+$/, '') === step)
          const lettered = rows.map((_, index) => `${step}${String.fromCharCode(97 + index)}`)
          expect(rows).toEqual(rows.length > 1 ? lettered : [step])
        }
      }
      const rows = workings.blocks.flatMap(block => (block.kind === 'assume' ? block.rows : []))
      expect(rows.map(({ number }) => number)).toEqual(rows.map((_, index) => `A${index + 1}`))
    })

    it('what uses a value is exactly what shows it: lines by their operands, rows by where they come from', () => {
      const used = new Map<string, Set<string>>()
      const note = (key: string, id: string): void => void used.set(key, (used.get(key) ?? new Set()).add(id))
      const originKey = new Map<string, string>(
        [...ran.plan.names.keys()].map(key => [`v-${key.replace('.', '-')}`, key]),
      )
      for (const block of workings.blocks) {
        if (block.kind === 'assume') continue
        for (const line of linesOf(block))
          for (const { to } of printedIn(line)) if (to) note(originKey.get(to) ?? to, line.id)
        if (block.kind === 'calc')
          for (const { to, id } of block.given) if (to && id !== `g-${to}`) note(originKey.get(to) ?? to, id)
      }
      for (const block of ran.plan.blocks) {
        if (!block || block.kind === 'assume') continue
        const second = block.kind === 'calc' ? (block.second?.lines ?? []) : []
        for (const planned of [...block.lines, ...second]) {
          const name =
            planned.kind === 'check'
              ? planned.name
              : 'gives' in planned && 'name' in planned.gives && planned.gives.name
          const printed = name && ran.line(ran.plan.notebook.blocks[block.index]?.name.text ?? '', name)
          if (!printed) continue
          for (const { key } of tablesUsedBy(planned)) note(key, printed.id)
          if (planned.kind === 'look') for (const { key } of usedBy(planned)) note(key, printed.id)
        }
      }
      const users = [...workings.users].map(([key, at]) => [key, [...new Set(at.map(({ id }) => id))].sort()] as const)
      const shown = [...used].map(([key, ids]) => [key, [...ids].sort()] as const)
      expect(Object.fromEntries(users)).toEqual(Object.fromEntries(shown))
    })
  })
}

describe('characters', () => {
  const given = (block: string, name: string, ran = sheet) => {
    const found = ran.block(block)
    return found?.kind === 'calc' ? found.given.find(row => row.name === name) : undefined
  }
  const digits = (value: unknown): string =>
    typeof value === 'object' && value && 'digits' in value && 'unit' in value
      ? `${String(value.digits)} ${(value.unit as { text: string }).text}`
      : String(value)

  it('given values: an assumption handed on prints as typed, with its row', () => {
    expect(given('heights', 'cover')).toMatchObject({
      from: 'A1',
      to: 'v-site-cover',
      value: { digits: '1.2', exact: true },
    })
    expect(digits(given('pressure', 'gamma_1')?.value)).toBe('18.5 kN/m^3')
    expect(given('pit', 'soil')).toMatchObject({ value: 'type B', from: 'A6', to: 'v-site-ground' })
  })

  it('given values: a length typed in millimetres is exact in metres', () => {
    expect(given('roof', 'short_span')?.value).toMatchObject({ digits: '3.4', exact: true })
    const typed = runText(sampleBody().replace('short_span: 3.4 m', 'short_span: 3400 mm'))
    const value = given('roof', 'short_span', typed)?.value
    expect([digits(value), typeof value === 'object' && value.exact]).toEqual(['3.4 m', true])
  })

  it('given values: a formula has a line of its own, and the row leads to it', () => {
    const row = given('roof', 'long_span')
    const line = sheet.line('roof', 'long_span')
    expect(row).toMatchObject({ id: 'g-v-roof-long_span', to: 'v-roof-long_span', from: line?.number })
    expect(shownOf(line)).toBe('4.600 m')
  })

  it('given values: a default says so and leads nowhere', () => {
    const row = given('loads', 'other_permanent')
    expect(row).toMatchObject({ taken: true, from: 'default' })
    expect(row?.to).toBeUndefined()
  })

  it('lines: a number of its own and a value handed on keep their characters', () => {
    expect(sheet.line('thrust', 'half')).toMatchObject({ result: { digits: '0.5', exact: true } })
    const origin = sheet.line('roof', 'M_y_sup')
    const handed = sheet.line('thrust', 'M_mid')
    expect(shownOf(handed)).toBe(shownOf(origin))
  })

  it('mentions: a value with its origin, in another unit, as a word, a block, a source', () => {
    const [moment, feet, see, cite, word] = sheet.workings.answers
    expect(moment).toMatchObject({ kind: 'value', printed: { to: 'v-roof-M_y_sup' } })
    expect(feet).toMatchObject({ kind: 'value', printed: { shown: { digits: '3.94' }, to: 'v-site-cover' } })
    expect(see).toMatchObject({ kind: 'see', number: '7', to: 'b-thrust' })
    expect(cite).toEqual({ kind: 'cite', key: 'statics' })
    expect(word).toMatchObject({ kind: 'word', text: 'type B', to: 'v-site-ground' })
  })

  it('assumptions: range, hold and measured value as typed', () => {
    const register = sheet.block('site')
    const rows = register?.kind === 'assume' ? register.rows : []
    expect(rows[0]).toMatchObject({
      range: { from: { digits: '1.0' }, to: { digits: '1.6' }, inside: true },
      symbol: 'h_c',
    })
    expect(rows[1]).toMatchObject({ status: 'hold', closes: 'before the raft is poured', measured: { digits: '3.1' } })
    expect(rows[1]?.users.map(({ number }) => number)).toEqual(['1', '3', '7.14'])
  })

  it('a ratio prints on the side of one that its verdict is on', () => {
    const near = (line: string) => {
      const block = runText(`\`\`\`work v\nc = 1 m\n${line}\n\`\`\`\n`).block('v')
      const check = block?.kind === 'work' ? block.lines.at(-1) : undefined
      return check?.kind === 'check'
        ? [check.ratio?.shown.digits, check.demand?.digits, check.capacity?.digits, check.satisfied]
        : []
    }
    expect(near('0.99999 m <= c')).toEqual(['1.00', '0.99999', '1', true])
    expect(near('1.00001 m <= c')).toEqual(['1.00001', '1.00001', '1', false])
    expect(near('0.5 m <= c')).toEqual(['0.500', '0.5', '1', true])
    expect(near('2 * c <= c')).toEqual(['2.00', '2.000', '1', false])
  })

  it('checks close to their limit print both sides and the ratio so that the verdict can be read off them', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: -99, max: 99 }),
        fc.constantFrom('<=', '<', '>=', '>'),
        fc.double({ min: 0.01, max: 1e4, noNaN: true }),
        (power, by, op, scale) => {
          const side = `a * (1 + ${by} * 10^(-${power}))`
          const ran = runText(
            `\`\`\`work v\na = ${digitsOf(scale, 5)} kN\n${side.replace('+ -', '- ')} ${op} a\n\`\`\`\n`,
          )
          expect(said(ran.errors)).toEqual([])
          expect(linesOf(ran.block('v')).flatMap(line => faultsOf(line))).toEqual([])
        },
      ),
      { seed: 20260120, numRuns: 300 },
    )
  })
})
