import type { Source } from '../source.ts'

/** Sources that only the power wing cites. */
export const powerSources = {
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
  'iec-60269': {
    short: 'IEC 60269-1',
    entry:
      'IEC 60269-1. Low-voltage fuses: general requirements. International Electrotechnical Commission, Geneva. Conventional fusing currents of gG links, from memory.',
  },
} as const satisfies Record<string, Source>
