import type { Data } from 'unified'
import { isMentionName, isNoticeName } from './our-directives.ts'

type Extension = NonNullable<Data['micromarkExtensions']>[number]
type Construct = Exclude<NonNullable<NonNullable<Extension['text']>[string]>, readonly unknown[]>
type Tokenizer = Construct['tokenize']
type State = ReturnType<Tokenizer>
type Code = Parameters<State>[0]

const colon = 58
const letters = { first: 97, last: 122 }
const longestName = 8

/**
 * Returns remark-directive's syntax narrowed to the directives of ours, so that every other text with a colon is read as
 * if there were no directives at all: `:value[`, `:see[`, `:cite[` and `:value{` in a sentence, `:::caution` and `:::hold`.
 */
export function narrowDirectives(extension: Extension): Extension {
  const mention = constructs(extension.text).map(construct => onlyAfter(construct, opensMention))
  const notice = constructs(extension.flow)
    .slice(0, 1)
    .map(construct => onlyAfter(construct, opensNotice))
  return { text: { [colon]: mention }, flow: { [colon]: notice } }
}

function constructs(map: Extension['text']): readonly Construct[] {
  const found = map?.[String(colon)] ?? []
  return Array.isArray(found) ? found : [found]
}

type Opens = (colons: number, name: string, next: Code) => boolean

const opensMention: Opens = (colons, name, next) =>
  colons === 1 && isMentionName(name) && (next === '['.charCodeAt(0) || next === '{'.charCodeAt(0))

const opensNotice: Opens = (colons, name, next) => colons >= 3 && isNoticeName(name) && !continuesName(next)

const continuesName = (code: Code): boolean =>
  code !== null && code > 0 && /[\p{L}\p{N}_-]/u.test(String.fromCodePoint(code))

function onlyAfter(construct: Construct, opens: Opens): Construct {
  const tokenize: Tokenizer = function (effects, ok, nok) {
    const go = construct.tokenize.call(this, effects, ok, nok)
    return effects.check({ tokenize: opening(opens), partial: true }, go, nok)
  }
  return { ...construct, tokenize }
}

/** Looks ahead over colons and letters, and decides at the first other character. */
function opening(opens: Opens): Tokenizer {
  return (effects, ok, nok) => {
    let colons = 0
    let name = ''
    const start: State = code => {
      effects.enter('data')
      return inColons(code)
    }
    const inColons: State = code => {
      if (code !== colon) return inName(code)
      effects.consume(code)
      colons += 1
      return inColons
    }
    const inName: State = code => {
      if (code === null || code < letters.first || code > letters.last || name.length > longestName) return decide(code)
      effects.consume(code)
      name += String.fromCharCode(code)
      return inName
    }
    const decide: State = code => {
      effects.exit('data')
      return opens(colons, name, code) ? ok(code) : nok(code)
    }
    return start
  }
}
