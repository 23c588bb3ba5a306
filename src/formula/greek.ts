const letters = [
  ['alpha', 'α', 'Α'],
  ['beta', 'β', 'Β'],
  ['gamma', 'γ', 'Γ'],
  ['delta', 'δ', 'Δ'],
  ['epsilon', 'ε', 'Ε'],
  ['zeta', 'ζ', 'Ζ'],
  ['eta', 'η', 'Η'],
  ['theta', 'θ', 'Θ'],
  ['iota', 'ι', 'Ι'],
  ['kappa', 'κ', 'Κ'],
  ['lambda', 'λ', 'Λ'],
  ['mu', 'μ', 'Μ'],
  ['nu', 'ν', 'Ν'],
  ['xi', 'ξ', 'Ξ'],
  ['omicron', 'ο', 'Ο'],
  ['pi', 'π', 'Π'],
  ['rho', 'ρ', 'Ρ'],
  ['sigma', 'σ', 'Σ'],
  ['tau', 'τ', 'Τ'],
  ['upsilon', 'υ', 'Υ'],
  ['phi', 'φ', 'Φ'],
  ['chi', 'χ', 'Χ'],
  ['psi', 'ψ', 'Ψ'],
  ['omega', 'ω', 'Ω'],
] as const

/** Capitals that have a shape of their own; the others are printed as Latin capitals. */
const ownCapitals: ReadonlySet<string> = new Set([
  'gamma',
  'delta',
  'theta',
  'lambda',
  'xi',
  'pi',
  'sigma',
  'upsilon',
  'phi',
  'psi',
  'omega',
])

/** phi and epsilon are set as the round forms that engineering texts use. */
const round: Readonly<Record<string, string>> = { phi: 'varphi', epsilon: 'varepsilon' }

const capital = (word: string): string => `${word.slice(0, 1).toUpperCase()}${word.slice(1)}`

const wordOf = new Map<string, string>([
  ...letters.flatMap(([word, small, large]) => [[small, word] as const, [large, capital(word)] as const]),
  ['ϕ', 'phi'],
  ['ϵ', 'epsilon'],
  ['ϑ', 'theta'],
  ['ς', 'sigma'],
])

const texOf = new Map<string, string>(
  letters.flatMap(([word, , large]) => [
    [word, `\\${round[word] ?? word}`] as const,
    [capital(word), ownCapitals.has(word) ? `\\${capital(word)}` : `\\mathrm{${latin(word, large)}}`] as const,
  ]),
)

function latin(word: string, large: string): string {
  const likeness: Readonly<Record<string, string>> = { eta: 'H', nu: 'N', rho: 'P', chi: 'X' }
  return likeness[word] ?? (/[A-Za-z]/.test(word) ? word.slice(0, 1).toUpperCase() : large)
}

/** The word of a Greek letter: `γ` and `gamma` are `gamma`, `Δ` is `Delta`. Undefined for anything else. */
export const greekWord = (text: string): string | undefined => wordOf.get(text) ?? (texOf.has(text) ? text : undefined)

/** TeX of the Greek letter of this word. Undefined for anything else. */
export const greekTex = (word: string): string | undefined => texOf.get(word)
