import type { ElementContent } from 'hast'
import { h } from 'hastscript'
import type { Workings } from '../evaluation/workings.ts'

type Place = Workings['references'][number]['cited'][number]

/** The title of the author's section that a mention in the text stands in, by the mention's anchor. */
export type Sections = ReadonlyMap<string, string>

/** So many steps that follow each other are named by the first and the last. */
const leastRun = 3

/** The places that cite a source, each once, as links: `1.02, 8.03 to 8.09, limits of 8, text, section Roof`. */
export function citedPlaces(cited: readonly Place[], sections: Sections): ElementContent[] {
  const places = runs(distinct(cited, sections)).map(run => runLinks(run, sections))
  return places.flatMap((links, index) => [...(index > 0 ? [text(', ')] : []), ...links])
}

/** One place of each name: a section of the text that cites a source twice is said once. */
function distinct(cited: readonly Place[], sections: Sections): Place[] {
  const names = cited.map(place => nameOf(place, sections))
  return cited.filter((_, index) => names.indexOf(names[index] ?? '') === index)
}

function runs(places: readonly Place[]): Place[][] {
  const found: Place[][] = []
  for (const place of places) {
    const run = found.at(-1)
    if (run && follows(run.at(-1), place)) run.push(place)
    else found.push([place])
  }
  return found
}

/** The next step of one calculation, or another row of the same step. */
function follows(before: Place | undefined, after: Place): boolean {
  const [a, b] = [stepOf(before), stepOf(after)]
  return a !== undefined && b !== undefined && a.block === b.block && (b.step === a.step || b.step === a.step + 1)
}

function stepOf(place: Place | undefined): { readonly block: string; readonly step: number } | undefined {
  const parts = /^(\d+)\.(\d+)[a-z]*$/.exec(place?.number ?? '')
  return parts ? { block: parts[1] ?? '', step: Number(parts[2]) } : undefined
}

function runLinks(run: readonly Place[], sections: Sections): ElementContent[] {
  const link = (place: Place): ElementContent => h('a', { href: `#${place.id}` }, nameOf(place, sections))
  const [first] = run
  const last = run.at(-1)
  if (first && last && run.length >= leastRun) return [link(first), text(' to '), link(last)]
  return run.flatMap((place, index) => [...(index > 0 ? [text(', ')] : []), link(place)])
}

/** A step by its number; a calculation as a whole is cited by its limits; a mention by the section it stands in. */
function nameOf({ id, number }: Place, sections: Sections): string {
  if (stepOf({ id, number })) return number
  if (/^\d+$/.test(number)) return `limits of ${number}`
  const section = sections.get(id)
  return section ? `text, section ${section}` : 'text'
}

const text = (value: string): ElementContent => ({ type: 'text', value })
