import { readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { folderWith } from '../command/notebooks.ts'
import { undercroft } from '../command/run-undercroft.ts'

const page = new URL('../../docs/4-commands.md', import.meta.url)
const shown = /```text\n\$ undercroft (.+)\n([\s\S]*?)```/g

/** The page with what each command shown in it prints, one after another, on the starter notebook. */
async function printedAnew(): Promise<string> {
  const cwd = folderWith()
  await undercroft(['start', 'shelter'], { cwd })
  let text = readFileSync(page, 'utf8')
  for (const [whole, command = ''] of text.matchAll(shown)) {
    const { stdout } = await undercroft(command.split(' '), { cwd })
    text = text.replace(whole, () => `\`\`\`text\n$ undercroft ${command}\n${stdout}\`\`\``)
  }
  return text
}

describe('docs', () => {
  it('4-commands.md: shows what the commands print', async () => {
    const anew = await printedAnew()
    if (process.env.UPDATE_DOCS) writeFileSync(page, anew)
    expect(readFileSync(page, 'utf8').match(shown)?.length).toBeGreaterThan(0)
    expect(readFileSync(page, 'utf8')).toBe(anew)
  })
})
