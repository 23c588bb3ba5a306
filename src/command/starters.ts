/** Starter notebooks: where each stands among the templates, and what it is for. */
export const starters = {
  first: { file: 'starter/shelter.md', says: 'a first notebook that explains itself' },
  whole: { file: 'starters/whole.md', says: 'a whole shelter: structure, protection, air, provisions, power' },
  box: { file: 'starters/box.md', says: 'a buried box: levels, loads, slabs, walls, flotation' },
  pit: { file: 'starters/pit.md', says: 'pit and shoring alone' },
  shielding: { file: 'starters/shielding.md', says: 'a study of the shielding alone' },
  provisions: { file: 'starters/provisions.md', says: 'air, water, food, waste and power' },
} as const

export type Starter = keyof typeof starters
