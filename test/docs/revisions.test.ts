import { execFileSync } from 'node:child_process'
import { chmodSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { failing, folderWith, sound } from '../command/notebooks.ts'
import { command } from '../command/run-undercroft.ts'
import { repository } from '../comparison/repository.ts'

const chapter = readFileSync(new URL('../../docs/6-revisions.md', import.meta.url), 'utf8')
const fences = (language: string): string[] =>
  [...chapter.matchAll(new RegExp(`\`\`\`${language}\\n([\\s\\S]*?)\`\`\``, 'g'))].map(found => found[1] ?? '')

/** A folder with an `undercroft` as an install has it. */
function installed(): string {
  const folder = folderWith({ undercroft: `#!/bin/sh\nexec '${process.execPath}' '${command}' "$@"\n` })
  chmodSync(join(folder, 'undercroft'), 0o755)
  return folder
}

/** A repository with the chapter's two settings, and a shell in it that finds the program. */
function withRecipe() {
  const made = repository()
  const path = `${installed()}:${process.env.PATH}`
  const shell = (line: string): string =>
    execFileSync('sh', ['-c', line], { cwd: made.folder, encoding: 'utf8', env: { ...process.env, PATH: path } })
  const [attributes = ''] = fences('gitattributes')
  made.write('.gitattributes', attributes)
  shell(fences('sh')[0] ?? '')
  return { ...made, shell }
}

describe('6-revisions.md', () => {
  it('git diff with the two settings shows the results beside the assumption that changed', () => {
    const { write, commit, shell } = withRecipe()
    write('shelter.md', sound)
    write('README.md', '# No notebook\n')
    commit('first')
    write('shelter.md', sound.replace('value: 3 m', 'value: 4 m'))
    write('README.md', '# No notebook at all\n')
    const shown = shell('git diff').split('\n')
    const [diff = ''] = fences('diff')
    const told = diff.split('\n').filter(each => /^[-+]/.test(each))
    expect(told).toHaveLength(8)
    for (const line of told) expect(shown).toContain(line)
    expect(shown).toContain('+# No notebook at all')
    const bare = shell('git diff --no-textconv')
    expect(bare).toContain('+span:')
    expect(bare).not.toContain('22.50')
  })

  it('the comparison for a request for review holds the merge while a check is not satisfied', () => {
    const { folder, write, git, commit, shell } = withRecipe()
    write('shelter.md', sound)
    commit('first')
    git('switch', '--quiet', '--create', 'work')
    write('shelter.md', failing)
    commit('second')
    const recipe =
      fences('sh')
        .find(each => each.includes('--format markdown'))
        ?.trim() ?? ''
    expect(shell(`${recipe}; echo "ends with $?"`)).toBe('ends with 3\n')
    expect(readFileSync(join(folder, 'comparison.md'), 'utf8')).toContain('**1 check turned to not satisfied**')
  })

  it('the hook lets a sound notebook be committed, and no other', () => {
    const { folder, write, git, shell } = withRecipe()
    const hook = join(folder, '.git/hooks/pre-commit')
    writeFileSync(hook, fences('sh').find(each => each.startsWith('#!/bin/sh')) ?? '')
    chmodSync(hook, 0o755)
    const who = '-c user.name=A -c user.email=a@example.org'
    write('shelter.md', sound)
    shell(`git add -A && git ${who} commit --quiet -m first`)
    write('shelter.md', failing)
    expect(shell(`git add -A; git ${who} commit --quiet -m second 2>/dev/null >/dev/null; echo "ends with $?"`)).toBe(
      'ends with 1\n',
    )
    expect(git('log', '--oneline').trim().split('\n')).toHaveLength(1)
  })
})
