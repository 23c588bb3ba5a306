import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { runText } from '../evaluation/run-text.ts'
import { sampleBlocks, sampleBody } from '../evaluation/sample-sheet.ts'
import { type Compared, compareRuns, compareTexts } from './compare-texts.ts'
import { randomChange, randomNotebook, textOf } from './random-notebook.ts'
import { type TypesetLine, typesetLines } from './typeset-lines.ts'

/**
 * Every printed line of the new notebook that is not listed as different stands in the old one to the byte, in its own block; every line
 * that is listed does not. The three counts make up the whole.
 */
function expectProved(
  { recheck, before, after }: Compared,
  renamed: Readonly<Record<string, string>> = {},
  old: readonly TypesetLine[] = typesetLines(before),
): void {
  const now = typesetLines(after, renamed)
  const listed = new Map(recheck.differ.filter(({ kind }) => kind !== 'removed').map(line => [line.number, line]))
  const gone = recheck.differ.filter(({ kind }) => kind === 'removed')
  expect(recheck.lines).toBe(now.length)
  expect(recheck.unexplained).toEqual([])
  // A line that is only written otherwise may rest on no change of meaning.
  expect(recheck.differ.filter(({ changes, kind }) => kind !== 'restated' && changes.length === 0)).toEqual([])
  expect(listed.size + recheck.same.length + recheck.cannot).toBe(now.length)
  const stands = (line: TypesetLine): boolean =>
    old.some(({ block, html }) => block === line.block && html === line.html)
  expect(now.filter(line => !listed.has(line.number) && !stands(line))).toEqual([])
  // A line without a name of its own, or one that came, may be like another of its block: a check written twice.
  const isOwn = ({ number }: TypesetLine): boolean => {
    const line = listed.get(number)
    return line !== undefined && line.kind !== 'added' && line.key !== line.block
  }
  expect(now.filter(line => isOwn(line) && stands(line))).toEqual([])
  expect(old.length - gone.length).toBe(now.length - recheck.differ.filter(({ kind }) => kind === 'added').length)
}

const put =
  (from: string | RegExp, to: string) =>
  (body: string): string =>
    body.replace(from, to)

interface Mutation {
  readonly says: string
  readonly do: (body: string) => string
  readonly renamed?: Readonly<Record<string, string>>
}

