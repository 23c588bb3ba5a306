import { greekWord } from '../../src/formula/greek.ts'
import { readSymbol, type SymbolPart, symbolTex } from '../../src/formula/symbol.ts'
import { wingOrder } from '../../src/modules/catalogue.ts'
import { type Wing, wings } from '../../src/modules/ledger.ts'
import { nomenclature } from '../../src/modules/nomenclature.ts'
import type { System } from '../../src/quantity/types.ts'
import { modulesOf, symbolsOfWing, type WingSymbol } from '../modules/nomenclature-of.ts'

const greek = [...'αβγδεζηθικλμνξοπρστυφχψωΑΒΓΔΕΖΗΘΙΚΛΜΝΞΟΠΡΣΤΥΦΧΨΩ']
const letters = new Map(greek.map(letter => [greekWord(letter) ?? letter, letter]))

const spoken = ({ spoken }: SymbolPart): string =>
  spoken
    .split(' ')
    .map(word => letters.get(word) ?? word)
    .join(' ')

/** A symbol as Markdown can show it: `γ<sub>sat</sub>′`. */
export function symbolMarkdown(symbol: string): string {
  const { head, compound, below, primes } = readSymbol(symbol)
  const index = below.length > 0 ? `<sub>${below.map(spoken).join(',')}</sub>` : ''
  return `${compound ? spoken(head).replace(' ', '') : spoken(head)}${index}${'′'.repeat(primes)}`
}

/** Latin letters before Greek ones, each letter's capital first, then by what stands below. */
function inOrder(a: WingSymbol, b: WingSymbol): number {
  const [one, other] = [a, b].map(({ symbol }) => {
    const { head, below, primes } = readSymbol(symbol)
    const isGreek = letters.has(head.spoken.split(' ')[0] ?? '')
    const index = below.map(part => part.spoken).join(' ')
    return [isGreek ? '1' : '0', head.spoken.toLowerCase(), head.spoken, index.toLowerCase(), index, `${primes}`]
  }) as [string[], string[]]
  const at = one.findIndex((part, index) => part !== other[index])
  return at < 0 ? 0 : (one[at] ?? '') < (other[at] ?? '') ? -1 : 1
}

function wingTable(wing: Wing): string {
  const meanings = new Map(Object.entries(nomenclature[wing]).map(([key, meaning]) => [symbolTex(key), meaning]))
  const rows = [...symbolsOfWing(wing)]
    .sort(([, a], [, b]) => inOrder(a, b))
    .map(([tex, found]) => {
      const units = (system: System): string =>
        [...new Set(found.uses.flatMap(use => [...use.units[system]]))].join(', ') || '–'
      const links = modulesOf(found).map(id => `[${id}](modules/${id}.md)`)
      const meaning = meanings.get(tex) ?? found.uses[0]?.says ?? ''
      return `| ${symbolMarkdown(found.symbol)} | ${meaning} | ${units('SI')} | ${units('US')} | ${links.join(', ')} |`
    })
  return [
    `## ${wings[wing]}`,
    '',
    ...rules(wing),
    '| symbol | meaning | SI | US | modules |',
    '| --- | --- | --- | --- | --- |',
    ...rows,
  ].join('\n')
}

/** What the trade writes with primes and without, where a wing has such a rule. */
const rules = (wing: Wing): readonly string[] =>
  wing === 'ground'
    ? [
        'A prime marks what is effective: φ′ and c′ are strengths for effective stress, σ′ and q′ stresses less the water. Undrained',
        'strength, in total stress, has no prime: c with an index, and no angle of friction goes with it. q without an index is a load.',
        '',
      ]
    : []

/** Every symbol that a module prints, a table a wing. */
export const nomenclaturePage = (): string => `# Nomenclature

Every symbol of the working, a table for each wing of the [modules](modules/README.md). Within a wing a symbol has one meaning and one
dimension, and what modules ask for by one name or in the same words has one symbol; a row of a list adds its number. A dash stands for a plain number.

Generated from the code: \`UPDATE_DOCS=1 npx vitest run test/docs\` writes this page, and a test fails where it parts from it. Where modules
say one quantity in several ways, its meaning stands once, in the \`nomenclature.ts\` of the wing.

${wingOrder.map(wingTable).join('\n\n')}
`
