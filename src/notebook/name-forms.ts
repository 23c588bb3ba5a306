import { nameFault } from '../formula/names.ts'

/** Names of blocks: `roof`, `roof_load`, `wall_2`. */
export const isBlockName = (name: string): boolean => /^[a-z][a-z0-9_]*$/.test(name)

/** Returns a block name like the one given, or nothing where no letter is left to make one of. */
export function likelyBlockName(name: string): string | undefined {
  const likely = wordsJoined(name)
    .toLowerCase()
    .replaceAll(/[^a-z0-9_]/g, '')
  return isBlockName(likely) ? likely : undefined
}

/** Returns a name that formulas can use like the one given, or nothing. */
export function likelyFormulaName(name: string): string | undefined {
  const likely = wordsJoined(name.replaceAll(/['’′]/g, '_prime'))
  return likely !== name && nameFault(likely) === undefined ? likely : undefined
}

const wordsJoined = (name: string): string =>
  name.replaceAll(/[^\p{L}\p{N}_]+/gu, '_').replaceAll(/^[_\p{N}]+|_+$/gu, '')
