import { catalogOf, dictionaryIn, type Joining, type Part, put, referenceIn, rewrite } from './joining.ts'
import { FIRST_LINK } from './move-object.ts'
import { isReference, type PdfReference, type PdfValue, pdfDictionary, pdfName } from './pdf-object.ts'
import { UnreadablePdf } from './print-failure.ts'

/** The structure of a part: its root, and the one element, the document, that all others stand in. */
interface Tree {
  readonly part: Part
  readonly root: PdfReference
  readonly document: PdfReference
}

/** Makes one structure of those of the parts: all elements stand in the document of the first. */
export function joinStructure(joining: Joining): void {
  const trees = joining.parts.map(part => treeOf(joining, part))
  const [first, ...others] = trees
  if (!first) return
  const kids = trees.flatMap(tree => kidsOf(joining, tree))
  for (const tree of others) {
    for (const kid of kidsOf(joining, tree)) rewrite(joining, tree.part, { at: kid, entries: { P: first.document } })
    joining.left.add(tree.root.object).add(tree.document.object)
  }
  rewrite(joining, first.part, { at: first.document, entries: { K: kids } })
  const keys = trees.flatMap(tree => keysOf(joining, tree)).sort(([a], [b]) => a - b)
  const names = trees.flatMap(tree => namesOf(joining, tree))
  const pages = keys.findLastIndex(([key]) => key < FIRST_LINK) + 1
  rewrite(joining, first.part, {
    at: first.root,
    entries: {
      ParentTreeNextKey: pages,
      ParentTree: put(joining, pdfDictionary({ Type: pdfName('ParentTree'), Nums: keys.flat() })),
      ...(names.length > 0 ? { IDTree: put(joining, pdfDictionary({ Kids: names })) } : {}),
    },
  })
}

function treeOf(joining: Joining, part: Part): Tree {
  const root = referenceIn(joining, part, catalogOf(part), 'StructTreeRoot')
  const document = root && referenceIn(joining, part, root, 'K')
  if (!document) throw new UnreadablePdf('the structure of the PDF does not begin with one document')
  return { part, root, document }
}

function kidsOf(joining: Joining, { part, document }: Tree): readonly PdfReference[] {
  const kids = dictionaryIn(joining, part, document).entries.get('K')
  const list: readonly PdfValue[] = Array.isArray(kids) ? kids : kids === undefined ? [] : [kids]
  if (!list.every(isReference))
    throw new UnreadablePdf('something stands in the document of the PDF outside its elements')
  return list
}

/** The keys by which pages and links find their elements, and the elements. */
function keysOf(joining: Joining, { part, root }: Tree): readonly (readonly [number, PdfValue])[] {
  const tree = referenceIn(joining, part, root, 'ParentTree')
  if (!tree) return []
  joining.left.add(tree.object)
  const numbers = dictionaryIn(joining, part, tree).entries.get('Nums')
  if (!Array.isArray(numbers)) throw new UnreadablePdf('the tree of keys has another form')
  const { pages, links } = part.move
  return numbers.flatMap((key, index): [number, PdfValue][] =>
    index % 2 === 0 && typeof key === 'number'
      ? [[key + (key < FIRST_LINK ? pages : links), numbers[index + 1] ?? null]]
      : [],
  )
}

/** The parts of the tree by which elements are found by name; in their order, since the names of a part are behind those of the part before. */
function namesOf(joining: Joining, { part, root }: Tree): readonly PdfValue[] {
  const tree = referenceIn(joining, part, root, 'IDTree')
  if (!tree) return []
  joining.left.add(tree.object)
  const kids = dictionaryIn(joining, part, tree).entries.get('Kids')
  if (!Array.isArray(kids)) throw new UnreadablePdf('the tree of names has another form')
  return kids
}
