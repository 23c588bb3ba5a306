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
  // concrete
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
  timoshenko: {
    short: 'Timoshenko',
    entry:
      'Timoshenko, S. P. and Woinowsky-Krieger, S. (1959). Theory of plates and shells, 2nd ed. McGraw-Hill, New York.',
  },
  'wall-tables': {
    short: 'wall tables',
    entry:
      'Moment coefficients of rectangular walls as elastic plates, computed apart from this program for the edge conditions of the tables of the Portland Cement Association (Rectangular concrete tanks) and of IS 3370 (Part 4):1967.',
  },
  // shielding
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
    short: 'build-up in water and iron',
    entry:
      'Exposure build-up factors of ordinary concrete, water and iron for a point isotropic source, computed for this project by Monte Carlo in the same way as those of concrete alone and fitted by the form of M. J. Berger; not published parameters. They agree within 6 % with the tables of Goldstein and Wilkins, NYO-3075 (1954), for iron from 1 MeV and with moments-method tables for water (both from memory).',
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
  // living
  'ad-621998': {
    short: 'AD-621998',
    entry:
      'US civil-defence report AD-621998 on the ventilation of fallout shelters (abstract: minimum survival rate of 3 cfm for each person).',
  },
  'aisc-360': {
    short: 'AISC 360',
    entry:
      'ANSI/AISC 360. Specification for structural steel buildings: factor of safety 1.67 in bending, modulus of 29 000 ksi. American Institute of Steel Construction, Chicago. From memory.',
  },
  'ashrae-62': {
    short: 'ASHRAE 62.1',
    entry:
      'ANSI/ASHRAE Standard 62.1-2016. Ventilation for acceptable indoor air quality. ASHRAE, Atlanta. Table 5.5.1 read in a reprint; the separation by dilution from memory.',
  },
  'belgian-shelters': {
    short: 'Belgian practice',
    entry: 'Belgian guidance for family and public shelters: 6 m³/h of air for each person in a closed shelter.',
  },
  'carslaw-jaeger': {
    short: 'Carslaw and Jaeger',
    entry:
      'Carslaw, H. S. and Jaeger, J. C. (1959). Conduction of heat in solids, 2nd ed. Clarendon Press, Oxford. From memory.',
  },
  'cengel-fluid': {
    short: 'Cengel and Cimbala',
    entry:
      'Y. A. Çengel and J. M. Cimbala. Fluid Mechanics: Fundamentals and Applications. McGraw-Hill, New York. Chapters 8 and 14.',
  },
  colebrook: {
    short: 'Colebrook',
    entry:
      'Colebrook, C. F. (1939). Turbulent flow in pipes, with particular reference to the transition region between the smooth and rough pipe laws. Journal of the Institution of Civil Engineers 11, 133-156.',
  },
  'food-planning': {
    short: 'food planning',
    entry:
      'Planning figure of food in emergencies: 2100 kcal for each person and day. The Sphere Project, and UNHCR, UNICEF, WFP and WHO, Food and nutrition needs in emergencies.',
  },
  haaland: {
    short: 'Haaland',
    entry:
      'Haaland, S. E. (1983). Simple and explicit formulas for the friction factor in turbulent pipe flow. Journal of Fluids Engineering 105, 89-90.',
  },
  'fema-453': {
    short: 'FEMA 453',
    entry:
      'FEMA 453 (2006). Design Guidance for Shelters and Safe Rooms. Federal Emergency Management Agency, Washington.',
  },
  'hazen-williams': {
    short: 'Hazen and Williams',
    entry:
      'Williams, G. S. and Hazen, A. (1920). Hydraulic tables, 3rd ed. Wiley, New York. The formula in SI units, 10.67, from memory.',
  },
  holman: {
    short: 'Holman',
    entry: 'J. P. Holman. Heat Transfer. McGraw-Hill, New York. Table 3-1, conduction shape factors.',
  },
  iapws: {
    short: 'IAPWS',
    entry:
      'Properties of liquid water and its saturation pressure by the equations of the International Association for the Properties of Water and Steam.',
  },
  ibc: {
    short: 'IBC',
    entry:
      'International Building Code (2018), section 909: opening force of a door under a pressure difference. International Code Council.',
  },
  incropera: {
    short: 'Incropera and DeWitt',
    entry: 'F. P. Incropera and D. P. DeWitt. Fundamentals of Heat and Mass Transfer. Wiley, New York. Table 4.1.',
  },
  'iso-10456': {
    short: 'ISO 10456',
    entry:
      'ISO 10456:2007. Building materials and products: hygrothermal properties, tabulated design values. International Organization for Standardization, Geneva. Read in an open-source library.',
  },
  jones: {
    short: 'Jones',
    entry: 'W. P. Jones (2001). Air Conditioning Engineering, 5th ed. Butterworth-Heinemann, Oxford.',
  },
  kusuda: {
    short: 'Kusuda and Achenbach',
    entry:
      'Kusuda, T. and Achenbach, P. R. (1965). Earth temperatures and thermal diffusivity at selected stations in the United States. ASHRAE Transactions 71(1), 61-74.',
  },
  magnus: {
    short: 'Magnus form',
    entry:
      'Saturation vapour pressure over water by the form of Magnus, as in the Guide to Instruments and Methods of Observation of the World Meteorological Organization. From memory; within half a percent of the IAPWS equations from 0 to 50 °C.',
  },
  'mass-balance': {
    short: 'mass balance',
    entry: 'Conservation of a gas in a well-mixed room; no source is needed beyond the line itself.',
  },
  'niosh-co2': {
    short: 'NIOSH',
    entry:
      'NIOSH Pocket Guide to Chemical Hazards: carbon dioxide. National Institute for Occupational Safety and Health, Cincinnati.',
  },
  'osha-co2': {
    short: 'OSHA',
    entry: '29 CFR 1910.1000, Table Z-1: carbon dioxide, 5000 ppm over 8 hours. US Department of Labor.',
  },
  'osha-oxygen': {
    short: 'OSHA',
    entry:
      '29 CFR 1910.134: an atmosphere with less than 19.5 % of oxygen by volume is oxygen-deficient. US Department of Labor.',
  },
  'persily-2017': {
    short: 'Persily and de Jonge',
    entry:
      'Persily, A. and de Jonge, L. (2017). Carbon dioxide generation rates for building occupants. Indoor Air 27, 868-879.',
  },
  roark: {
    short: 'Roark',
    entry:
      "W. C. Young, R. G. Budynas and A. M. Sadegh. Roark's Formulas for Stress and Strain. McGraw-Hill, New York.",
  },
  'smoke-manual': {
    short: 'smoke-control manual',
    entry:
      'A smoke-control manual after the ASHRAE book on smoke control: greatest opening force 30 lbf, leakage of gaps by the orifice formula with a coefficient of 0.65.',
  },
  'sphere-sanitation': {
    short: 'Sphere',
    entry:
      'The Sphere Project. Humanitarian Charter and Minimum Standards in Humanitarian Response: excreta disposal and solid waste; refuse as compared with UNHCR.',
  },
  'steam-tables': {
    short: 'steam tables',
    entry: 'Heat of evaporation of water, 2454 kJ/kg at 20 °C to 2418 kJ/kg at 35 °C. From memory of the steam tables.',
  },
  'swiss-twp': {
    short: 'Swiss TWP',
    entry:
      'Technische Weisungen für den Pflicht-Schutzraumbau (TWP): technical directives for private shelters. Federal Office for Civil Protection, Bern.',
  },
  'us-atmosphere': {
    short: 'US Standard Atmosphere',
    entry: 'U.S. Standard Atmosphere, 1976. NOAA, NASA and US Air Force, Washington.',
  },
  'water-rates': {
    short: 'water guidance',
    entry:
      'Published rates of water. US household: one gallon for each person and day, vessels filled at home renewed every six months (local authorities after FEMA and the Red Cross). Sphere: The Sphere Project (2011), Humanitarian Charter and Minimum Standards in Humanitarian Response, water supply standard 1.',
  },
  'who-sanitation': {
    short: 'WHO 1992',
    entry:
      'Franceys, R., Pickford, J. and Reed, R. (1992). A guide to the development of on-site sanitation. World Health Organization, Geneva.',
  },
  // power
  'cell-temperature': {
    short: 'cell temperature',
    entry:
      'Temperature of cells from the rated temperature at 800 W/m² and 20 °C, and power falling evenly with it: the common linear form of photovoltaic practice (from memory).',
  },
  combustion: {
    short: 'combustion',
    entry:
      'Air that just burns a fuel, from its formula, with 20.95 % of oxygen by volume in air; no source is needed beyond the line itself.',
  },
  'diesel-chart': {
    short: 'diesel chart',
    entry:
      'Approximate use of diesel by size of generator and load: a chart of the trade as several suppliers publish it; three reproductions agree. Estimates only.',
  },
  'dry-air': {
    short: 'dry air',
    entry:
      'Density of dry air as an ideal gas, gas constant 287.05 J/(kg K): ISO 2533:1975 Standard atmosphere. International Organization for Standardization, Geneva (from memory; 1.225 kg/m³ at 15 °C and 101.325 kPa agrees).',
  },
  'fuel-properties': {
    short: 'fuel properties',
    entry:
      'US Department of Energy, Alternative Fuels Data Center: fuel properties comparison. Heating values by volume and by mass are not of one sample.',
  },
  'iec-60228': {
    short: 'IEC 60228',
    entry:
      'IEC 60228:2004. Conductors of insulated cables. International Electrotechnical Commission, Geneva. Read in published reproductions of its tables.',
  },
  'iec-60364-4-43': {
    short: 'IEC 60364-4-43',
    entry:
      'IEC 60364-4-43. Low-voltage electrical installations: protection against overcurrent. International Electrotechnical Commission, Geneva. From memory.',
  },
  'ieee-1013': {
    short: 'IEEE 1013',
    entry:
      'IEEE Std 1013-2000. Recommended practice for sizing lead-acid batteries for photovoltaic systems. Institute of Electrical and Electronics Engineers, New York. Its outline was read; the rules in detail are from memory.',
  },
  'ieee-485': {
    short: 'IEEE 485',
    entry:
      'IEEE Std 485-2010. Recommended practice for sizing lead-acid batteries for stationary applications. Institute of Electrical and Electronics Engineers, New York. From memory.',
  },
  'lp-gas': {
    short: 'NFPA 58',
    entry:
      'NFPA 58. Liquefied petroleum gas code. National Fire Protection Association, Quincy. Properties read in a reprint; filling and siting from memory.',
  },
  nec: {
    short: 'NFPA 70',
    entry:
      'NFPA 70. National Electrical Code. National Fire Protection Association, Quincy. Chapter 9, Table 8 read in secondary tables.',
  },
  'power-balance': {
    short: 'energy balance',
    entry:
      'Conservation of energy and charge, and the laws of Ohm and Joule; no source is needed beyond the line itself.',
  },
  'pv-worksheet': {
    short: 'worksheet',
    entry:
      'Worksheets for small photovoltaic systems as several suppliers publish them: reserve over depth of discharge by the factor for cold, base 80 °F. They agree with each other.',
  },
  'swept-area': {
    short: 'swept area',
    entry:
      'Power of the wind through the swept area with the cube of the speed; the limit 16/27 of Betz (1920) from the momentum of the stream; 6/pi for speeds spread as Rayleigh has them, by integration. As in Y. A. Cengel and J. M. Cimbala, Fluid Mechanics, McGraw-Hill.',
  },
  'wind-profile': {
    short: 'wind profile',
    entry:
      'Speed of the wind rising with a power of the height, 1/7 over open ground: common practice of wind measurement (from memory).',
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
