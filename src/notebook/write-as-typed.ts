import type { Nodes } from 'mdast'
import { defaultHandlers, type Options as Extension, type Handle } from 'mdast-util-to-markdown'
import type { FilledBlock } from './fill-tree.ts'
import { mentionNames, noticeNames } from './our-directives.ts'

/**
 * Returns remark-directive's writing changed in two ways: fences and references of ours come out exactly as typed, and a
 * colon is escaped only where it would begin a directive of ours. (As it comes, every `:` before a letter or a digit is
 * escaped: `1\:1.5`.)
 */
export function writeAsTyped(writing: Extension): Extension {
  const { textDirective = defaultHandlers.text } = writing.handlers ?? {}
  const unsafe = writing.unsafe ?? []
  return {
    ...writing,
    handlers: {
      ...writing.handlers,
      code: asTyped(defaultHandlers.code),
      text: asTyped(defaultHandlers.text),
      textDirective: asTyped(textDirective),
      undercroft: (node: FilledBlock) => node.data.asTyped,
    },
    unsafe: [...unsafe.filter(({ character }) => character !== ':'), ...ourColons],
  }
}

const ourColons: NonNullable<Extension['unsafe']> = [
  { character: ':', after: `(?:${mentionNames.join('|')})[\\[{]`, inConstruct: ['phrasing'] },
  { atBreak: true, character: ':', after: `:{2,}(?:${noticeNames.join('|')})` },
]

type HandleRest = Parameters<Handle> extends [unknown, ...infer Rest] ? Rest : never

function asTyped(otherwise: Handle): Handle {
  const handle = (node: Nodes, ...rest: HandleRest): string => typed(node) ?? otherwise(node, ...rest)
  return Object.assign(handle, otherwise)
}

/** The author's characters, unless another plugin has changed the node since. */
function typed(node: Nodes): string | undefined {
  const { asTyped } = node.data ?? {}
  return 'value' in node && !asTyped?.includes(node.value) ? undefined : asTyped
}
