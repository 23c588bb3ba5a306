import { describe, expect, it } from 'vitest'
import { folderWith } from './notebooks.ts'
import { undercroft } from './run-undercroft.ts'

const names = [
  'start',
  'check',
  'issue',
  'results',
  'schedules',
  'text',
  'trace',
  'vary',
  'compare',
  'modules',
  'tick',
  'prove',
]

describe('help', () => {
  it('lists every command and what each exit status means', async () => {
    const { status, stdout, stderr } = await undercroft(['--help'], { cwd: folderWith() })
    expect([status, stderr]).toEqual([0, ''])
    expect([...stdout.matchAll(/^ {2}(\w+) (?:\[|<)/gm)].map(found => found[1])).toEqual([...names, 'help'])
    expect(stdout).toContain(
      '0 all is well, 1 the notebook has errors or the package differs, 2 called wrongly, 3 a check is not satisfied',
    )
  })

  it('has one example a command, and they run as printed, one after another', async () => {
    const cwd = folderWith()
    for (const name of names) {
      const { status, stdout } = await undercroft([name, '--help'], { cwd })
      const examples = [...stdout.matchAll(/^Example: undercroft (.+)$/gm)].map(found => found[1] ?? '')
      expect([name, status, examples.length]).toEqual([name, 0, 1])
      for (const example of examples) {
        const ran = await undercroft(example.split(' '), { cwd })
        expect([example, ran.status, ran.stderr.includes('error')]).toEqual([example, 0, false])
      }
    }
  })

  it('ends with 2 and points to --help where the command is called wrongly', async () => {
    const cwd = folderWith()
    const wrong = [
      { args: [], says: 'Usage: undercroft' },
      { args: ['chekc'], says: 'Did you mean check?' },
      { args: ['check'], says: "missing required argument 'file'" },
      { args: ['check', 'a.md', '--fromat', 'json'], says: 'Did you mean --format?' },
      { args: ['check', 'a.md', '--format', 'xml'], says: 'Allowed choices are text, json' },
      { args: ['issue', 'a.md', 'b.md'], says: 'too many arguments' },
      { args: ['issue', 'a.md', '--paper', 'A3'], says: 'Allowed choices are A4, letter' },
    ]
    for (const { args, says } of wrong) {
      const { status, stdout, stderr } = await undercroft(args, { cwd })
      expect([args, status, stdout]).toEqual([args, 2, ''])
      expect(stderr).toContain(says)
    }
  })

  it('gives the version that package.json has', async () => {
    const { default: facts } = await import('../../package.json', { with: { type: 'json' } })
    const { status, stdout } = await undercroft(['--version'], { cwd: folderWith() })
    expect([status, stdout]).toEqual([0, `${facts.version}\n`])
  })
})
