import { linkSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { deep, failing, faulty, folderWith, sound } from './notebooks.ts'
import { undercroft } from './run-undercroft.ts'

describe('vary', () => {
  it('gives both margins of every assumption, the tightest first, and one sentence', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    const { status, stdout, stderr } = await undercroft(['vary', 'roof.md'], { cwd })
    expect([status, stderr]).toEqual([0, ''])
    expect(stdout).toMatch(/^site\.span +3 m +\+33\.3 % +0 m +nothing +4 m +1\.02$/m)
    expect(stdout).toMatch(/^site\.load +20 kN\/m² +\+77\.7 % +0 kN\/m² +nothing +35\.55 kN\/m² +1\.02$/m)
    expect(stdout.indexOf('site.span')).toBeLessThan(stdout.indexOf('site.load'))
    expect(stdout).toMatch(/^1\.02 +strip: what the slab carries$/m)
    expect(stdout.trimEnd().split('\n').at(-1)).toMatch(
      /^roof\.md: 2 assumptions, each moved by itself; tightest is site\.span, \+33\.3 % to 4 m \(what the slab carries\); no margin ends inside its range \(\d+ runs\)$/,
    )
  })

  it('gives the same as JSON, in SI at full precision', async () => {
    const cwd = folderWith({ 'roof.md': sound })
    const { stdout } = await undercroft(['vary', 'roof.md', '--format', 'json'], { cwd })
    const data = JSON.parse(stdout)
    expect(data).toMatchObject({ format: 1, tool: 'undercroft 0.1.0', notebook: { path: 'roof.md' }, unsearched: [] })
    const [span, load] = data.margins
    expect(span).toMatchObject({
      assumption: 'site.span',
      searched: { from: '0 m', to: '6 m' },
      down: { kind: 'none', si: 0 },
      up: { kind: 'turn', checks: [{ number: '1.02', block: 'strip', becomes: 'not satisfied' }], insideRange: false },
    })
    expect(span.up.si).toBeCloseTo(4, 9)
    // w l^2 / 8 = 40 kN at l = 3 m.
    expect(load.up.si / 1e3).toBeCloseTo((8 * 40) / 9, 7)
  })

  it('says how far it is to being satisfied, and ends with 3 as `check` does', async () => {
    const { status, stdout } = await undercroft(['vary', '-'], { cwd: folderWith(), input: failing })
    expect(status).toBe(3)
    expect(stdout).toMatch(/^site\.span +5 m +−20\.0 % +4 m +1\.02, then satisfied +10 m +nothing$/m)
  })

  it('stands in the register of the package, its check linked', async () => {
    const cwd = folderWith({ 'roof.md': sound.replace('SP-12 }', 'SP-12, range: 2 m to 5 m }') })
    expect((await undercroft(['issue', 'roof.md', '--html-only'], { cwd })).status).toBe(0)
    const html = readFileSync(join(cwd, 'roof.html'), 'utf8')
    const row = /<tr id="register-v-site-span">.*?<\/tr>/.exec(html)?.[0] ?? ''
    const [, anchor = ''] =
      / to 4&nbsp;m \(<a href="#([^"]+)">1\.02<\/a>, <b class="outside">inside the range<\/b>\)/.exec(
        row.replaceAll('\u00a0', '&nbsp;'),
      ) ?? []
    expect(anchor).not.toBe('')
    expect(html).toContain(`id="${anchor}"`)
    expect(row).toContain('nothing')
  })

  it('varies nothing where the notebook has errors, and ends with 1', async () => {
    const cwd = folderWith({ 'roof.md': faulty })
    const { status, stdout, stderr } = await undercroft(['vary', 'roof.md'], { cwd })
    expect([status, stdout]).toEqual([1, ''])
    expect(stderr).toContain('name-unknown')
    expect(stderr).toContain('Nothing was varied: the notebook has errors')
  })
})

