import { describe, expect, it } from 'vitest'
import { fence, runText } from '../evaluation/run-text.ts'
import { sampleBlocks, sampleBody } from '../evaluation/sample-sheet.ts'
import { compareRuns, compareTexts } from './compare-texts.ts'

const body = sampleBody()

/** The sample sheet against itself with one place written otherwise. */
function changed(from: string | RegExp, to: string) {
  const now = body.replace(from, to)
  expect(now).not.toBe(body)
  return compareTexts(body, now)
}

const nothing = { written: [], order: false, layout: [], paragraphs: { added: 0, removed: 0 } }

describe('changes: in the words of the job', () => {
  it('an assumption: old, new, by how much, and what else is said of it', () => {
    const { changes } = changed(
      'water: { value: 2.8 m, basis: standpipe BH2, status: hold, closes: before the raft is poured, measured: 3.1 m }',
      'water: { value: 2100 mm, basis: standpipe BH4, range: 1.8 m to 2.6 m }',
    )
    expect(changes).toHaveLength(1)
    expect(changes[0]).toMatchObject({
      what: 'assumption',
      action: 'changed',
      key: 'site.water',
      old: '2.8 m',
      now: '2100 mm',
    })
    expect(changes[0]?.step?.amount).toMatchObject({ digits: '-700', unit: { text: 'mm' } })
    expect(changes[0]?.step?.share).toBeCloseTo(-0.25, 12)
    expect(changes[0]?.fields).toEqual([
      { field: 'basis', old: 'standpipe BH2', now: 'standpipe BH4' },
      { field: 'status', old: 'hold', now: 'confirmed' },
      { field: 'closes', old: 'before the raft is poured', now: '' },
      { field: 'range', old: '', now: '1.8 m to 2.6 m' },
      { field: 'measured', old: '3.1 m', now: '' },
    ])
  })

  it('a temperature moves by kelvins and by no percentage', () => {
    const { changes } = changed('value: 11 degC', 'value: 14 degC')
    expect(changes[0]?.step?.amount.digits).toBe('3')
    expect(changes[0]?.step).not.toHaveProperty('share')
  })

  it('a basis alone bears on no number', () => {
    const { changes, recheck, results } = changed('basis: shear box', 'basis: vane')
    expect(changes).toMatchObject([{ key: 'site.phi_soil', bears: false, old: '32 deg', now: '32 deg' }])
    expect([recheck.differ, recheck.same, results]).toEqual([[], [], []])
  })

  it('what is changed in each kind of block, and what kind of change it is', () => {
    const cases: readonly (readonly [string, string, object])[] = [
      ['clear: 2.4 m', 'clear: 2.6 m', { what: 'input', key: 'heights.clear', old: '2.4 m', now: '2.6 m' }],
      ['corners: held down', 'corners: free', { what: 'input', key: 'roof.corners', now: 'free' }],
      ['thickness: 4.5 m', 'thickness: 5 m', { what: 'input', key: 'pressure.thickness_2', old: '4.5 m' }],
      ['surcharge: 10 kPa\n', '', { what: 'input', action: 'removed', key: 'pressure.surcharge', old: '10 kPa' }],
      ['swell: 0.25', 'swell: 0.25\nsite_length: 40 m', { what: 'input', action: 'added', key: 'pit.site_length' }],
      ['k = site.wall / 6', 'k = site.wall / 5', { what: 'formula', key: 'thrust.k', now: 'site.wall / 5' }],
      [
        'T_in <= 24 degC',
        'T_in <= 22 degC',
        { what: 'check', action: 'changed', key: 'thrust', now: 'T_in <= 22 degC' },
      ],
      ['T_in <= 24 degC\n', '', { what: 'check', action: 'removed', key: 'thrust', old: 'T_in <= 24 degC' }],
      ['2 m, 0.6;', '2 m, 0.7;', { what: 'table', key: 'thrust.drift' }],
      [
        'cover: { value: 1.2 m',
        'snow: 1 kPa\ncover: { value: 1.2 m',
        { what: 'assumption', action: 'added', key: 'site.snow' },
      ],
      [
        'calc halving-layers shield',
        'calc roof-load shield',
        { what: 'module', key: 'shield', old: 'halving-layers', now: 'roof-load' },
      ],
    ]
    for (const [from, to, change] of cases) expect(changed(from, to).changes, from).toMatchObject([change])
  })

  it('blocks that came and went', () => {
    const { changes } = compareTexts(body, body.replace(sampleBlocks.shield ?? '', fence('work extra', 'v = 1 m')))
    expect(changes.filter(({ what }) => what === 'block')).toMatchObject([
      { action: 'added', key: 'extra', now: 'work' },
      { action: 'removed', key: 'shield', old: 'calc halving-layers' },
    ])
  })

  it('the title block, and holds in the text', () => {
    const now = runText(`${body}:::hold\nThe second standpipe is to be read.\n:::\n`, { figures: 5 })
    const { changes } = compareRuns(runText(body), now)
    expect(changes).toMatchObject([
      { what: 'title', key: 'figures', old: '4', now: '5', bears: false },
      { what: 'notice', action: 'added', key: 'hold', now: 'The second standpipe is to be read.' },
    ])
  })
})

