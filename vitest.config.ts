import { defineConfig } from 'vitest/config'
import LongFirst from './test/long-first.ts'

/** What runs the program whole: long, and with stand-ins for what it opens; each file by itself. */
const ofTheProgram = ['command', 'docs', 'examples', 'package', 'sheets'].map(room => `test/${room}/**/*.test.ts`)

export default defineConfig({
  test: {
    reporters: ['default', './test/totals-reporter.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    maxWorkers: 2,
    sequence: { sequencer: LongFirst },
    projects: [
      { extends: true, test: { name: 'program', include: ofTheProgram, sequence: { groupOrder: 0 } } },
      {
        extends: true,
        test: {
          name: 'calculation',
          include: ['test/**/*.test.ts'],
          exclude: ofTheProgram,
          // Nothing here keeps anything from one file to the next, and the catalogue is loaded twice, not two hundred times.
          isolate: false,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
})
