import type { Root } from 'hast'
import { h } from 'hastscript'
import type { PackageModel } from '../../src/sheets/package-model.ts'
import {
  assume,
  blockAt,
  calc,
  citing,
  type Made,
  mentionAt,
  modelOf,
  notice,
  see,
  value,
  work,
} from './skerry-notebook.ts'

/** A roof, a pit and a wall of the field station: every kind of line but a numerical method's own page. */
export function smallPackage(more: Partial<Made> = {}): PackageModel {
  return modelOf({
    blocks: smallBlocks(),
    body: smallBody(),
    mentions: [value('site.water_depth'), see('roof'), citing('site-report')],
    notices: [notice('hold', 'One wet season only')],
    ...more,
  })
}

export const pitInputs = {
  soil: 'type B',
  depth: '4.7 m',
  plan_length: '8.6 m',
  plan_width: '5.2 m',
  working_space: '0.8 m',
  swell: '0.25',
  shrinkage: '0.1',
}

export const smallBlocks = () => [
  assume('site', {
    water_depth: {
      value: '2.6 m',
      basis: 'standpipe BH2',
      range: ['2.0 m', '3.4 m'],
      symbol: 'z_w',
      closes: 'before the raft is poured',
    },
    cover: { value: '1.2 m' },
    short_span: { value: '3.4 m', basis: 'drawing SP-D-003', symbol: 'l_x' },
    wall: { value: '300 mm', basis: 'drawing SP-D-003', symbol: 't' },
  }),
  calc('two-way-slab', 'roof', {
    short_span: 'site.short_span',
    long_span: '4.6 m',
    load: '57 kN/m^2',
    edges: 'two adjacent edges discontinuous',
    corners: 'held down',
  }),
  calc('battered-pit', 'pit', pitInputs),
  work('thrust', [
    ['e', 'roof.M_x_mid / (600 kN/m) to mm', 'eccentricity of the thrust'],
    ['k', 'site.wall / 6', 'edge of the middle third'],
    ['', 'e <= k', 'no tension at the face'],
  ]),
  calc('roof-load', 'cover', {
    layers: [
      { layer: 'topsoil and fill', thickness: 'site.cover', unit_weight: '20 kN/m^3' },
      { layer: 'drainage gravel', thickness: '150 mm', unit_weight: '19 kN/m^3' },
      { layer: 'roof slab', thickness: '350 mm', unit_weight: '25 kN/m^3' },
    ],
    live_load: '5 kN/m^2',
    combination: 'IS 456',
  }),
]

export const smallBody = (): Root => ({
  type: 'root',
  children: [
    h('h1', 'Roof'),
    h('p', [
      'Water stands ',
      mentionAt(0),
      ' below ground; see ',
      mentionAt(1),
      ' and ',
      mentionAt(2),
      '. CO₂ and ',
      h('code.language-math.math-inline', 'q = \\gamma z'),
      '.',
    ]),
    blockAt(0),
    blockAt(1),
    h('aside', { dataUndercroftNotice: '0' }, [h('p', 'One wet season only.')]),
    h('h3', 'Pit and wall'),
    blockAt(2),
    blockAt(3),
    blockAt(4),
  ],
})
