import { readCoverage } from './read-coverage.ts'
import { readDesignBasis } from './read-design-basis.ts'
import { readRevisions } from './read-revisions.ts'
import {
  readDate,
  readLanguage,
  readReferences,
  readText,
  readTexts,
  readWhole,
  readWord,
  type TitleValue,
} from './title-values.ts'
import type { CheckLevel, TitleBlock } from './types.ts'

const checkLevels = ['self', 'other person', 'other organisation'] as const satisfies readonly CheckLevel[]
const figureLimits = { from: 3, to: 6 } as const

type Part = Partial<TitleBlock>

/** Returns a part of the title block, or nothing in it where the value was refused. */
type ReadPart = (value: TitleValue) => Part

/** The keys of the title block, as they are written, in the order of the documentation. */
export const titleKeys: ReadonlyMap<string, ReadPart> = new Map<string, ReadPart>([
  ['title', value => ({ title: readText(value) })],
  ['project', value => ({ project: readText(value) })],
  ['number', value => ({ number: readText(value) })],
  ['revision', value => ({ revision: readText(value) })],
  ['purpose', value => ({ purpose: readText(value) })],
  ['prepared', value => ({ prepared: readText(value) })],
  ['checked', value => ({ checked: readText(value) })],
  ['approved', value => ({ approved: readText(value) })],
  ['check level', value => given('checkLevel', readWord(value, checkLevels))],
  ['date', value => ({ date: readDate(value) })],
  ['language', value => given('language', readLanguage(value))],
  ['units', value => given('units', readWord(value, ['SI', 'US']))],
  ['figures', value => given('figures', readWhole(value, figureLimits))],
  ['paper', value => given('paper', readWord(value, ['A4', 'letter']))],
  ['codes', value => ({ codes: readTexts(value) })],
  ['ranges', value => ({ ranges: readTexts(value) })],
  ['design basis', value => ({ designBasis: readDesignBasis(value) })],
  ['coverage', value => ({ coverage: readCoverage(value) })],
  ['revisions', value => ({ revisions: readRevisions(value) })],
  ['references', value => ({ references: readReferences(value) })],
])

const given = <Key extends keyof TitleBlock>(key: Key, value: TitleBlock[Key] | undefined): Part =>
  value === undefined ? {} : ({ [key]: value } as Part)
