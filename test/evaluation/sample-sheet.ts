import { fence } from './run-text.ts'

/** The blocks of a small notebook of the field station, each a text, so that their order can be changed. */
export const sampleBlocks: Readonly<Record<string, string>> = {
  site: fence(
    'assume site',
    `
cover: { value: 1.2 m, basis: drawing SP-01, range: 1.0 m to 1.6 m, symbol: h_c }
water: { value: 2.8 m, basis: standpipe BH2, status: hold, closes: before the raft is poured, measured: 3.1 m }
gamma_soil: { value: 18.5 kN/m^3, basis: three density tests }
phi_soil: { value: 32 deg, basis: shear box }
wall: { value: 300 mm, basis: drawing SP-02 }
ground: { value: type B, basis: trial pit 2 }
T_soil: { value: 11 degC, basis: probe at 2 m }`,
  ),
  heights: fence(
    'calc levels heights',
    'cover: site.cover\ncover_required: 1.0 m\nroof: 350 mm\nclear: 2.4 m\nraft: 350 mm\nwater_depth: site.water',
  ),
  pit: fence(
    'calc battered-pit pit',
    'soil: site.ground\ndepth: heights.z_formation\nplan_length: 8.6 m\nplan_width: 5.2 m\nworking_space: 0.8 m\nswell: 0.25\nshrinkage: 0.1\nstructure_volume: 145 m^3',
  ),
  pressure: fence(
    'calc earth-pressure pressure',
    `
state: at rest
layers:
  - { layer: sandy backfill, thickness: 1.5 m, gamma: site.gamma_soil, gamma_sat: 20.5 kN/m^3, phi: site.phi_soil }
  - { layer: gravel, thickness: 4.5 m, gamma: 19 kN/m^3, gamma_sat: 21 kN/m^3, phi: site.phi_soil + 3 deg, OCR: 1.2 }
wall_top: site.cover + 0.2 m
wall_base: 4.2 m
surcharge: 10 kPa
water_depth: site.water`,
  ),
  loads: fence(
    'calc roof-load loads',
    `
layers:
  - { layer: fill, thickness: site.cover, unit_weight: site.gamma_soil }
  - { layer: roof slab, thickness: 350 mm, unit_weight: 25 kN/m^3 }
live_load: 5 kN/m^2
combination: IS 456`,
  ),
  roof: fence(
    'calc two-way-slab roof',
    'short_span: 3.4 m\nlong_span: 4.9 m - site.wall\nload: loads.w_u\nedges: two adjacent edges discontinuous\ncorners: held down',
  ),
  shield: fence(
    'calc halving-layers shield',
    `
layers:
  - { layer: cover, material: packed earth, thickness: site.cover }
  - { layer: roof slab, material: concrete, thickness: 350 mm }
required_factor: 500`,
  ),
  thrust: fence(
    'work thrust',
    `
P = pressure.P              # from the wall
e = roof.M_y_sup / P to mm     # eccentricity
k = site.wall / 6                 # edge of the middle third
half = 0.5                        # a number of its own
M_mid = roof.M_y_sup           # handed on
e <= k                            # no tension at the face
n_sum = sum(shield.n) * half
table drift = 0 m, 1.0; 2 m, 0.6; 4 m, 0.5
f = interpolate(drift, site.cover)
T_in = site.T_soil + 9 K
T_in <= 24 degC
f >= 0.2 and f <= 1
interpolate(drift, 1 m) <= 0.9
interpolate(drift, site.cover) >= 0.5 or f > 2
f_2 = 2 * interpolate(drift, 2 m) - interpolate(drift, site.water)
table gain = 0 degC, 1 kW; 20 degC, 3 kW
Q = interpolate(gain, site.T_soil)`,
  ),
  prose:
    'The roof carries :value[roof.M_y_sup] and :value[site.cover]{unit="ft" figures=3}; see :see[thrust] and :cite[statics]. Ground: :value[site.ground].\n\n',
}

export const sampleBody = (order: readonly string[] = Object.keys(sampleBlocks)): string =>
  order.map(name => sampleBlocks[name] ?? '').join('')
