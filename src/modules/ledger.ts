/** The parts of the job, in the order in which it is built. */
export const wings = {
  ground: 'Ground',
  concrete: 'Concrete',
  shielding: 'Shielding',
  living: 'Air, water and provisions',
  power: 'Power',
} as const

export type Wing = keyof typeof wings

interface LedgerLine {
  readonly wing: Wing
  /** The limit state or service, as a reviewer would ask for it. */
  readonly says: string
}

/**
 * The limit states and services of a small buried protective structure. Modules name the ones they answer; what no block of a
 * notebook answers stands in its package as not covered, so that a package cannot be silent about it. Some are answered by no module.
 */
export const ledger = {
  levels: { wing: 'ground', says: 'Depth of cover and levels from ground to formation' },
  'pit-sides': { wing: 'ground', says: 'Stability of the sides of the pit' },
  'pit-bottom': { wing: 'ground', says: 'Heave of the bottom of the pit in clay' },
  'pit-uplift': { wing: 'ground', says: 'Uplift and piping at the bottom of the pit' },
  'pit-water': { wing: 'ground', says: 'Keeping the pit dry while building' },
  'ground-stress': { wing: 'ground', says: 'Stresses in the ground with depth' },
  'surface-loads': { wing: 'ground', says: 'Wheels, plant and stacks on the ground above' },
  formation: { wing: 'ground', says: 'Compaction of formation and backfill' },
  bearing: { wing: 'ground', says: 'Bearing resistance under the raft' },
  settlement: { wing: 'ground', says: 'Settlement' },
  flotation: { wing: 'ground', says: 'Flotation, in use and while building' },
  'lateral-pressure': { wing: 'ground', says: 'Pressure of ground and water on the walls' },
  'free-walls': { wing: 'ground', says: 'Stability of free-standing walls' },
  'slope-global': { wing: 'ground', says: 'Overall stability of sloping ground' },
  'slope-plane': { wing: 'ground', says: 'Sliding of sloping ground on a plane near its surface' },
  termites: { wing: 'ground', says: 'Treatment of the ground against termites' },
  seismic: { wing: 'ground', says: 'Earthquake: walls, structure and liquefaction' },
  actions: { wing: 'concrete', says: 'Actions on roof and raft, and their combination' },
  blast: { wing: 'concrete', says: 'Blast and shock' },
  analysis: { wing: 'concrete', says: 'Moments and shears in slabs and walls' },
  bending: { wing: 'concrete', says: 'Bending strength' },
  shear: { wing: 'concrete', says: 'Shear strength' },
  punching: { wing: 'concrete', says: 'Punching shear' },
  cracking: { wing: 'concrete', says: 'Crack width under load' },
  'early-cracking': { wing: 'concrete', says: 'Cracking at early age from restraint' },
  deflection: { wing: 'concrete', says: 'Deflection' },
  detailing: { wing: 'concrete', says: 'Spacing of bars, least and most steel' },
  anchorage: { wing: 'concrete', says: 'Anchorage and laps' },
  openings: { wing: 'concrete', says: 'Trimming of openings' },
  durability: { wing: 'concrete', says: 'Cover to steel, concrete quality and life' },
  fire: { wing: 'concrete', says: 'Fire resistance' },
  watertightness: { wing: 'concrete', says: 'Watertightness: membranes, joints and waterstops' },
  'temporary-works': { wing: 'concrete', says: 'Forms and props under wet concrete' },
  striking: { wing: 'concrete', says: 'When forms are struck and fill is placed' },
  quantities: { wing: 'concrete', says: 'Quantities and bar schedule' },
  'roof-shielding': { wing: 'shielding', says: 'Radiation through roof and surround' },
  'entrance-shielding': { wing: 'shielding', says: 'Radiation through the entrance' },
  'opening-shielding': { wing: 'shielding', says: 'Radiation through pipes and openings' },
  'all-paths': { wing: 'shielding', says: 'All paths of radiation together' },
  'time-inside': { wing: 'shielding', says: 'Dose with time, and when people may leave' },
  air: { wing: 'living', says: 'Fresh air and carbon dioxide' },
  'closed-up': { wing: 'living', says: 'Time that people can live closed up' },
  ducts: { wing: 'living', says: 'Ducts, filter and blower' },
  'vent-places': { wing: 'living', says: 'Intake and exhaust apart' },
  heat: { wing: 'living', says: 'Temperature and moisture inside, in summer' },
  cold: { wing: 'living', says: 'Warmth and moisture inside, in winter' },
  water: { wing: 'living', says: 'Drinking water in store' },
  food: { wing: 'living', says: 'Food in store' },
  turnover: { wing: 'living', says: 'Expiry and turn-over of stores' },
  waste: { wing: 'living', says: 'Sanitation and waste' },
  drainage: { wing: 'living', says: 'Drainage and pumping out' },
  well: { wing: 'living', says: 'Raising water by hand' },
  doors: { wing: 'living', says: 'Doors, air locks and leakage' },
  'second-exit': { wing: 'living', says: 'A second way out' },
  'carbon-monoxide': { wing: 'living', says: 'Carbon monoxide from what burns inside or leaks in' },
  'fire-inside': { wing: 'living', says: 'Fire and smoke inside' },
  medical: { wing: 'living', says: 'First aid and medical stores' },
  load: { wing: 'power', says: 'Electric load' },
  storage: { wing: 'power', says: 'Battery' },
  cables: { wing: 'power', says: 'Size of cables and voltage drop' },
  protection: { wing: 'power', says: 'Fuses, isolation, earthing and lightning' },
  charging: { wing: 'power', says: 'Charging by sun, wind or engine' },
  fuel: { wing: 'power', says: 'Fuel, and air and exhaust of the engine' },
} as const satisfies Readonly<Record<string, LedgerLine>>

export type LedgerKey = keyof typeof ledger
