import { shownData } from './shown-data.ts'
import type { Workings } from './workings.ts'

/** The design basis and the coverage ledger as plain data: checks by their numbers, blocks by their names. */
export const scopeData = ({ basis, coverage }: Workings) => ({
  design_basis: basis.map(({ what, value, checks }) => ({
    what,
    ...(value ? shownData(value.shown) : {}),
    checks: checks.map(({ number }) => number),
  })),
  coverage: coverage.map(({ key, says, by, reason }) => ({
    key,
    says,
    blocks: by.map(({ name }) => name),
    ...(reason === undefined ? {} : { not_applicable: reason }),
  })),
})
