// Builds dist/: the program and library bundled, the types, and the files that sheets and `start` read.
import { execFileSync } from 'node:child_process'
import { cpSync, mkdirSync, readdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

const root = fileURLToPath(new URL('.', import.meta.url))
const dist = join(root, 'dist')
rmSync(dist, { recursive: true, force: true })

await build({
  absWorkingDir: root,
  entryPoints: {
    command: 'src/command/main.ts',
    index: 'src/index.ts',
    'remark-undercroft': 'src/remark-undercroft.ts',
    ...(process.argv.includes('--bench') ? { bench: 'test/bench/main.ts' } : {}),
  },
  outdir: 'dist',
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  // These find files beside themselves, so they stay packages of their own.
  external: ['puppeteer-core', '@sparticuz/chromium', 'tar-fs', 'write-file-atomic'],
  banner: {
    js: "import { createRequire as undercroftRequire } from 'node:module'; const require = undercroftRequire(import.meta.url);",
  },
  legalComments: 'none',
  logLevel: 'warning',
})

for (const folder of ['templates']) cpSync(join(root, folder), join(dist, folder), { recursive: true })
mkdirSync(join(dist, 'fonts'))
const katex = join(root, 'node_modules/katex/dist')
cpSync(join(katex, 'katex.min.css'), join(dist, 'templates', 'katex.min.css'))
for (const name of readdirSync(join(katex, 'fonts')))
  if (name.endsWith('.woff2')) cpSync(join(katex, 'fonts', name), join(dist, 'fonts', name))
const faces = join(root, 'node_modules/@fontsource/source-serif-4/files')
const wanted = /-(?:latin|latin-ext|greek)-(?:400-normal|400-italic|600-normal|700-normal)\.woff2$/
for (const name of readdirSync(faces)) if (wanted.test(name)) cpSync(join(faces, name), join(dist, 'fonts', name))

if (!process.argv.includes('--no-types')) {
  execFileSync(
    process.execPath,
    [join(root, 'node_modules/typescript/bin/tsc'), '-p', join(root, 'tsconfig.types.json')],
    { stdio: 'inherit' },
  )
}
