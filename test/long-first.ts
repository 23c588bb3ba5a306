import { BaseSequencer, type TestSpecification } from 'vitest/node'

/** Files that take a minute or so, most of it spent waiting for a browser or another program. */
const long = ['bare-root', 'page-breaks', 'add-a-module', 'examples'].map(name => `/${name}.test.ts`)

/** Runs the long files first: one that comes last is waited for by everything. */
export default class LongFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const isLong = ({ moduleId }: TestSpecification) => long.some(name => moduleId.endsWith(name))
    const sorted = await super.sort(files)
    return [...sorted.filter(isLong), ...sorted.filter(file => !isLong(file))]
  }
}
