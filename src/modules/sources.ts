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
  // ground
  coulomb: {
    short: 'Coulomb',
    entry:
      'Coulomb, C. A. (1776). Essai sur une application des règles de maximis et minimis à quelques problèmes de statique. Académie royale des sciences, Paris; the closed form for a plane wedge as in B. M. Das, Principles of Foundation Engineering.',
  },
  craig: { short: 'Craig', entry: "R. F. Craig. Craig's Soil Mechanics. Spon Press, London." },
  'das-foundation': {
    short: 'Das',
    entry: 'B. M. Das. Principles of Foundation Engineering. Cengage Learning, Stamford.',
  },
  'em-1110-2-2100': {
    short: 'EM 1110-2-2100',
    entry:
      'EM 1110-2-2100 (1 December 2005). Stability analysis of concrete structures. US Army Corps of Engineers, Washington.',
  },
  ingold: {
    short: 'Ingold',
    entry: 'Ingold, T. S. (1979). The effects of compaction on retaining walls. Géotechnique 29(3), 265-283.',
  },
  jaky: {
    short: 'Jaky',
    entry: 'Jaky, J. (1944). The coefficient of earth pressure at rest. Society of Hungarian Architects and Engineers.',
  },
  'mayne-kulhawy': {
    short: 'Mayne and Kulhawy',
    entry:
      'Mayne, P. W. and Kulhawy, F. H. (1982). K0-OCR relationships in soil. Journal of the Geotechnical Engineering Division, ASCE, 108(GT6), 851-872.',
  },
  'osha-1926-p': {
    short: '29 CFR 1926 P',
    entry:
      '29 CFR Part 1926, Subpart P: Excavations, with Appendix A (soil classification) and Appendix B (sloping and benching). US Department of Labor.',
  },
  rankine: {
    short: 'Rankine',
    entry:
      'Rankine, W. J. M. (1857). On the stability of loose earth. Philosophical Transactions of the Royal Society 147; the forms with cohesion and sloping ground as in B. M. Das, Principles of Foundation Engineering.',
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
