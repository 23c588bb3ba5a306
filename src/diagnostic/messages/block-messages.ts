import type { Rule } from '../rules.ts'
import { fence, type Message, notebook } from './message.ts'

const layers = 'layers: [{ layer: cover, material: packed earth, thickness: 450 mm }]'

export const blockMessages = {
  'block-name': {
    means:
      'The first line of a block is `assume NAME`, `calc MODULE NAME` or `work NAME`. The name is how everything else refers to the block: small letters, digits and `_`, a letter first. A block without a usable name is not evaluated.',
    example: notebook(fence('assume Site-Data', 'cover: { value: 1.8 m, basis: survey }')),
    instead: 'Write for instance `assume site_data`.',
    stage: 'reader',
  },
  'block-kind': {
    means:
      'The first word of a fence is nearly `assume`, `calc` or `work`, and the rest looks like such a block. As it stands it is somebody else’s code and is not evaluated, which the author hardly meant.',
    example: notebook(fence('works thrust', 'e = 120 mm')),
    instead:
      'Write `assume`, `calc` or `work`. Code that is shown only, not evaluated, can have any other first word, such as `text`.',
    stage: 'reader',
  },
  'block-duplicate': {
    means: 'Two blocks have one name, so `name.value` could mean either. The second is not evaluated.',
    example: notebook(fence('work thrust', 'e = 120 mm'), '', fence('work thrust', 'k = 50 mm')),
    instead: 'Give the second block a name of its own.',
    stage: 'reader',
  },
  'yaml-syntax': {
    means:
      'The lines of an `assume` or `calc` block, or of the title block, are `key: value` lines of YAML, and here they cannot be read. Only the first such place of a block is reported: what follows from it would only confuse. Common causes: `: ` inside a value; no blank after a colon; a value that begins with `` ` ``, `@`, `%`, `>` or `|`; a tab as indent; a quote or bracket that is not closed.',
    example: notebook(fence('assume site', 'cover: { value: 1.8 m, basis: @survey }')),
    instead: "Put a value with such characters in single quotes: `basis: '@survey'`.",
    stage: 'reader',
  },
  'yaml-feature': {
    means:
      'YAML has anchors (`&a`), aliases (`*a`), merged maps (`<<`), tags (`!x`) and several documents in one file (`---`). Notebooks do not use them: a reviewer must be able to read each value where it stands.',
    example: notebook(
      fence('assume site', 'cover: { value: 1.8 m, basis: &a survey }', 'depth: { value: 3.2 m, basis: *a }'),
    ),
    instead: 'Write each value out, or put a value that begins with such a character in single quotes.',
    stage: 'reader',
  },
  'key-duplicate': {
    means: 'A key is given twice in one block, map or title block. Only the first counts.',
    example: notebook(
      fence('assume site', 'cover: { value: 1.8 m, basis: survey }', 'cover: { value: 2.1 m, basis: survey }'),
    ),
    instead: 'Keep one of the two, or give the second another name.',
    stage: 'reader',
  },
  'key-unknown': {
    means:
      'A row of an `assume` block, a `calc` block or a row of a list has a key that is not known there. It is not passed over: a misspelled key would silently leave a default in its place.',
    example: notebook(fence('assume site', 'cover: { value: 1.8 m, basis: survey, statu: hold }')),
    instead:
      'Write the key as it is known. An assumption has value, basis, range, status, closes, measured, evidence and symbol; `undercroft modules NAME` lists the inputs of a module.',
    stage: 'reader',
  },
  'key-missing': {
    means:
      'An assumption has no value, or a `calc` block lacks an input that its module requires and has no default for.',
    example: notebook(fence('assume site', 'cover: { basis: survey }')),
    instead:
      'Give the key with its value. Where the value is not yet known, give the best there is with `status: hold`.',
    stage: 'reader',
  },
  'value-kind': {
    means:
      'A value is of another kind than the one that stands here: a list where one value belongs, a word where a quantity belongs, nothing at all, or a range that is not `A to B`.',
    example: notebook(fence('assume site', 'depth: { value: 3.2 m, basis: survey, range: about 3 m }')),
    instead: 'Give the kind of value that the message names: `range: 2.4 m to 4.0 m`.',
    stage: 'reader',
  },
  'module-unknown': {
    means: 'A `calc` block names a module that is not in the catalogue.',
    example: notebook(fence('calc halving-layer roof', layers, 'required_factor: 500')),
    instead: 'Write the name as `undercroft modules` lists it.',
    stage: 'evaluation',
  },
  'module-other-code': {
    means:
      'A module works by a design code that the `codes` of the title block do not list, so the package would mix codes unsaid.',
    example: [
      '---',
      'title: Roof',
      'codes: [EN 1992-1-1:2004]',
      '---',
      '',
      fence(
        'calc two-way-slab roof',
        'short_span: 3.4 m',
        'long_span: 4.6 m',
        'load: 57 kN/m^2',
        'edges: all continuous',
        'corners: held down',
      ),
      '',
    ].join('\n'),
    instead:
      'Choose the module of the code that the package is designed to, or list the other code under `codes` as well.',
    stage: 'evaluation',
  },
  'choice-unknown': {
    means: 'The word is not one of the choices that the key takes.',
    example: notebook(fence('assume site', 'cover: { value: 1.8 m, basis: survey, status: holding }')),
    instead: 'Write one of the choices; the message names the nearest, and the page of the module lists them.',
    stage: 'reader',
  },
  'assumption-basis': {
    means:
      'An assumption stands in the register without saying where its value comes from. The package lists it as `no basis given`, and its cover counts it.',
    example: notebook(fence('assume site', 'cover: 1.8 m')),
    instead: 'Write `cover: { value: 1.8 m, basis: levels survey, sheet 2 }`.',
    stage: 'evaluation',
  },
  'assumption-range': {
    means:
      'An assumption lies outside the plausible range that is given for it, or the range runs backwards. Either the value or the range is wrong.',
    example: notebook(fence('assume site', 'depth: { value: 4.6 m, basis: survey, range: 2.4 m to 4.0 m }')),
    instead: 'Correct the value or the range.',
    stage: 'evaluation',
  },
} as const satisfies Partial<Record<Rule, Message>>
