import type { Source } from '../source.ts'

/** Sources that only the shielding wing cites. */
export const shieldingSources = {
  'albedo-concrete': {
    short: 'albedo of concrete',
    entry:
      'Dose albedo of ordinary concrete for each steradian, computed for this project by Monte Carlo (900 000 histories, normal incidence, directions gathered about the normal). NCRP Report 151 (2005), appendix B, from memory, agrees within 20 % at 0.25 and 0.5 MeV and within 30 % for cobalt-60.',
  },
  'albedo-rule': {
    short: 'albedo rule',
    entry:
      'Wall scatter by dose albedo, area seen and distance squared: the maze method of NCRP Report 151 (2005), National Council on Radiation Protection and Measurements, Bethesda (from memory).',
  },
  'barrier-geometry': {
    short: 'barrier and geometry factors',
    entry:
      'The division into a barrier factor (mass per area) and a geometry factor (extent of the source) as in NBS Monograph 42 (1962) and the civil-defence manuals built on it, TR-20 and PM-100-1 (from memory); their charts are not used.',
  },
  'bend-factor': {
    short: 'one tenth for a bend',
    entry:
      'A right-angle turn cuts the dose to about one tenth: C. H. Kearny, Nuclear War Survival Skills, and civil-defence guidance of the United Kingdom and the United States (from memory).',
  },
  'buildup-concrete': {
    short: 'build-up in concrete',
    entry:
      'Exposure build-up factors of ordinary concrete for a point isotropic source, computed for this project by Monte Carlo (Klein-Nishina scattering, absorption and pair production from the NIST tables) and fitted by the form of M. J. Berger; not published parameters. They agree within 5 % with moments-method tables of the generation of ANSI/ANS-6.4.3.',
  },
  'buildup-media': {
    short: 'build-up factors',
    entry:
      'Exposure build-up factors of ordinary concrete, water and iron for a point isotropic source, computed for this project by Monte Carlo in the same way as those of concrete alone and fitted by the form of M. J. Berger; not published parameters. A second program, which splits the photons by depth, gives the same within 6 % and goes on to 20 mean free paths. They agree within 6 % with the tables of Goldstein and Wilkins, NYO-3075 (1954), for iron from 1 MeV and with moments-method tables for water (both from memory).',
  },
  'exponential-integral': {
    short: 'AMS 55',
    entry:
      'Abramowitz, M. and Stegun, I. A. (1964). Handbook of Mathematical Functions, chapter 5. National Bureau of Standards, Applied Mathematics Series 55, Washington.',
  },
  'fallout-law': {
    short: 'fallout decay law',
    entry:
      'Law of fallout decay, the rate falling with the power 1.2 of time and referred to one hour: as in a US dose report of 1954. Its range and accuracy: Glasstone, S. and Dolan, P. J. (eds), The Effects of Nuclear Weapons, 3rd ed., US Government Printing Office 1977, chapter IX, and civil-defence teaching after it (both from memory).',
  },
  'halving-data': {
    short: 'halving thicknesses',
    entry:
      'Halving thicknesses for broad beams, gathered. Fallout: C. H. Kearny, Nuclear War Survival Skills, Oak Ridge National Laboratory 1979, enlarged edition 1987. Fallout 1962: S. Glasstone (ed.), The Effects of Nuclear Weapons, revised edition, US Government Printing Office 1962, and US Army field manuals after it. Cs-137 and Co-60: ASTM E94, Standard guide for radiographic examination, as reprinted in handbook tables. Ra-226: US technical order 33B-1-1, Nondestructive inspection methods, Table 6-28.',
  },
  'nist-xaamdi': {
    short: 'NIST SRD 126',
    entry:
      'Hubbell, J. H. and Seltzer, S. M. Tables of X-Ray Mass Attenuation Coefficients and Mass Energy-Absorption Coefficients. NIST Standard Reference Database 126, Gaithersburg.',
  },
  'point-kernel': {
    short: 'point kernel',
    entry:
      'Point kernel with build-up, summed over a plane or disc source: standard shielding texts after Goldstein and Wilkins, NYO-3075 (1954), and ANSI/ANS-6.4.3-1991, Gamma-ray attenuation coefficients and buildup factors for engineering materials (the form from memory; its parameters are not used).',
  },
  'protection-references': {
    short: 'published limits',
    entry:
      'Published figures for comparison. Factors: US national shelter programme criteria, and US planning guidance for response to a nuclear detonation, 2nd ed. 2010 (both from memory); C. H. Kearny, Nuclear War Survival Skills (quoted). Doses: EPA-400-R-92-001, Table 2-2 (quoted); 10 CFR 20.1201(a) and 10 CFR 835.208 (looked up).',
  },
  'solid-angle-rule': {
    short: 'solid-angle rule',
    entry:
      'Solid angle of the opening over a half space, by 0.1 for the first right-angle bend and by 0.5 for each further one: US civil-defence manuals of the family of TR-20 (from memory, with low confidence; to be confirmed before use).',
  },
} as const satisfies Record<string, Source>
