import { readFile } from 'node:fs/promises'
import { join } from 'node:path'

/** The style sheets of a package with their fonts inside them. */
export interface Assets {
  /** Faces and KaTeX's own styles, fonts as data. */
  readonly fonts: string
  /** The look of a calculation, for any page. */
  readonly sheet: string
  /** The package on sheets; what only the printed text needs; what only a screen needs. */
  readonly print: string
  readonly paper: string
  readonly screen: string
}

interface FontList {
  readonly face: string
  readonly folder: string
  readonly styles: readonly { readonly weight: number; readonly style: string }[]
  readonly subsets: readonly { readonly name: string; readonly range: string }[]
  readonly katex: string
  readonly katexStyles: string
}

/**
 * Reads the styles and fonts below a folder: `templates/` in it, and fonts either in its `fonts/` (the built program) or in its
 * `node_modules/` (the sources). Refuses (throws) where one is missing.
 */
export async function assets(root: string): Promise<Assets> {
  const template = (name: string): Promise<string> => readFile(join(root, 'templates', name), 'utf8')
  const list = JSON.parse(await template('fonts.json')) as FontList
  const [sheet, print, paper, screen, faces, katex] = await Promise.all([
    template('sheet.css'),
    template('print.css'),
    template('paper.css'),
    template('screen.css'),
    bodyFaces(root, list),
    katexStyles(root, list),
  ])
  return { fonts: `${faces}\n${katex}`, sheet, print, paper, screen }
}

async function bodyFaces(root: string, list: FontList): Promise<string> {
  const wanted = list.styles.flatMap(style => list.subsets.map(subset => ({ style, subset })))
  const faces = wanted.map(async ({ style: { weight, style }, subset: { name, range } }) => {
    const data = await font(root, list.folder, `source-serif-4-${name}-${weight}-${style}.woff2`)
    return `@font-face{font-family:"${list.face}";font-weight:${weight};font-style:${style};unicode-range:${range};src:${data}}`
  })
  return (await Promise.all(faces)).join('\n')
}

/** KaTeX's styles with each face's files replaced by its compact one as data. */
async function katexStyles(root: string, list: FontList): Promise<string> {
  const css = await firstOf([join(root, 'templates', 'katex.min.css'), join(root, 'node_modules', list.katexStyles)])
  const names = [...new Set([...css.toString('utf8').matchAll(/fonts\/([\w-]+)\.woff2/g)].map(found => found[1] ?? ''))]
  const data = new Map<string, string>()
  await Promise.all(names.map(async name => data.set(name, await font(root, list.katex, `${name}.woff2`))))
  return css
    .toString('utf8')
    .replace(/src:url\(fonts\/([\w-]+)\.woff2\)[^;}]*/g, (_, name: string) => `src:${data.get(name)}`)
}

async function font(root: string, folder: string, name: string): Promise<string> {
  const bytes = await firstOf([join(root, 'fonts', name), join(root, 'node_modules', folder, name)])
  return `url(data:font/woff2;base64,${bytes.toString('base64')}) format("woff2")`
}

async function firstOf(paths: readonly string[]): Promise<Buffer> {
  for (const path of paths) {
    const found = await readFile(path).catch(() => undefined)
    if (found) return found
  }
  throw new Error(`none of these files is there: ${paths.join(', ')}`)
}
