import type { Source } from '../source.ts'

/** Sources that only the living wing cites. */
export const livingSources = {
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
  'en-50291': {
    short: 'EN 50291-1',
    entry:
      'EN 50291-1. Gas detectors: electrical apparatus for the detection of carbon monoxide in domestic premises. The alarm sounds at 50 ppm within 90 min, at 100 ppm within 40 min, at 300 ppm within 3 min. From memory.',
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
  'iso-13370': {
    short: 'ISO 13370',
    entry:
      'ISO 13370:2017. Thermal performance of buildings: heat transfer via the ground. The characteristic dimension of a floor, its area over half its perimeter. International Organization for Standardization, Geneva. From memory.',
  },
  'iso-13788': {
    short: 'ISO 13788',
    entry:
      'ISO 13788:2012. Hygrothermal performance of building components and building elements: surface resistance of 0.25 m²K/W where condensation on opaque faces is judged. International Organization for Standardization, Geneva. From memory.',
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
  'niosh-co': {
    short: 'NIOSH',
    entry:
      'NIOSH Pocket Guide to Chemical Hazards: carbon monoxide. 35 ppm over a shift of up to 10 hours, ceiling 200 ppm, immediately dangerous at 1200 ppm. National Institute for Occupational Safety and Health, Cincinnati. From memory.',
  },
  'niosh-co2': {
    short: 'NIOSH',
    entry:
      'NIOSH Pocket Guide to Chemical Hazards: carbon dioxide. National Institute for Occupational Safety and Health, Cincinnati.',
  },
  'osha-co': {
    short: 'OSHA',
    entry: '29 CFR 1910.1000, Table Z-1: carbon monoxide, 50 ppm over 8 hours. US Department of Labor. From memory.',
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
  'who-air': {
    short: 'WHO air quality',
    entry:
      'World Health Organization (2010). Guidelines for indoor air quality: selected pollutants (carbon monoxide: 100 mg/m³ for 15 minutes, 35 mg/m³ for an hour, 10 mg/m³ for 8 hours); (2021) Global air quality guidelines (4 mg/m³ for 24 hours). From memory.',
  },
  'who-sanitation': {
    short: 'WHO 1992',
    entry:
      'Franceys, R., Pickford, J. and Reed, R. (1992). A guide to the development of on-site sanitation. World Health Organization, Geneva.',
  },
} as const satisfies Record<string, Source>