describe('changes: renamed', () => {
  it('a block is known by its content, and what refers to it has not changed', () => {
    const now = body.replace('assume site', 'assume ground').replaceAll('site.', 'ground.')
    const { changes, restated, recheck, results } = compareTexts(body, now)
    expect(changes).toMatchObject([{ what: 'block', action: 'renamed', key: 'ground', old: 'site', bears: false }])
    expect([results, restated.written, restated.layout]).toEqual([[], [], []])
    // The one line that prints a block's name: a check without a remark is said in its own words.
    expect(recheck.differ).toMatchObject([
      { kind: 'restated', says: 'interpolate(drift, ground.cover) >= 0.5 or f > 2' },
    ])
  })

  it('several at once, one of them changed as well', () => {
    const now = body
      .replace('roof-load loads', 'roof-load roof_weight')
      .replaceAll('loads.w_u', 'roof_weight.w_u')
      .replace('two-way-slab roof', 'two-way-slab slab')
      .replaceAll('roof.M_y_sup', 'slab.M_y_sup')
      .replace('short_span: 3.4 m', 'short_span: 3.6 m')
    const { changes, checks, recheck } = compareTexts(body, now)
    expect(changes.map(({ action, key }) => `${action} ${key}`)).toEqual([
      'renamed roof_weight',
      'renamed slab',
      'changed slab.short_span',
    ])
    expect(checks.filter(({ turn }) => turn === 'added' || turn === 'removed')).toEqual([])
    expect(recheck.differ.filter(({ kind }) => kind === 'added' || kind === 'removed')).toEqual([])
    expect(recheck.differ.some(({ key }) => key.startsWith('slab.'))).toBe(true)
    expect(recheck.differ.some(({ block }) => block === 'roof_weight')).toBe(false)
  })

  it('an assumption and a step: the lines print the new symbol, and nothing moved', () => {
    const now = body
      .replaceAll('site.wall', 'site.wall_thickness')
      .replace('wall: {', 'wall_thickness: {')
      .replace('e = roof', 'ecc = roof')
      .replace('e <= k', 'ecc <= k')
    const { changes, results, recheck } = compareTexts(body, now)
    expect(changes).toMatchObject([
      { action: 'renamed', key: 'site.wall_thickness', old: 'site.wall' },
      { action: 'renamed', key: 'thrust.ecc', old: 'thrust.e' },
    ])
    expect(results).toEqual([])
    expect(recheck.differ.map(({ kind, key }) => `${kind} ${key}`)).toContain('restated thrust.ecc')
    expect(recheck.differ.every(({ kind }) => kind === 'restated')).toBe(true)
  })

  it('an assumption that has another value as well, known by what uses it', () => {
    const sheet = (name: string, value: string, basis: string) =>
      fence('assume site', `${name}: { value: ${value}, basis: ${basis} }\nspan: 3 m`) +
      fence('work strip', `M = site.${name} * site.span^2 / 8\nM <= 40 kN`)
    const compared = compareTexts(sheet('load', '20 kN/m^2', 'soil'), sheet('surcharge', '30 kN/m^2', 'wet soil'))
    expect(compared.changes).toMatchObject([
      {
        action: 'changed',
        key: 'site.surcharge',
        old: '20 kN/m^2',
        now: '30 kN/m^2',
        fields: [
          { field: 'name', old: 'load', now: 'surcharge' },
          { field: 'basis', old: 'soil', now: 'wet soil' },
        ],
      },
    ])
    expect(compared.checks[0]?.moved?.parts).toHaveLength(1)
    expect(compared.recheck.unexplained).toEqual([])
  })

  it('one that went and one that came and is used otherwise are two', () => {
    const old =
      fence('assume site', 'load: 20 kN/m^2\nspan: 3 m') + fence('work strip', 'M = site.load * site.span^2 / 8')
    const now =
      fence('assume site', 'other: 30 kN/m^2\nspan: 3 m') + fence('work strip', 'M = site.other * site.span^2 / 10')
    expect(compareTexts(old, now).changes.map(({ key, action }) => [key, action])).toEqual([
      ['site.other', 'added'],
      ['site.load', 'removed'],
      ['strip.M', 'changed'],
    ])
  })

  it('a block with other content is another block', () => {
    const { changes } = compareTexts(fence('work a', 'x = 1 m\ny = 2 * x'), fence('work b', 'u = 4 kPa\nv = 3 * u'))
    expect(changes.map(({ action, key }) => `${action} ${key}`)).toEqual(['added b', 'removed a'])
  })
})

