import type { Element, ElementContent } from 'hast'
import { type Mark, Unreadable } from './mark.ts'

/** Invisible operators and spaces that carry no meaning. */
const silent = /^[\u2061-\u2064\u200b]*$/
const thin = /^[\u2009\u202f]$/

/**
 * Reads the presentation MathML that stands on the page as marks: the printed characters, not the TeX they were set from.
 * Refuses (throws `Unreadable`) an element it does not know.
 */
export function readMath(math: Element): readonly Mark[] {
  return joinThousands(withSpaces(math))
}

/** Marks with thin spaces still among them, as the word ' '. */
function withSpaces(element: Element): Mark[] {
  const parts = element.children.filter(isElement)
  switch (element.tagName) {
    case 'math':
    case 'semantics':
    case 'mstyle':
    case 'mpadded':
      return parts.filter(part => part.tagName !== 'annotation').flatMap(withSpaces)
    case 'mrow':
      return wordOf(parts) ?? parts.flatMap(withSpaces)
    case 'mn':
      return [{ kind: 'number', text: plain(element) }]
    case 'mi':
      return letter(plain(element))
    case 'mo':
      return sign(plain(element))
    case 'mtext':
      return spoken(plain(element))
    case 'mspace':
      return []
    default:
      return structure(element.tagName, parts)
  }
}

function structure(tag: string, parts: readonly Element[]): Mark[] {
  const [first = [], second = [], third = []] = parts.map(part => joinThousands(withSpaces(part)))
  switch (tag) {
    case 'mfrac':
      return [{ kind: 'fraction', above: first, below: second }]
    case 'msqrt':
      return [{ kind: 'root', of: joinThousands(parts.flatMap(withSpaces)), degree: [] }]
    case 'mroot':
      return [{ kind: 'root', of: first, degree: second }]
    case 'msup':
    case 'mover':
      return [...base(first), { kind: 'raised', of: second }]
    case 'msub':
    case 'munder':
      return [...base(first), { kind: 'lowered', of: second }]
    case 'msubsup':
    case 'munderover':
      return [...base(first), { kind: 'lowered', of: second }, { kind: 'raised', of: third }]
    default:
      throw new Unreadable(`<${tag}>`)
  }
}

/** What is raised stands as one: several marks under one exponent are a group, unless the last alone carries it. */
function base(marks: readonly Mark[]): readonly Mark[] {
  const lone = marks.length < 2 || marks.at(-1)?.kind === 'sign' || marks.every(mark => mark.kind === 'word')
  return lone ? marks : [{ kind: 'group', of: marks }]
}

/** A row of letters is a word: `kN`; so is one with a small figure in it: `mmH2O`. */
function wordOf(parts: readonly Element[]): Mark[] | undefined {
  if (parts.length < 2 || !parts.every(isLetters)) return undefined
  const text = parts.map(part => plain(part)).join('')
  return /^[\p{L}\d]+$/u.test(text) ? [{ kind: 'word', text }] : undefined
}

function isLetters(part: Element): boolean {
  if (part.tagName === 'mi') return true
  if (part.tagName === 'mrow') return part.children.filter(isElement).every(isLetters)
  return part.tagName === 'msub' && part.children.filter(isElement).every(child => /^(mi|mn|mrow)$/.test(child.tagName))
}

function letter(text: string): Mark[] {
  if (text === '/') return [{ kind: 'sign', text }]
  return text ? [{ kind: 'word', text }] : []
}

function sign(text: string): Mark[] {
  if (silent.test(text)) return []
  return /^\p{L}+$/u.test(text) ? [{ kind: 'word', text }] : [{ kind: 'sign', text }]
}

function spoken(text: string): Mark[] {
  if (thin.test(text)) return [{ kind: 'word', text: ' ' }]
  const words = text.trim()
  return words ? words.split(/\s+/).map(word => ({ kind: 'word', text: word })) : []
}

/** `12`, thin space, `500` is one number; every other thin space is dropped. */
function joinThousands(marks: readonly Mark[]): Mark[] {
  const joined: Mark[] = []
  let space = false
  for (const mark of marks) {
    if (isSpace(mark)) {
      space = true
      continue
    }
    const last = joined.at(-1)
    const continues = space && last?.kind === 'number' && mark.kind === 'number'
    if (continues && /^\d{3}(\.|$)/.test(mark.text) && /^\d+$/.test(last.text)) {
      joined[joined.length - 1] = { kind: 'number', text: last.text + mark.text }
    } else joined.push(mark)
    space = false
  }
  return joined
}

const isSpace = (mark: Mark): boolean => mark.kind === 'word' && mark.text === ' '
const isElement = (node: ElementContent): node is Element => node.type === 'element'

function plain(element: Element): string {
  return element.children
    .map(child => (child.type === 'text' ? child.value : child.type === 'element' ? plain(child) : ''))
    .join('')
}
