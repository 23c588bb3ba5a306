import fc from 'fast-check'
import { fence } from '../evaluation/run-text.ts'

/** A notebook of assumptions and of work blocks whose lines use what stands before them. Every value is a length. */
export interface RandomNotebook {
  readonly values: readonly { readonly name: string; readonly mm: number; readonly inMetres: boolean }[]
  readonly blocks: readonly RandomBlock[]
  /** New names of blocks to their old ones. */
  readonly renamed: Readonly<Record<string, string>>
}

interface RandomBlock {
  readonly name: string
  readonly lines: readonly RandomLine[]
}

interface RandomLine {
  readonly name: string
  /** Seeds from which what it uses is chosen, so that a line can be written whatever comes and goes before it. */
  readonly uses: readonly [number, number]
  readonly form: number
  readonly check: number | undefined
}

const forms: readonly ((a: string, b: string) => string)[] = [
  (a, b) => `${a} + ${b}`,
  (a, b) => `2 * ${a} - ${b} / 3`,
  (a, b) => `max(${a}, ${b})`,
  (a, b) => `min(${a}, 0.5 * ${b}) to mm`,
  (a, b) => `sqrt(${a}^2 + ${b}^2)`,
  a => a,
  (a, b) => `${a} * (${b} / (1 m))`,
  a => `${a} + 250 mm`,
]

const line = fc.record({
  uses: fc.tuple(fc.nat(40), fc.nat(40)),
  form: fc.nat(forms.length - 1),
  check: fc.option(fc.integer({ min: 1, max: 20 }), { nil: undefined, freq: 4 }),
})
const lines = fc.array(line, { minLength: 1, maxLength: 4 })
const value = fc.record({ mm: fc.integer({ min: 1, max: 9000 }), inMetres: fc.boolean() })

export const randomNotebook: fc.Arbitrary<RandomNotebook> = fc
  .record({
    values: fc.array(value, { minLength: 2, maxLength: 5 }),
    blocks: fc.array(lines, { minLength: 1, maxLength: 3 }),
  })
  .map(({ values, blocks }) => ({
    values: values.map((each, index) => ({ name: `a_${index}`, ...each })),
    blocks: blocks.map((some, block) => ({
      name: `part_${block}`,
      lines: some.map((each, index) => ({ name: `x_${block}_${index}`, ...each })),
    })),
    renamed: {},
  }))

/** The notebook's body. What a line uses is fixed by its names, not by its place, so that a change of one leaves the others alone. */
export function textOf({ values, blocks }: RandomNotebook): string {
  const known = values.map(({ name }) => ({ key: `site.${name}`, block: 'site', name }))
  const register = values.map(
    ({ name, mm, inMetres }) =>
      `${name}: { value: ${inMetres ? `${mm / 1000} m` : `${mm} mm`}, basis: drawing ${name} }`,
  )
  const written = blocks.map(({ name, lines: some }) => {
    const body = some.flatMap(({ name: own, uses, form, check }) => {
      const [a, b] = uses.map(seed => {
        const found = known[seed % known.length]
        return found?.block === name ? found.name : (found?.key ?? '1 m')
      })
      known.push({ key: `${name}.${own}`, block: name, name: own })
      const step = `${own} = ${forms[form]?.(a ?? '', b ?? '')}`
      return check === undefined ? [step] : [step, `${own} <= ${check} m   # ${own} fits`]
    })
    return fence(`work ${name}`, body.join('\n'))
  })
  return fence('assume site', register.join('\n')) + written.join('')
}

type Change = (notebook: RandomNotebook) => RandomNotebook

const at = <Item>(list: readonly Item[], index: number, put: (item: Item) => Item): readonly Item[] =>
  list.map((item, place) => (place === index % list.length ? put(item) : item))

const inLine =
  (block: number, index: number, put: (line: RandomLine) => RandomLine): Change =>
  notebook => ({
    ...notebook,
    blocks: at(notebook.blocks, block, own => ({ ...own, lines: at(own.lines, index, put) })),
  })

const pick = fc.tuple(fc.nat(9), fc.nat(9))

/** A change of one number, unit, formula, check, name or order; lines come and go. */
export const randomChange: fc.Arbitrary<Change> = fc.oneof(
  fc.tuple(fc.nat(9), fc.integer({ min: 1, max: 9000 })).map(
    ([index, mm]): Change =>
      notebook => ({ ...notebook, values: at(notebook.values, index, each => ({ ...each, mm })) }),
  ),
  fc.nat(9).map(
    (index): Change =>
      notebook => ({
        ...notebook,
        values: at(notebook.values, index, each => ({ ...each, inMetres: !each.inMetres })),
      }),
  ),
  fc
    .tuple(pick, fc.nat(forms.length - 1))
    .map(([[block, index], form]) => inLine(block, index, each => ({ ...each, form }))),
  fc
    .tuple(pick, fc.option(fc.integer({ min: 1, max: 20 }), { nil: undefined }))
    .map(([[block, index], check]) => inLine(block, index, each => ({ ...each, check }))),
  pick.map(
    ([block, index]): Change =>
      notebook => ({
        ...notebook,
        blocks: at(notebook.blocks, block, own => ({
          ...own,
          lines: own.lines.length > 1 ? own.lines.filter((_, place) => place !== index % own.lines.length) : own.lines,
        })),
      }),
  ),
  fc.tuple(fc.nat(9), line, fc.nat(99)).map(
    ([block, made, number]): Change =>
      notebook => ({
        ...notebook,
        blocks: at(notebook.blocks, block, own =>
          own.lines.some(({ name }) => name === `y_${number}`)
            ? own
            : { ...own, lines: [...own.lines, { ...made, name: `y_${number}` }] },
        ),
      }),
  ),
)