/** Changes of the sample sheet, each to a place of its own, so that any of them can be made together. */
const mutations: readonly Mutation[] = [
  { says: 'assumption', do: put('cover: { value: 1.2 m', 'cover: { value: 1.35 m') },
  { says: 'assumption that decides a branch', do: put('water: { value: 2.8 m', 'water: { value: 6 m') },
  { says: 'assumption, temperature', do: put('T_soil: { value: 11 degC', 'T_soil: { value: 14 degC') },
  { says: 'assumption, word', do: put('ground: { value: type B', 'ground: { value: type C') },
  { says: 'assumption in another unit', do: put('wall: { value: 300 mm', 'wall: { value: 0.3 m') },
  { says: 'basis', do: put('basis: shear box', 'basis: shear box and vane') },
  { says: 'symbol', do: put('symbol: h_c', 'symbol: t_c') },
  { says: 'input', do: put('clear: 2.4 m', 'clear: 2.6 m') },
  { says: 'input removed', do: put('\nwater_depth: site.water\n```', '\n```') },
  { says: 'input word', do: put('corners: held down', 'corners: free') },
  { says: 'edges', do: put('edges: two adjacent edges discontinuous', 'edges: one long edge continuous') },
  { says: 'row value', do: put('thickness: 4.5 m, gamma: 19', 'thickness: 4.7 m, gamma: 19') },
  { says: 'row label', do: put('layer: gravel', 'layer: coarse gravel') },
  {
    says: 'row added',
    do: put(
      'required_factor: 500',
      '  - { layer: screed, material: concrete, thickness: 60 mm }\nrequired_factor: 500',
    ),
  },
  {
    says: 'row put in between',
    do: put(
      '  - { layer: roof slab, thickness: 350 mm, unit_weight',
      '  - { layer: membrane, thickness: 10 mm, unit_weight: 12 kN/m^3 }\n  - { layer: roof slab, thickness: 350 mm, unit_weight',
    ),
  },
  {
    says: 'row put in before others',
    do: put(
      '  - { layer: sandy',
      '  - { layer: topsoil, thickness: 0.3 m, gamma: 16 kN/m^3, phi: 28 deg }\n  - { layer: sandy',
    ),
  },
  { says: 'row taken out', do: put(/ {2}- \{ layer: fill, [^\n]*\n/, '') },
  { says: 'input out of range', do: put('swell: 0.25', 'swell: 25') },
  { says: 'formula', do: put('k = site.wall / 6 ', 'k = site.wall / 5 ') },
  { says: 'remark', do: put('# from the wall', '# of the wall, from soil and water') },
  { says: 'check', do: put('e <= k  ', '2 * e <= k  ') },
  { says: 'check added', do: put('T_in <= 24 degC', 'T_in <= 24 degC\nT_in >= 5 degC') },
  { says: 'step removed', do: put('half = 0.5 ', 'half_2 = 0.25 ') },
  { says: 'table', do: put('2 m, 0.6; 4 m, 0.5', '2 m, 0.7; 4 m, 0.5') },
  { says: 'comment', do: put('roof: 350 mm\nclear', 'roof: 350 mm # as drawn\nclear') },
  { says: 'module', do: put(/calc halving-layers shield/, 'calc roof-load shield') },
  { says: 'prose', do: body => `${body}\nMore is said here.\n` },
  { says: 'work block renamed', do: put('work thrust', 'work wall_thrust'), renamed: { wall_thrust: 'thrust' } },
  {
    says: 'calc block renamed',
    do: body => body.replace('roof-load loads', 'roof-load roof_weight').replaceAll('loads.w_u', 'roof_weight.w_u'),
    renamed: { roof_weight: 'loads' },
  },
  {
    says: 'assume block renamed',
    do: body => body.replace('assume site', 'assume ground').replaceAll('site.', 'ground.'),
    renamed: { ground: 'site' },
  },
]

describe('what needs checking again: the sample sheet', () => {
  const before = runText(sampleBody())
  const old = typesetLines(before)

  for (const mutation of mutations)
    it(`${mutation.says}: what is not listed is equal to the byte`, () => {
      const body = mutation.do(sampleBody())
      expect(body).not.toBe(sampleBody())
      expectProved(compareRuns(before, runText(body)), mutation.renamed, old)
    })

  it('any changes together, in any order of blocks: what is not listed is equal to the byte', () => {
    const names = Object.keys(sampleBlocks)
    const some = fc.uniqueArray(fc.constantFrom(...mutations), { minLength: 1, maxLength: 5 })
    const order = fc.shuffledSubarray(names, { minLength: names.length, maxLength: names.length })
    fc.assert(
      fc.property(some, order, (chosen, blocks) => {
        const body = chosen.reduce((text, mutation) => mutation.do(text), sampleBody(blocks))
        const renamed = Object.assign({}, ...chosen.map(each => each.renamed ?? {}))
        expectProved(compareRuns(before, runText(body)), renamed, old)
      }),
      { seed: 20260302, numRuns: 20 },
    )
  })
})

describe('what needs checking again: random notebooks', () => {
  it('hundreds of random changes of random notebooks: what is not listed is equal to the byte', () => {
    fc.assert(
      fc.property(randomNotebook, fc.array(randomChange, { minLength: 1, maxLength: 4 }), (notebook, changes) => {
        const changed = changes.reduce((all, change) => change(all), notebook)
        expectProved(compareTexts(textOf(notebook), textOf(changed)), changed.renamed)
      }),
      { seed: 20260302, numRuns: 200 },
    )
  })

  it('a notebook against itself: nothing differs and nothing rests on a change', () => {
    fc.assert(
      fc.property(randomNotebook, notebook => {
        const { changes, recheck } = compareTexts(textOf(notebook), textOf(notebook))
        expect(changes).toEqual([])
        expect([recheck.differ, recheck.same, recheck.cannot]).toEqual([[], [], recheck.lines])
      }),
      { seed: 20260302, numRuns: 30 },
    )
  })
})
