import katex from 'katex'
import { describe, expect, it } from 'vitest'
import { calcNotebook } from '../../src/evaluation/calc-notebook.ts'
import { namesOf } from '../../src/evaluation/given-names.ts'
import { ownLiteral } from '../../src/evaluation/literal.ts'
import { plan } from '../../src/evaluation/plan.ts'
import type { Plan, PlannedCalc } from '../../src/evaluation/plan-types.ts'
import type { Line, Substitution } from '../../src/evaluation/workings.ts'
import { nameFault } from '../../src/formula/names.ts'
import { readFormula } from '../../src/formula/read-formula.ts'
import { readSymbol, symbolTex } from '../../src/formula/symbol.ts'
import { texShown } from '../../src/formula/tex.ts'
import { catalogue, modulesByWing, wingOrder } from '../../src/modules/catalogue.ts'
import { ledger } from '../../src/modules/ledger.ts'
import type { Input, ListInput, Module, QuantityInput, Step } from '../../src/modules/module.ts'
import { type SourceKey, sources } from '../../src/modules/sources.ts'
import { dimensionByName } from '../../src/quantity/dimension-names.ts'
import type { System } from '../../src/quantity/types.ts'
import { unitOf } from '../../src/quantity/unit.ts'
import { numbersOf, symbolsOf } from '../../src/typesetting/substitution-tex.ts'
import { calcText } from '../evaluation/module-text.ts'
import { linesOf, runText, said } from '../evaluation/run-text.ts'
import { drawingOf, pointsOf } from './drawing-of.ts'
import { inputSets, longestInputs } from './input-sets.ts'

const systems: readonly System[] = ['SI', 'US']

/** Every plan of a module: each combination of choices and optional inputs, in one system; those of the last module are kept. */
let kept: { readonly id: string; readonly plans: Map<System, readonly Plan[]> } = { id: '', plans: new Map() }
function plansOf(module: Module, system: System): readonly Plan[] {
  if (kept.id !== module.id) kept = { id: module.id, plans: new Map() }
  const plans =
    kept.plans.get(system) ?? inputSets(module).map(inputs => plan(calcNotebook(module, inputs, system), [module]))
  kept.plans.set(system, plans)
  return plans
}

const allSteps = (steps: readonly Step[]): readonly Step[] =>
  steps.flatMap(step => {
    if (step.kind === 'each' || step.kind === 'pairs') return [step, ...allSteps(step.steps)]
    return step.kind === 'when' ? [step, ...allSteps([...step.yes, ...step.no])] : [step]
  })

const stepsOf = (module: Module): readonly Step[] => allSteps([...module.steps, ...(module.second?.steps ?? [])])

const fieldsOf = (module: Module): readonly (readonly [string, Exclude<Input, ListInput>])[] =>
  Object.values(module.inputs).flatMap(input => (input.kind === 'list' ? Object.entries(input.fields) : []))

const quantitiesOf = (module: Module): readonly (readonly [string, QuantityInput])[] =>
  [...Object.entries(module.inputs), ...fieldsOf(module)].flatMap(([name, input]) =>
    input.kind === 'quantity' ? [[name, input] as const] : [],
  )

const setTex = (tex: string): string => katex.renderToString(tex, { strict: 'error', throwOnError: true, trust: true })

describe('the catalogue', () => {
  it('has each id once, in small letters with hyphens', () => {
    const ids = catalogue.map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
    for (const id of ids) expect(id).toMatch(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/)
  })

  it('lists each module in a wing for which it answers something', () => {
    for (const wing of wingOrder)
      for (const { id, title, covers = [] } of modulesByWing[wing])
        if (!title.endsWith('for information'))
          expect(
            covers.map(covered => ledger[typeof covered === 'string' ? covered : covered.line].wing),
            id,
          ).toContain(wing)
  })
})