const ranged = sound
  .replace('SP-12 }', 'SP-12, range: 2.5 m to 4.5 m }')
  .replace('soil on the roof }', 'soil on the roof, range: 15 kN/m^2 to 30 kN/m^2 }')

/** A bar that a choice is taken from. */
const barred = `
\`\`\`assume bars
one: { value: 12 mm, basis: one size on site }
\`\`\`

\`\`\`calc bar-choice-is-456 wall
member: wall, horizontal
required_area: 300 mm^2/m
bar_size: bars.one
spacing: 200 mm
cover: 50 mm
aggregate: 20 mm
thickness: 300 mm
steel: Fe 500
\`\`\`
`

describe('vary with ranges, sweeps and samples', () => {
  it('--on: what each range does to a value, the widest first, with a bar', async () => {
    const cwd = folderWith({ 'roof.md': ranged })
    const { status, stdout } = await undercroft(['vary', 'roof.md', '--on', 'strip.M', '--svg', 'chart.svg'], { cwd })
    expect(status).toBe(0)
    expect(stdout).toMatch(/^strip\.M, moment of a strip: 22\.50 kN as written$/m)
    // w l^2 / 8: 15.625 to 50.625 kN over the spans, 16.875 to 33.75 over the loads.
    expect(stdout).toMatch(/^site\.span +2\.500 m to 4\.500 m +15\.63 kN +50\.63 kN +L+\|H+$/m)
    expect(stdout).toMatch(/^site\.load +15\.00 kN\/m² to 30\.00 kN\/m² +16\.88 kN +33\.75 kN +L+\|H+$/m)
    const svg = readFileSync(join(cwd, 'chart.svg'), 'utf8')
    expect(svg).toMatch(/^<svg [^>]*xmlns="http:\/\/www\.w3\.org\/2000\/svg"/)
    expect(svg).toContain('site.span moves it most')
  })

  it('--sweep: a value from end to end, the checks that are not satisfied, and a chart', async () => {
    const cwd = folderWith({ 'roof.md': ranged })
    const args = ['vary', 'roof.md', '--sweep', 'site.span=3..5 m/5', '--on', '1.02', 'strip.M', '--svg', 'sweep.svg']
    const { status, stdout, stderr } = await undercroft(args, { cwd })
    expect([status, stderr]).toEqual([0, 'Wrote sweep.svg\n'])
    expect(
      stdout
        .split('\n')
        .slice(2, 7)
        .map(line => line.split(/ {2,}/)),
    ).toEqual([
      ['3.000 m', '0.5625', '22.50 kN', 'none'],
      ['3.500 m', '0.7656', '30.63 kN', 'none'],
      ['4.000 m', '1.000', '40.00 kN', 'none'],
      ['4.500 m', '1.266', '50.63 kN', '1.02'],
      ['5.000 m', '1.563', '62.50 kN', '1.02'],
    ])
    expect(readFileSync(join(cwd, 'sweep.svg'), 'utf8')).toContain('as site.span goes from 3.00 to 5.00 m')
  })

  it('--sweep: a demand that turns to help has no ratio, which is no refusal', async () => {
    const cwd = folderWith({ 'roof.md': ranged })
    const args = ['vary', 'roof.md', '--sweep', 'site.load=-10..10 kPa/3', '--on', '1.02']
    const { stdout } = await undercroft(args, { cwd })
    expect(stdout.split('\n')[2]?.split(/ {2,}/)).toEqual(['−10.00 kN/m²', 'none', 'none'])
  })

  it('--samples: the share of each check with its interval; the same seed gives the same bytes', async () => {
    const cwd = folderWith({ 'roof.md': ranged })
    const args = ['vary', 'roof.md', '--samples', '20000', '--on', 'strip.M']
    const [one, same, other] = await Promise.all(
      [args, args, [...args, '--seed', '2']].map(each => undercroft(each, { cwd })),
    )
    expect(one?.status).toBe(0)
    expect(one?.stderr).toBe('2 assumptions drawn 20000 times, no numerical method\n')
    expect(one?.stdout).toBe(same?.stdout)
    expect(one?.stdout).not.toBe(other?.stdout)
    const data = JSON.parse((await undercroft([...args, '--format', 'json'], { cwd })).stdout).samples
    // P(w l^2 <= 320 kN m) with w even over 15 to 30, l over 2.5 to 4.5, by integration over l:
    // l below sqrt(320/30) always; above, (320/l^2 - 15) / 15; 320/15 is beyond 4.5^2.
    const l = Math.sqrt(320 / 30)
    const share = (l - 2.5 + (320 * (1 / l - 1 / 4.5)) / 15 - (4.5 - l)) / 2
    const [check] = data.checks
    expect(check.low).toBeLessThan(share)
    expect(check.high).toBeGreaterThan(share)
    expect(check).toMatchObject({ number: '1.02', asked: 20000 })
    expect(data).toMatchObject({ seed: 1, spread: 'uniform', latin: false, refused: 0 })
  })

  it('--spread normal: what the range holds, the mean it is drawn about, and what lies beyond nought', async () => {
    const load = ranged.replace('range: 15 kN/m^2 to 30 kN/m^2', 'range: 0 kN/m^2 to 40 kN/m^2')
    const cwd = folderWith({ 'roof.md': load })
    const run = (...more: string[]) =>
      undercroft(['vary', 'roof.md', '--samples', '500', '--spread', 'normal', ...more], { cwd })
    expect((await run()).stdout).toContain(
      [
        'Drawn: site.span 2.500 m to 4.500 m, site.load 0 kN/m² to 40.00 kN/m²; normal about the middle of the range, which holds 95 %, seed 1, each by itself',
        'Not drawn about the value as written: site.span about 3.500 m, written 3.000 m',
        'On the other side of nought, where the range has nothing: site.load in 2.50 % of its draws',
      ].join('\n'),
    )
    const told = await run('--coverage', '68.27')
    expect(told.stdout).toContain('which holds 68.27 %')
    expect(told.stdout).toContain('site.span in 0.02 % of its draws, site.load in 15.87 % of its draws')
    const data = JSON.parse((await run('--coverage', '90', '--format', 'json')).stdout).samples
    expect(data).toMatchObject({ spread: 'normal', coverage: 0.9 })
  })

  it('--on takes a check by the name that the record has for it', async () => {
    const cwd = folderWith({ 'deep.md': deep })
    const { status, stdout } = await undercroft(['vary', 'deep.md', '--on', 'shield.protection'], { cwd })
    expect([status, stdout]).toEqual([
      0,
      expect.stringMatching(/^shield\.protection, the protection factor is as required: \d/),
    ])
  })

  it('--svg never writes over the notebook or its checking record', async () => {
    const record = '# none yet\n'
    const cwd = folderWith({ 'roof.md': ranged, 'roof.checked.yaml': record })
    linkSync(join(cwd, 'roof.md'), join(cwd, 'link.svg'))
    for (const file of ['roof.md', './roof.md', 'link.svg', 'roof.checked.yaml']) {
      const { status, stdout, stderr } = await undercroft(['vary', 'roof.md', '--ranges', '--svg', file], { cwd })
      expect([status, stdout]).toEqual([2, ''])
      expect(stderr).toMatch(/^`\S+` is the (?:notebook itself|checking record of the notebook), which would be lost\n/)
    }
    expect(readFileSync(join(cwd, 'roof.md'), 'utf8')).toBe(ranged)
    expect(readFileSync(join(cwd, 'roof.checked.yaml'), 'utf8')).toBe(record)
  })

  it('a temperature moves by degrees and by no percentage', async () => {
    const warm = (value: string, least: string) =>
      `---\ntitle: Warmth\n---\n\n\`\`\`assume site\nT: { value: ${value}, basis: heating }\n\`\`\`\n\n\`\`\`work room\nsite.T >= ${least}\n\`\`\`\n`
    const cwd = folderWith({ 'c.md': warm('20 degC', '18.5 degC'), 'f.md': warm('68 degF', '65 degF') })
    const said = async (file: string) => (await undercroft(['vary', file], { cwd })).stdout
    expect(await said('c.md')).toContain('tightest is site.T, −1.5 K to 18.5 °C')
    expect(await said('f.md')).toContain('tightest is site.T, −3.0 °F to 65 °F')
  })

  it('says that there is no check, of margins and of samples', async () => {
    const bare = ranged.replace(/^M <= .*\n/m, '')
    const cwd = folderWith({ 'bare.md': bare })
    const margins = await undercroft(['vary', 'bare.md'], { cwd })
    expect([margins.status, margins.stdout]).toEqual([0, expect.stringContaining('The notebook has no check')])
    expect(margins.stdout).not.toContain('in the whole search')
    const samples = await undercroft(['vary', 'bare.md', '--samples', '10'], { cwd })
    expect(samples.stdout).toContain('10 samples: the notebook has no check; no method refused')
  })

  it('says what is wrong with how it was called, and ends with 2', async () => {
    const cwd = folderWith({ 'roof.md': ranged, 'plain.md': sound, 'bar.md': sound + barred })
    const wrong = [
      {
        args: ['bar.md', '--sweep', 'bars.one=10 mm..16 mm'],
        says: '`bars.one` is not swept: `wall.bar_size` takes it',
      },
      { args: ['roof.md', '--ranges', '--samples', '10'], says: 'studies of their own' },
      { args: ['roof.md', '--svg', 'x.svg'], says: '`--svg` draws the answer of' },
      { args: ['roof.md', '--latin'], says: 'Add `--samples N`' },
      { args: ['roof.md', '--seed', '3'], says: '`--seed` is a way to draw samples' },
      { args: ['roof.md', '--ranges', '--spread', 'uniform'], says: '`--spread` is a way to draw samples' },
      { args: ['roof.md', '--samples', '9', '--coverage', '90'], says: 'Add `--spread normal`' },
      { args: ['roof.md', '--coverage', '90'], says: '`--coverage` is a way to draw samples' },
      { args: ['roof.md', '--samples', '9', '--spread', 'normal', '--coverage', '100'], says: 'from 1 to 99.9' },
      { args: ['roof.md', '--sweep', 'site.spam=1..2'], says: 'The nearest is `site.span`' },
      {
        args: ['roof.md', '--samples', '10000000', '--on', ...Array(20).fill('strip.M')],
        says: '10000000 samples of 20 numbers each are more than can be kept\nDraw at most 5000000',
      },
      { args: ['roof.md', '--on', 'strip.Q'], says: 'No value and no check with a ratio is called `strip.Q`' },
      { args: ['roof.md', '--sweep', 'strip.M=1..2'], says: 'No assumption that is a number is called `strip.M`' },
      { args: ['roof.md', '--sweep', 'site.span=1 kPa..2 m'], says: '`1 kPa` is no value that `site.span` could have' },
      { args: ['roof.md', '--sweep', 'site.span=2 m..2 m'], says: 'from one value to another' },
      { args: ['roof.md', '--sweep', 'site.span'], says: 'is no sweep' },
      { args: ['roof.md', '--sweep', 'site.span=1..2/1'], says: '2 to 1000 places' },
      { args: ['roof.md', '--samples', '0'], says: 'a whole number from 1 to' },
      { args: ['plain.md', '--samples', '10'], says: 'No assumption states a range' },
    ]
    for (const { args, says } of wrong) {
      const { status, stdout, stderr } = await undercroft(['vary', ...args], { cwd })
      expect([args, status, stdout]).toEqual([args, 2, ''])
      expect(stderr).toContain(says)
    }
  })
})
