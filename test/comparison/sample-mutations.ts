const put =
  (from: string | RegExp, to: string) =>
  (body: string): string =>
    body.replace(from, to)

export interface Mutation {
  readonly says: string
  readonly do: (body: string) => string
  readonly renamed?: Readonly<Record<string, string>>
}

/** Changes of the sample sheet, each to a place of its own, so that any of them can be made together. */
export const mutations: readonly Mutation[] = [
  { says: 'assumption', do: put('cover: { value: 1.2 m', 'cover: { value: 1.35 m') },
  { says: 'assumption that decides a branch', do: put('water: { value: 2.8 m', 'water: { value: 6 m') },
  { says: 'assumption, temperature', do: put('T_soil: { value: 11 degC', 'T_soil: { value: 14 degC') },
  { says: 'assumption, word', do: put('ground: { value: type B', 'ground: { value: type C') },
  { says: 'assumption in another unit', do: put('wall: { value: 300 mm', 'wall: { value: 0.3 m') },
  { says: 'basis', do: put('basis: shear box', 'basis: shear box and vane') },
  { says: 'symbol', do: put('symbol: h_c', 'symbol: t_c') },
  { says: 'input', do: put('clear: 2.4 m', 'clear: 2.6 m') },
  { says: 'input removed', do: put('\nwater_depth: site.water\n```', '\n```') },
  { says: 'input word', do: put('corners: held down', 'corners: free') },
  { says: 'edges', do: put('edges: two adjacent edges discontinuous', 'edges: one long edge continuous') },
  { says: 'row value', do: put('thickness: 4.5 m, gamma: 19', 'thickness: 4.7 m, gamma: 19') },
  { says: 'row label', do: put('layer: gravel', 'layer: coarse gravel') },
  {
    says: 'row added',
    do: put(
      'required_factor: 500',
      '  - { layer: screed, material: concrete, thickness: 60 mm }\nrequired_factor: 500',
    ),
  },
  {
    says: 'row put in between',
    do: put(
      '  - { layer: roof slab, thickness: 350 mm, unit_weight',
      '  - { layer: membrane, thickness: 10 mm, unit_weight: 12 kN/m^3 }\n  - { layer: roof slab, thickness: 350 mm, unit_weight',
    ),
  },
  {
    says: 'row put in before others',
    do: put(
      '  - { layer: sandy',
      '  - { layer: topsoil, thickness: 0.3 m, gamma: 16 kN/m^3, phi: 28 deg }\n  - { layer: sandy',
    ),
  },
  { says: 'row taken out', do: put(/ {2}- \{ layer: fill, [^\n]*\n/, '') },
  { says: 'input out of range', do: put('swell: 0.25', 'swell: 25') },
  { says: 'formula', do: put('k = site.wall / 6 ', 'k = site.wall / 5 ') },
  { says: 'remark', do: put('# from the wall', '# of the wall, from soil and water') },
  { says: 'check', do: put('e <= k  ', '2 * e <= k  ') },
  { says: 'check added', do: put('T_in <= 24 degC', 'T_in <= 24 degC\nT_in >= 5 degC') },
  { says: 'step removed', do: put('half = 0.5 ', 'half_2 = 0.25 ') },
  { says: 'table', do: put('2 m, 0.6; 4 m, 0.5', '2 m, 0.7; 4 m, 0.5') },
  { says: 'comment', do: put('roof: 350 mm\nclear', 'roof: 350 mm # as drawn\nclear') },
  { says: 'module', do: put(/calc halving-layers shield/, 'calc roof-load shield') },
  { says: 'prose', do: body => `${body}\nMore is said here.\n` },
  { says: 'work block renamed', do: put('work thrust', 'work wall_thrust'), renamed: { wall_thrust: 'thrust' } },
  {
    says: 'calc block renamed',
    do: body => body.replace('roof-load loads', 'roof-load roof_weight').replaceAll('loads.w_u', 'roof_weight.w_u'),
    renamed: { roof_weight: 'loads' },
  },
  {
    says: 'assume block renamed',
    do: body => body.replace('assume site', 'assume ground').replaceAll('site.', 'ground.'),
    renamed: { ground: 'site' },
  },
]
