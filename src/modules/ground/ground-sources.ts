import type { Source } from '../source.ts'

/** Sources that only the ground wing cites. */
export const groundSources = {
  'en-1997-1': {
    short: 'EN 1997-1',
    entry: 'EN 1997-1:2004. Eurocode 7: Geotechnical design, part 1: general rules. CEN, Brussels.',
  },
  coulomb: {
    short: 'Coulomb',
    entry:
      'Coulomb, C. A. (1776). Essai sur une application des règles de maximis et minimis à quelques problèmes de statique. Académie royale des sciences, Paris; the closed form for a plane wedge as in B. M. Das, Principles of Foundation Engineering.',
  },
  'newmark-1935': {
    short: 'Newmark',
    entry:
      'Newmark, N. M. (1935). Simplified computation of vertical pressures in elastic foundations. University of Illinois Engineering Experiment Station, Circular 24 (from memory; in the form with one arctangent, which is the same).',
  },
  boussinesq: {
    short: 'Boussinesq',
    entry:
      "Boussinesq, J. (1885). Application des potentiels à l'étude de l'équilibre et du mouvement des solides élastiques. Gauthier-Villars, Paris; the equation read in reprints.",
  },
  'bjerrum-eide': {
    short: 'Bjerrum and Eide',
    entry:
      'Bjerrum, L. and Eide, O. (1956). Stability of strutted excavations in clay. Géotechnique 6(1), 32-47 (from memory).',
  },
  'peck-1969': {
    short: 'Peck',
    entry:
      'Peck, R. B. (1969). Deep excavations and tunneling in soft ground. 7th International Conference on Soil Mechanics, Mexico, state of the art volume, 225-290 (from memory).',
  },
  'fhwa-gec-4': {
    short: 'FHWA GEC 4',
    entry:
      'Sabatini, P. J., Pass, D. G. and Bachus, R. C. (1999). Ground anchors and anchored systems. Geotechnical Engineering Circular 4, FHWA-IF-99-015: loads of supports by tributary area and by hinges (from memory).',
  },
  'dupuit-thiem': {
    short: 'Dupuit and Thiem',
    entry:
      'Dupuit, J. (1863). Études théoriques et pratiques sur le mouvement des eaux. Dunod, Paris; Thiem, G. (1906). Hydrologische Methoden. Gebhardt, Leipzig; the pit as one equivalent well as in texts on groundwater lowering (from memory).',
  },
  sichardt: {
    short: 'Sichardt',
    entry:
      'Kyrieleis, W. and Sichardt, W. (1930). Grundwasserabsenkung bei Fundierungsarbeiten. Springer, Berlin: the empirical radius of influence, in metres and metres per second (from memory).',
  },
  'tm-5-818-5': {
    short: 'TM 5-818-5',
    entry:
      'TM 5-818-5 (1983). Dewatering and groundwater control. US Departments of the Army, the Air Force and the Navy, Washington. Paragraph 4-1 read in a reprint.',
  },
  'das-foundation': {
    short: 'Das',
    entry: 'B. M. Das. Principles of Foundation Engineering. Cengage Learning, Stamford.',
  },
  'em-1110-2-2100': {
    short: 'EM 1110-2-2100',
    entry:
      'EM 1110-2-2100 (1 December 2005). Stability analysis of concrete structures. US Army Corps of Engineers, Washington.',
  },
  'hansen-1970': {
    short: 'Hansen',
    entry:
      'Hansen, J. B. (1970). A revised and extended formula for bearing capacity. Danish Geotechnical Institute, Bulletin 28, Copenhagen.',
  },
  ingold: {
    short: 'Ingold',
    entry: 'Ingold, T. S. (1979). The effects of compaction on retaining walls. Géotechnique 29(3), 265-283.',
  },
  jaky: {
    short: 'Jaky',
    entry: 'Jaky, J. (1944). The coefficient of earth pressure at rest. Society of Hungarian Architects and Engineers.',
  },
  kumbhojkar: {
    short: 'Kumbhojkar',
    entry:
      'Kumbhojkar, A. S. (1993). Numerical evaluation of Terzaghi’s N-gamma. Journal of Geotechnical Engineering, ASCE, 119(3), 598-607; the factors as reprinted in B. M. Das, Principles of Foundation Engineering.',
  },
  'mayne-kulhawy': {
    short: 'Mayne and Kulhawy',
    entry:
      'Mayne, P. W. and Kulhawy, F. H. (1982). K0-OCR relationships in soil. Journal of the Geotechnical Engineering Division, ASCE, 108(GT6), 851-872.',
  },
  'meyerhof-1953': {
    short: 'Meyerhof 1953',
    entry:
      'Meyerhof, G. G. (1953). The bearing capacity of foundations under eccentric and inclined loads. Proceedings of the 3rd International Conference on Soil Mechanics, Zürich, vol. 1, 440-445.',
  },
  'meyerhof-1963': {
    short: 'Meyerhof 1963',
    entry:
      'Meyerhof, G. G. (1963). Some recent research on the bearing capacity of foundations. Canadian Geotechnical Journal 1(1), 16-26.',
  },
  'osha-1926-p': {
    short: '29 CFR 1926 P',
    entry:
      '29 CFR Part 1926, Subpart P: Excavations, with Appendix A (soil classification) and Appendix B (sloping and benching). US Department of Labor.',
  },
  prandtl: {
    short: 'Prandtl and Reissner',
    entry:
      'Prandtl, L. (1921). Über die Eindringungsfestigkeit plastischer Baustoffe. Zeitschrift für angewandte Mathematik und Mechanik 1(1); Reissner, H. (1924). Zum Erddruckproblem. 1st International Congress of Applied Mechanics, Delft.',
  },
  rankine: {
    short: 'Rankine',
    entry:
      'Rankine, W. J. M. (1857). On the stability of loose earth. Philosophical Transactions of the Royal Society 147; the forms with cohesion and sloping ground as in B. M. Das, Principles of Foundation Engineering.',
  },
  skempton: {
    short: 'Skempton',
    entry: 'Skempton, A. W. (1951). The bearing capacity of clays. Building Research Congress, London, 180-189.',
  },
  'terzaghi-1943': {
    short: 'Terzaghi',
    entry: 'Terzaghi, K. (1943). Theoretical Soil Mechanics. Wiley, New York.',
  },
  'vesic-1973': {
    short: 'Vesic',
    entry:
      'Vesic, A. S. (1973). Analysis of ultimate loads of shallow foundations. Journal of the Soil Mechanics and Foundations Division, ASCE, 99(SM1), 45-73.',
  },
  bowles: {
    short: 'Bowles',
    entry: 'J. E. Bowles. Foundation Analysis and Design, 5th ed. McGraw-Hill, New York 1996.',
  },
  steinbrenner: {
    short: 'Steinbrenner',
    entry:
      'Steinbrenner, W. (1934). Tafeln zur Setzungsberechnung. Die Straße 1, 121-124; the closed form as in J. E. Bowles, Foundation Analysis and Design.',
  },
  'das-geotechnical': {
    short: 'Das, Geotechnical',
    entry: 'B. M. Das. Principles of Geotechnical Engineering. Cengage Learning, Stamford.',
  },
  'astm-d1556': {
    short: 'ASTM D1556',
    entry:
      'ASTM D1556. Standard test method for density and unit weight of soil in place by sand-cone method. ASTM International, West Conshohocken. Not read: the arithmetic as in B. M. Das, Principles of Geotechnical Engineering.',
  },
  'termite-practice': {
    short: 'published rates',
    entry:
      'Rates of chemical treatment against termites as contractors publish them after IS 6313 Part 2 (Bureau of Indian Standards, New Delhi), and as labels in the United States state them. The standard was not read, and the pages disagree.',
  },
  'bishop-1955': {
    short: 'Bishop',
    entry:
      'Bishop, A. W. (1955). The use of the slip circle in the stability analysis of slopes. Géotechnique 5(1), 7-17: the simplified method (from memory).',
  },
  'taylor-1948': {
    short: 'Taylor',
    entry:
      'Taylor, D. W. (1948). Fundamentals of Soil Mechanics. Wiley, New York; stability numbers of 1937 (from memory).',
  },
} as const satisfies Record<string, Source>