describe('changes: no change of meaning', () => {
  const same = (now: string) => {
    expect(now).not.toBe(body)
    const compared = compareTexts(body, now)
    expect(compared.changes).toEqual([])
    expect(compared.results).toEqual([])
    return compared
  }

  it('the same quantity in another unit, and the same formula in another form', () => {
    const now = body
      .replace('clear: 2.4 m', 'clear: 2400 mm')
      .replace('wall: { value: 300 mm', 'wall: { value: 0.3 m')
      .replace('site.wall / 6', '( site.wall )/6.0')
      .replace('4.2 m', '420 cm')
    const { restated, recheck } = same(now)
    expect(restated).toEqual({
      ...nothing,
      written: ['site.wall', 'heights.clear', 'pressure.wall_base', 'thrust.k'],
    })
    expect(recheck.differ.every(({ kind }) => kind === 'restated')).toBe(true)
  })

  it('the order of blocks, of inputs and of lines', () => {
    const names = Object.keys(sampleBlocks)
    expect(same(sampleBody(names.toReversed())).restated).toEqual({ ...nothing, order: true })
    expect(
      same(body.replace('cover: site.cover\ncover_required: 1.0 m', 'cover_required: 1.0 m\ncover: site.cover'))
        .restated.order,
    ).toBe(true)
  })

  it('comments, blanks and the text around the blocks', () => {
    expect(same(body.replace('roof: 350 mm\nclear', 'roof: 350 mm  # as drawn\nclear')).restated).toEqual({
      ...nothing,
      layout: ['heights'],
    })
    expect(same(`${body}One more word.\n`).restated).toEqual({ ...nothing, paragraphs: { added: 1, removed: 0 } })
    const wrapped = body.replace('The roof carries', 'The roof\ncarries')
    expect(same(wrapped).restated).toEqual(nothing)
  })
})

describe('changes: verdicts', () => {
  it('a limit that is exceeded now, and a range that is left', () => {
    const { verdicts } = changed('cover: { value: 1.2 m', 'cover: { value: 1.7 m')
    expect(verdicts).toContainEqual({
      what: 'range',
      block: 'site.cover',
      says: 'inside its plausible range',
      old: true,
      now: false,
    })
    expect(changed('basis: shear box', 'basis: vane').verdicts).toEqual([])
  })

  it('an error in the new notebook is counted, and what it stops is gone', () => {
    const { errors, recheck } = changed('k = site.wall / 6', 'k = site.wal / 6')
    expect(errors).toEqual({ old: 0, now: 1 })
    expect(recheck.differ.filter(({ kind }) => kind === 'removed').map(({ key }) => key)).toEqual([
      'thrust.k',
      'thrust',
    ])
  })
})
