import type { Root, Yaml } from 'mdast'
import { nearestName } from '../diagnostic/nearest-name.ts'
import { checkTitle } from './check-title.ts'
import { innerText } from './inner-text.ts'
import { byteOrderMark, placeOf } from './lines.ts'
import { readYaml } from './read-yaml.ts'
import { error, type Reading } from './reading.ts'
import { titleKeys } from './title-keys.ts'
import type { Keyed, TitleBlock } from './types.ts'

/** The title block of a notebook that states nothing. */
export const blankTitle: TitleBlock = {
  title: '',
  project: '',
  number: '',
  revision: '',
  purpose: '',
  prepared: '',
  checked: '',
  approved: '',
  date: '',
  language: 'en',
  units: 'SI',
  figures: 4,
  paper: 'A4',
  codes: [],
  ranges: [],
  designBasis: [],
  coverage: [],
  revisions: [],
  references: new Map(),
}

/** Returns the title block, with the stated defaults for what is absent. Refuses unknown keys and values of another kind. */
export function readFrontMatter(tree: Root, reading: Reading): TitleBlock {
  const node = tree.children.find(child => child.type === 'yaml')
  if (node === undefined) {
    reportMissing(reading)
    return blankTitle
  }
  const { entries, whole } = readYaml(innerOf(node, reading), reading)
  const parts = entries.map(entry => readKey(entry, reading))
  const title = parts.reduce<Partial<TitleBlock>>((all, part) => Object.assign(all, part), {})
  if (whole) checkTitle(title, { entries, place: nodePlace(node, reading), reading })
  return { ...blankTitle, ...(title.units === 'US' && { paper: 'letter' }), ...title }
}

function innerOf(node: Yaml, { lines }: Reading) {
  return innerText(lines, node.value, node.position?.start.line ?? 1)
}

const nodePlace = (node: Yaml, { lines }: Reading) => {
  const offset = (node.position?.start.offset ?? 0) + byteOrderMark(lines.text)
  return placeOf(lines, offset, offset + 3)
}

function readKey({ key, value }: Keyed, reading: Reading): Partial<TitleBlock> {
  const read = titleKeys.get(key.text)
  if (read !== undefined) return read({ key: key.text, entry: value, reading })
  const near = nearestName(key.text, titleKeys.keys())
  const help = near === undefined ? `Its keys are ${[...titleKeys.keys()].join(', ')}` : `Write \`${near}\``
  error(reading, 'front-matter-key', { place: key.place, says: `The title block has no key \`${key.text}\``, help })
  return {}
}

function reportMissing(reading: Reading): void {
  const { lines } = reading
  const rule = /(^\ufeff?|[\r\n])---[ \t]*(?=[\r\n]|$)/.exec(lines.text)
  const offset = rule === null ? 0 : rule.index + (rule[1]?.length ?? 0)
  const place = placeOf(lines, offset, offset + 3)
  if (rule !== null && offset === byteOrderMark(lines.text)) {
    const says = 'The title block is opened and never closed'
    error(reading, 'fence-unclosed', { place, says, help: 'Close it with a line `---`' })
  } else if (rule !== null && lines.text.slice(0, offset).trim() === '') {
    const says = 'The title block does not stand at the head of the file'
    error(reading, 'front-matter-missing', { place, says, help: 'Put its `---` on the first line' })
  } else {
    const help = 'Begin the file with a line `---`, a line `title: ...` and a line `---`'
    error(reading, 'front-matter-missing', { place: placeOf(lines, 0), says: 'The notebook has no title block', help })
  }
}
