import type { Reporter, TestModule } from 'vitest/node'

/** Ends a run with its totals alone on a line: `412 passed, 0 failed`. */
export default class TotalsReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const tests = modules.flatMap(module => [...module.children.allTests()])
    const count = (state: string): number => tests.filter(test => test.result().state === state).length
    const broken = modules.filter(module => module.errors().length > 0).length + unhandled.length
    const skipped = count('skipped')
    process.stdout.write(
      `\n${count('passed')} passed, ${count('failed') + broken} failed${skipped > 0 ? `, ${skipped} skipped` : ''}\n`,
    )
  }
}
