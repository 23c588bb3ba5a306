import { rmSync, symlinkSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { commitOf, fileAt, forkOf, rangeOf } from '../../src/comparison/git-file.ts'
import { folderWith } from '../command/notebooks.ts'
import { repository } from './repository.ts'

const text = (bytes: Uint8Array): string => Buffer.from(bytes).toString()
const at = (folder: string, name: string) => ({ folder, name, shown: name })

describe('git-file: reading a revision', () => {
  it('gives the bytes of the commit and leaves the file, the index and the branch alone', async () => {
    const { folder, write, git, commit } = repository()
    write('shelter.md', 'first\r\nline\n')
    commit('first')
    write('shelter.md', 'second\n')
    const before = [git('status', '--porcelain'), git('rev-parse', 'HEAD')]
    const file = await fileAt(at(folder, 'shelter.md'), await commitOf(folder, 'HEAD'))
    expect([text(file.bytes), file.renamed, file.path]).toEqual(['first\r\nline\n', false, 'shelter.md'])
    expect([git('status', '--porcelain'), git('rev-parse', 'HEAD')]).toEqual(before)
  })

  it('finds a file in a folder below the top, with blanks and letters of any language in its path', async () => {
    const { folder, write, commit } = repository()
    write('notes of the site/kälte raum.md', 'cold\n')
    commit('first')
    const inside = join(folder, 'notes of the site')
    const file = await fileAt(at(inside, 'kälte raum.md'), await commitOf(inside, 'main'))
    expect([text(file.bytes), file.path]).toEqual(['cold\n', 'notes of the site/kälte raum.md'])
  })

  it('follows a file that was renamed since, in the working copy and between two commits', async () => {
    const { folder, write, git, commit } = repository()
    const body = Array.from({ length: 30 }, (_, index) => `line ${index}`).join('\n')
    write('old name.md', body)
    write('sub/other.md', 'other\n')
    commit('first')
    git('mv', 'old name.md', 'sub/new name.md')
    const inside = join(folder, 'sub')
    const first = await commitOf(inside, 'HEAD')
    const staged = await fileAt(at(inside, 'new name.md'), first)
    expect([text(staged.bytes), staged.path, staged.renamed]).toEqual([body, 'old name.md', true])
    commit('renamed')
    const between = await fileAt(at(inside, 'new name.md'), first, await commitOf(inside, 'HEAD'))
    expect([between.path, between.renamed]).toEqual(['old name.md', true])
  })

  it('follows what was a link in that revision, inside that revision', async () => {
    const { folder, write, commit } = repository()
    write('real/n.md', 'then\n')
    for (const [name, target] of [
      ['a.md', 'real/n.md'],
      ['again.md', 'a.md'],
      ['folder', 'real'],
    ] as const)
      symlinkSync(target, join(folder, name))
    commit('links')
    const then = await commitOf(folder, 'HEAD')
    rmSync(join(folder, 'a.md'))
    write('a.md', 'now\n')
    write('real/n.md', 'now\n')
    commit('files')
    for (const name of ['a.md', 'again.md', 'folder/n.md'])
      expect(text((await fileAt(at(folder, name), then)).bytes)).toBe('then\n')
  })

  it('runs nothing that the repository names: no external difference, no text conversion, no monitor', async () => {
    const { folder, write, git, commit } = repository()
    write('.gitattributes', '*.md diff=notebook\n')
    write('a.md', Array.from({ length: 30 }, (_, index) => `line ${index}`).join('\n'))
    commit('first')
    for (const key of ['diff.notebook.textconv', 'diff.notebook.command', 'diff.external', 'core.fsmonitor'])
      git('config', key, `touch ${join(folder, 'was-run')}; false`)
    git('-c', 'core.fsmonitor=false', 'mv', 'a.md', 'b.md')
    const file = await fileAt(at(folder, 'b.md'), await commitOf(folder, 'HEAD'))
    expect(file.path).toBe('a.md')
    expect(git('-c', 'core.fsmonitor=false', 'status', '--porcelain')).not.toContain('was-run')
  })
})

describe('git-file: refusals', () => {
  it('a revision that begins with a hyphen never reaches git', async () => {
    const { folder, write, commit } = repository()
    write('a.md', 'a')
    commit('first')
    for (const revision of ['--output=x', '-h', '--exec-path'])
      await expect(commitOf(folder, revision)).rejects.toThrow(`A revision cannot begin with \`-\`: \`${revision}\``)
  })

  it('a link that leads out of the repository, to nothing, in a ring or through a file', async () => {
    const { folder, write, commit } = repository()
    write('real.md', 'text\n')
    const links = {
      'out.md': '../n.md',
      'far.md': '/etc/passwd',
      'none.md': 'gone.md',
      'ring.md': 'ring.md',
      'via.md': 'real.md/x',
    }
    for (const [name, target] of Object.entries(links)) symlinkSync(target, join(folder, name))
    commit('links')
    const then = await commitOf(folder, 'HEAD')
    const of = (name: string) => fileAt(at(folder, name), then)
    await expect(of('out.md')).rejects.toThrow(
      /^`out\.md` was a link at \w{10}, and led out of the repository, to `\.\.\/n\.md`$/,
    )
    await expect(of('far.md')).rejects.toThrow(/and led out of the repository, to `\/etc\/passwd`$/)
    await expect(of('none.md')).rejects.toThrow(/and led to nothing in that revision$/)
    await expect(of('ring.md')).rejects.toThrow(/and led in a ring$/)
    await expect(of('via.md')).rejects.toThrow(/and led through a file as if it were a folder$/)
  })

  it('no repository, no such revision, no such file then', async () => {
    await expect(commitOf(folderWith(), 'HEAD')).rejects.toThrow(
      '`HEAD` is no file here, and cannot be a revision: the notebook is in no repository',
    )
    const { folder, write, commit } = repository()
    await expect(commitOf(folder, 'HEAD')).rejects.toThrow('the repository has no commit yet')
    write('a.md', 'a')
    commit('first')
    await expect(commitOf(folder, 'HEAD~1')).rejects.toThrow('`HEAD~1` is neither a file here nor a revision')
    await expect(commitOf(folder, 'HEAD:a.md')).rejects.toThrow('neither a file here nor a revision')
    const head = await commitOf(folder, 'HEAD')
    await expect(fileAt(at(folder, 'b.md'), head)).rejects.toThrow('`b.md` does not exist at')
  })

  it('a folder of that name is no file', async () => {
    const { folder, write, commit } = repository()
    write('a.md/b', 'b')
    commit('first')
    await expect(fileAt(at(folder, 'a.md'), await commitOf(folder, 'HEAD'))).rejects.toThrow('`a.md` does not exist at')
  })
})

describe('git-file: ranges', () => {
  it('an end left out is HEAD, and three dots are the point where two parted', () => {
    expect(rangeOf('v1..v2')).toEqual({ from: 'v1', to: 'v2', fork: false })
    expect(rangeOf('main...')).toEqual({ from: 'main', to: 'HEAD', fork: true })
    expect(rangeOf('..v2')).toEqual({ from: 'HEAD', to: 'v2', fork: false })
    expect(rangeOf('HEAD~1')).toBeUndefined()
    expect(rangeOf('v1.2')).toBeUndefined()
  })

  it('the fork of two branches is their common commit', async () => {
    const { folder, write, git, commit } = repository()
    write('a.md', 'a')
    commit('first')
    const first = git('rev-parse', 'HEAD').trim()
    git('switch', '--quiet', '--create', 'work')
    write('a.md', 'b')
    commit('second')
    git('switch', '--quiet', 'main')
    write('b.md', 'c')
    commit('third')
    expect(await forkOf(folder, { from: 'main', to: 'work', fork: true })).toBe(first)
  })
})
