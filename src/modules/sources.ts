/** A source that a step, table or limit cites. */
export interface Source {
  /** The short form at a step's margin: `IS 456`. */
  readonly short: string
  /** The full entry of the reference list. */
  readonly entry: string
}

/** Every cited source, once. Keys are what `:cite[...]` takes. */
export const sources = {
  'is-456': {
    short: 'IS 456',
    entry:
      'IS 456:2000. Plain and reinforced concrete: code of practice (fourth revision). Bureau of Indian Standards, New Delhi.',
  },
  'en-1997-1': {
    short: 'EN 1997-1',
    entry: 'EN 1997-1:2004. Eurocode 7: Geotechnical design, part 1: general rules. CEN, Brussels.',
  },
  'en-1990': { short: 'EN 1990', entry: 'EN 1990:2002. Eurocode: Basis of structural design. CEN, Brussels.' },
  'aci-318': {
    short: 'ACI 318',
    entry:
      'ACI 318-19. Building code requirements for structural concrete. American Concrete Institute, Farmington Hills.',
  },
  statics: { short: 'statics', entry: 'Equilibrium and geometry; no source is needed beyond the line itself.' },
  practice: {
    short: 'common practice',
    entry: 'Common practice, without a published source that we could name; the reviewer judges it.',
  },
} as const satisfies Record<string, Source>

export type SourceKey = keyof typeof sources

/** A place in a source: clause, table, equation. */
export interface Citation {
  readonly key: SourceKey
  readonly at: string
}

/** A citation of a known source. */
export const cite = (key: SourceKey, at = ''): Citation => ({ key, at })
