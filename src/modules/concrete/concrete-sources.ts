import type { Source } from '../source.ts'

/** Sources that only the concrete wing cites. */
export const concreteSources = {
  'is-456': {
    short: 'IS 456',
    entry:
      'IS 456:2000. Plain and reinforced concrete: code of practice (fourth revision). Bureau of Indian Standards, New Delhi.',
  },
  'en-1990': { short: 'EN 1990', entry: 'EN 1990:2002. Eurocode: Basis of structural design. CEN, Brussels.' },
  'aci-318': {
    short: 'ACI 318',
    entry:
      'ACI 318-19. Building code requirements for structural concrete. American Concrete Institute, Farmington Hills.',
  },
  'en-1991-1-1': {
    short: 'EN 1991-1-1',
    entry:
      'EN 1991-1-1:2002. Eurocode 1: Actions on structures, part 1-1: densities, self-weight, imposed loads for buildings. CEN, Brussels.',
  },
  'aci-347': {
    short: 'ACI 347R',
    entry:
      'ACI 347R-14. Guide to formwork for concrete. American Concrete Institute, Farmington Hills. From memory, with the scope and the minimum loads read in reprints.',
  },
  'astm-a615': {
    short: 'ASTM A615',
    entry:
      'ASTM A615/A615M. Deformed and plain carbon-steel bars for concrete reinforcement. ASTM International, West Conshohocken.',
  },
  'bs-4449': {
    short: 'BS 4449',
    entry: 'BS 4449:2005. Steel for the reinforcement of concrete: weldable reinforcing steel. BSI, London.',
  },
  'bs-8666': {
    short: 'BS 8666',
    entry:
      'BS 8666:2005. Scheduling, dimensioning, bending and cutting of steel reinforcement for concrete. BSI, London. Read in reprints of its tables.',
  },
  'ciria-108': {
    short: 'CIRIA 108',
    entry:
      'Clear, C. A. and Harrison, T. A. (1985). Concrete pressure on formwork. CIRIA Report 108, Construction Industry Research and Information Association, London.',
  },
  'aci-318-63': {
    short: 'ACI 318-63',
    entry:
      'ACI 318-63. Building code requirements for reinforced concrete, appendix A, Method 3. American Concrete Institute, Detroit. Its tables as reprinted in A. H. Nilson and others, Design of Concrete Structures, 12th ed., McGraw-Hill.',
  },
  'en-1992-1-1': {
    short: 'EN 1992-1-1',
    entry:
      'EN 1992-1-1:2004. Eurocode 2: Design of concrete structures, part 1-1: general rules and rules for buildings. CEN, Brussels. Recommended values.',
  },
  hognestad: {
    short: 'Hognestad',
    entry:
      'Hognestad, E. (1951). A study of combined bending and axial load in reinforced concrete members. University of Illinois, Engineering Experiment Station, Bulletin 399. From memory.',
  },
  johansen: {
    short: 'Johansen',
    entry: 'Johansen, K. W. (1962). Yield-line theory. Cement and Concrete Association, London.',
  },
  'sp-24': {
    short: 'SP 24',
    entry:
      'SP 24:1983. Explanatory handbook on IS 456. Bureau of Indian Standards, New Delhi. Its formulas as printed in public design sheets.',
  },
  'wall-tables': {
    short: 'wall tables',
    entry:
      'Moment coefficients of rectangular walls as elastic plates, computed apart from this program for the edge conditions of the tables of the Portland Cement Association (Rectangular concrete tanks) and of IS 3370 (Part 4):1967.',
  },
} as const satisfies Record<string, Source>
