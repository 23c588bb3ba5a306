/** Names of dimensions a module may ask for; `quantity/dimension-names.ts` gives each its exponents. */
export type DimensionName = string
