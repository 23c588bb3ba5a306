import { readNotebook } from '../../src/notebook/read-notebook.ts'
import { say } from './measure.ts'

/** About so many lines: prose, a table and a block in turn. */
function longNotebook(lines: number): string {
  const parts = ['---\ntitle: Long\n---\n']
  for (let index = 0; parts.length * 15 < lines; index += 1) {
    parts.push(
      `## Part ${index}\n\nThe slope is 1:1.5 and the wall stands on $x^2$ metres of fill, see :see[w_${index}].\n\n| a | b |\n| --- | --- |\n| 1 | 2 |\n\n\`\`\`work w_${index}\nx = 2 m + ${index} mm\ny = x * 3\ny <= 1000 m\n\`\`\`\n`,
    )
  }
  return parts.join('\n')
}

/** Reading 10,000 lines, and that twice as many take about twice as long. */
export function benchReading(): void {
  const time = (lines: number): number => {
    const text = longNotebook(lines)
    const start = performance.now()
    readNotebook(text, { path: 'long.md' })
    return performance.now() - start
  }
  time(1000)
  const [five, ten] = [time(5_000), time(10_000)]
  say('10,000 lines read', `${ten.toFixed(0)} ms`, { text: 'under 1500 ms', met: ten < 1500 })
  say('  against 5,000 lines', `${(ten / five).toFixed(2)} times`, { text: 'about 2', met: ten / five < 2.6 })
}