for (const module of catalogue) {
  describe(module.id, () => {
    for (const system of systems) {
      it(`plans every combination of choices and optional inputs in ${system} units: each branch is proved`, () => {
        const plans = plansOf(module, system)
        expect(plans.length).toBeGreaterThan(0)
        for (const made of plans) {
          expect(said(made.diagnostics.filter(({ severity }) => severity === 'error'))).toEqual([])
          expect(made.blocks[0]?.kind).toBe('calc')
        }
      })
    }

    it('plans with as many rows as its lists take: no row has the name of another value', () => {
      const made = plan(calcNotebook(module, longestInputs(module), 'SI'), [module])
      expect(said(made.diagnostics.filter(({ severity }) => severity === 'error'))).toEqual([])
    })

    it('uses in some combination every result, limit, caution, comparison and method it speaks of', () => {
      const plans = plansOf(module, 'SI')
      const blocks = plans.map(made => made.blocks[0] as PlannedCalc)
      const never = <T>(what: readonly T[], used: (block: PlannedCalc, index: number) => readonly T[]): T[] => {
        const seen = new Set(blocks.flatMap(used))
        return what.filter(each => !seen.has(each))
      }
      expect(
        never(module.results, (_, index) => [...(plans[index]?.names.keys() ?? [])].map(key => key.replace('it.', ''))),
      ).toEqual([])
      expect(never(module.limits, ({ limits }) => limits.map(({ limit }) => limit))).toEqual([])
      const { limits = [], compare = [] } = module.second ?? {}
      expect(never(limits, ({ second }) => second?.limits.map(({ limit }) => limit) ?? [])).toEqual([])
      expect(never(compare, ({ second }) => second?.comparisons.map(each => each.compare) ?? [])).toEqual([])
      expect(module.results.length).toBeGreaterThan(0)
      expect(new Set(module.results).size).toBe(module.results.length)
    })

    it('names what it answers of the ledger, and only values it has for drawings and schedules', () => {
      // What is for information alone answers no line of the ledger, and checks nothing either.
      if (module.title.endsWith('for information')) {
        expect(module.covers).toBeUndefined()
        expect(stepsOf(module).some(({ kind }) => kind === 'check')).toBe(false)
      } else expect(module.covers?.length ?? 0).toBeGreaterThan(0)
      const { plain, rows } = namesOf([...module.steps, ...(module.second?.steps ?? [])])
      const values = [...Object.keys(module.inputs), ...plain]
      expect((module.drawing ?? []).filter(name => !values.includes(name))).toEqual([])
      const { schedule } = module
      if (schedule === undefined) return
      if ('lines' in schedule) expect(schedule.lines.filter(name => !values.includes(name))).toEqual([])
      else {
        const list = module.inputs[schedule.list]
        const known = [...(list?.kind === 'list' ? Object.keys(list.fields) : []), ...rows]
        expect(schedule.columns.filter(name => !known.includes(name))).toEqual([])
      }
    })

    it('has names that formulas can use, written alike', () => {
      const { plain, rows } = namesOf([...module.steps, ...(module.second?.steps ?? [])])
      const checks = stepsOf(module).flatMap(step => (step.kind === 'check' ? [step.name] : []))
      const names = [
        ...Object.keys(module.inputs),
        ...fieldsOf(module).map(([name]) => name),
        ...plain,
        ...rows,
        ...checks,
      ]
      for (const name of names) {
        expect(nameFault(name), name).toBeUndefined()
        expect(name, 'words joined by `_`').toMatch(/^[A-Za-z][A-Za-z0-9]*(_[A-Za-z0-9]+)*$/)
        expect(name, 'no capitals inside a word').not.toMatch(/[a-z]{2}[A-Z]/)
      }
      for (const name of [...Object.keys(module.inputs), ...fieldsOf(module).map(([field]) => field)])
        expect(name, 'inputs begin small, save one that is a symbol').toMatch(/^([a-z]|[A-Z]+(_|$))/)
    })

    it('has no name with two meanings, a row with its number included', () => {
      const { plain, rows } = namesOf([...module.steps, ...(module.second?.steps ?? [])])
      const fields = fieldsOf(module).map(([name]) => name)
      const inputs = Object.keys(module.inputs)
      const all = [...inputs, ...fields, ...plain, ...rows]
      expect(all.filter((name, index) => all.indexOf(name) !== index)).toEqual([])
      const perRow = new Set([...fields, ...rows])
      const clash = [...inputs, ...plain].filter(name => perRow.has(name.replace(/_\d+$/, '')) && /_\d+$/.test(name))
      expect(clash).toEqual([])
      const checks = stepsOf(module).flatMap(step => (step.kind === 'check' ? [step.name] : []))
      expect(checks.filter(name => all.includes(name))).toEqual([])
    })

    it('shows each quantity in units of its dimension, with ranges and defaults of it, in the right order', () => {
      for (const [name, input] of quantitiesOf(module)) {
        const dimension = dimensionByName(input.dimension)
        expect(dimension, name).toBeDefined()
        for (const system of systems)
          if (input.unit) expect(unitOf(input.unit[system]).dimension, `${name} in ${system}`).toBe(dimension)
        const { above, below, least, most, usual } = input
        for (const bound of [above, below, least, most, ...(usual ?? [])])
          if (bound !== undefined) expect(ownLiteral(bound).dimension, `${name}: ${bound}`).toBe(dimension)
        const si = (text: string | undefined, otherwise: number): number =>
          text === undefined ? otherwise : ownLiteral(text).si
        const low = Math.max(si(above, Number.NEGATIVE_INFINITY), si(least, Number.NEGATIVE_INFINITY))
        const high = Math.min(si(below, Number.POSITIVE_INFINITY), si(most, Number.POSITIVE_INFINITY))
        expect(low, name).toBeLessThan(high)
        if (usual) {
          const [from, to] = usual.map(text => ownLiteral(text).si) as [number, number]
          expect([low <= from, from < to, to <= high], `${name}: usual`).toEqual([true, true, true])
        }
        if (input.default !== undefined) {
          const literal = ownLiteral(input.default)
          expect(literal.dimension, `${name}: default`).toBe(dimension)
          expect([low <= literal.si, literal.si <= high], `${name}: default`).toEqual([true, true])
        }
        expect(input.default !== undefined && input.optional === true, `${name}: default and optional`).toBe(false)
      }
      for (const [name, input] of [...Object.entries(module.inputs), ...fieldsOf(module)])
        if (input.kind === 'choice' && input.default !== undefined)
          expect(Object.keys(input.words), name).toContain(input.default)
    })

    it('takes at least one row where it takes rows', () => {
      for (const [name, input] of Object.entries(module.inputs))
        if (input.kind === 'list') expect(1 <= input.least && input.least <= input.most, name).toBe(true)
    })

    it('cites sources that are listed', () => {
      const cited = [
        ...stepsOf(module).flatMap(step => ('source' in step && step.source ? [step.source.key] : [])),
        ...stepsOf(module).flatMap(step => (step.kind === 'look' ? [step.table.source.key] : [])),
        ...module.limits.flatMap(({ source }) => source?.key ?? []),
        ...quantitiesOf(module).flatMap(([, { source }]) => source?.key ?? []),
      ]
      expect(cited.length).toBeGreaterThan(0)
      for (const key of cited) expect(sources[key as SourceKey], key).toBeDefined()
    })

    it('names real inputs in limits, conditions and cautions', () => {
      const inputs = new Set([...Object.keys(module.inputs), ...fieldsOf(module).map(([name]) => name)])
      for (const { on, each, says } of module.limits) {
        const list = each === undefined ? undefined : module.inputs[each]
        if (each !== undefined) expect(list?.kind, says).toBe('list')
        const named = list?.kind === 'list' ? list.fields : module.inputs
        if (on !== undefined) expect(Object.keys(named), says).toContain(on)
      }
      const conditions = [
        ...module.limits.flatMap(({ holds, when }) => [holds, ...(when ? [when] : [])]),
        ...module.cautions.flatMap(caution => (typeof caution === 'string' ? [] : [caution.when])),
        ...stepsOf(module).flatMap(step => (step.kind === 'when' ? [step.condition] : [])),
        ...(module.second?.when ? [module.second.when.condition] : []),
        ...(module.second?.compare.flatMap(({ when }) => when ?? []) ?? []),
      ]
      for (const condition of conditions) {
        if ('given' in condition) expect(inputs, condition.given).toContain(condition.given)
        else if ('choice' in condition) {
          const input = module.inputs[condition.choice] ?? new Map(fieldsOf(module)).get(condition.choice)
          const words = input?.kind === 'choice' ? Object.keys(input.words) : []
          for (const word of condition.is) expect(words, condition.choice).toContain(word)
        } else expect(readFormula(condition.formula).ok, condition.formula).toBe(true)
      }
    })

    it('speaks in sentences without a final stop where they are labels, and has a version', () => {
      expect(module.version).toMatch(/^\d+\.\d+\.\d+$/)
      expect(module.asks).toMatch(/^[A-Z].*\?$/)
      expect(module.title).toMatch(/^[A-Z].*[^.]$/)
      const labels = [
        ...stepsOf(module).flatMap(step => ('says' in step && step.says !== undefined ? [step.says] : [])),
        ...Object.values(module.inputs).map(({ says }) => says),
        ...fieldsOf(module).map(([, { says }]) => says),
        ...module.limits.map(({ says }) => says),
      ]
      for (const label of labels) expect(label).toMatch(/\S.*[^.\s]$/)
    })

    it('has no choice word that is a whole number: an object would put it before the others, out of step with its table', () => {
      const words = Object.values(module.inputs).flatMap(input => {
        const inputs = input.kind === 'list' ? Object.values(input.fields) : [input]
        return inputs.flatMap(each => (each.kind === 'choice' ? Object.keys(each.words) : []))
      })
      expect(words.filter(word => /^\d+$/.test(word))).toEqual([])
    })

    it('has captions that fit their column and are words, not formulas', () => {
      const given = stepsOf(module).flatMap(step => (step.kind === 'solve' ? Object.values(step.gives) : []))
      const captions = [
        ...stepsOf(module).flatMap(step => ('says' in step && step.says !== undefined ? [step.says] : [])),
        ...given.map(({ says }) => says),
        ...Object.values(module.inputs).map(({ says }) => says),
        ...fieldsOf(module).map(([, { says }]) => says),
        ...module.limits.map(({ says }) => says),
      ]
      for (const caption of captions) {
        expect(caption.length, caption).toBeLessThanOrEqual(70)
        expect(caption, 'no formula').not.toMatch(/[_^=*`]|sqrt/)
      }
      for (const { says } of module.limits) expect(says, 'one clause: the rest is advice').not.toMatch(/[;:]/)
      for (const { says } of module.second?.compare ?? []) expect(says.length, says).toBeLessThanOrEqual(100)
    })

    it('prints symbols, not names: no letter of a formula is a word', () => {
      const symbolOf = (about: { readonly symbol?: string }, name: string) => readSymbol(about.symbol ?? name)
      const symbols = [
        ...quantitiesOf(module).map(([name, input]) => symbolOf(input, name)),
        ...stepsOf(module).flatMap(step => {
          if (step.kind === 'solve') return Object.values(step.gives).map(given => symbolOf(given, given.name))
          return 'name' in step && step.kind !== 'check' ? [symbolOf(step, step.name)] : []
        }),
      ]
      const trade = ['OCR', 'RL', 'Re']
      expect(
        symbols.flatMap(({ head, compound }) =>
          head.width > 1 && !compound && !trade.includes(head.spoken) ? [head.spoken] : [],
        ),
      ).toEqual([])
    })

    for (const system of systems) {
      it(`its example evaluates in ${system} units without an error, and KaTeX sets every line in strict mode`, () => {
        const ran = runText(calcText(module.id, 'it', module.example), { units: system })
        expect(said(ran.errors)).toEqual([])
        expect(ran.block('it')?.complete).toBe(true)
        for (const name of module.results)
          if (ran.plan.names.has(`it.${name}`) && ran.results.absent.size === 0)
            expect(ran.si(`it.${name}`), name).not.toBeNaN()
        const lines = linesOf(ran.block('it'))
        expect(lines.length).toBeGreaterThan(0)
        for (const tex of lines.flatMap(texOf)) expect(() => setTex(tex), tex).not.toThrow()
      })
    }

    it('draws, where it draws, shapes with finite coordinates and words for those who cannot see them', () => {
      if (!module.sketch) return
      for (const units of systems) {
        const drawing = drawingOf(module, module.example, { units })
        expect(drawing.shapes.length).toBeGreaterThan(0)
        for (const shape of drawing.shapes) {
          for (const [x, y] of pointsOf(shape)) expect([x, y].every(Number.isFinite), JSON.stringify(shape)).toBe(true)
          if (shape.kind === 'load')
            expect([shape.start, shape.end, ...shape.towards].every(Number.isFinite)).toBe(true)
        }
        expect(drawing.says).toMatch(/^[A-Z].*\.$/s)
        expect(drawing.says).not.toMatch(/NaN|undefined|Infinity|\$\{/)
      }
    })

    it('is steady: its example names inputs it has, and every published case is evaluated by name', () => {
      const known = Object.keys(module.inputs)
      for (const inputs of [module.example, ...module.published.map(each => each.inputs)])
        expect(Object.keys(inputs).filter(name => !known.includes(name))).toEqual([])
    })
  })
}

/** The TeX of every formula of a line: in symbols, with numbers, and the result. */
function texOf(line: Line): string[] {
  const both = (working: Substitution | undefined): string[] =>
    working ? [symbolsOf(working).tex, numbersOf(working).tex] : []
  switch (line.kind) {
    case 'formula':
      return [symbolTex(line.symbol), ...both(line.working), texShown(line.result)]
    case 'look':
      return [
        symbolTex(line.symbol),
        ...line.interpolations.flatMap(({ working }) => both(working)),
        texShown(line.result),
      ]
    case 'branch':
      return both(line.working)
    case 'check':
      return [...both(line.working), ...[line.demand, line.capacity].flatMap(side => (side ? [texShown(side)] : []))]
    case 'solve':
      return line.gives.flatMap(({ printed }) => [symbolTex(printed.symbol), texShown(printed.shown)])
  }
}
