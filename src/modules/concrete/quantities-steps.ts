import type { Step } from '../module.ts'
import { cite } from '../sources.ts'
import { step } from '../words.ts'

const line =
  (unit: { readonly SI: string; readonly US: string }) =>
  (name: string, formula: string, says: string, symbol = name) =>
    step(name, formula, { says, symbol, unit, source: cite('statics', 'geometry') })
const run = line({ SI: 'm', US: 'ft' })
const area = line({ SI: 'm^2', US: 'ft^2' })
const volume = line({ SI: 'm^3', US: 'yd^3' })

const box: readonly Step[] = [
  run('L_o', 'length + 2 * wall', 'length outside the walls'),
  run('W_o', 'width + 2 * wall', 'width outside the walls'),
  run('L_r', 'L_o + 2 * toe', 'length of the raft', 'L_r'),
  run('W_r', 'W_o + 2 * toe', 'width of the raft', 'B_r'),
]

const concrete: readonly Step[] = [
  volume('V_w', '(L_o * W_o - length * width) * height', 'concrete of the walls', 'V_walls'),
  volume('V_r', 'L_o * W_o * roof', 'concrete of the roof', 'V_roof'),
  volume('V_b', 'L_r * W_r * raft', 'concrete of the raft', 'V_raft'),
  volume('V_c', '(V_w + V_r + V_b) * (1 + waste_concrete)', 'concrete to order, allowance in it', 'V_conc'),
  step('m_s', '(V_w + V_r + V_b) * steel_rate * (1 + waste_steel)', {
    says: 'steel, allowance in it',
    unit: { SI: 'kg', US: 'lb' },
    source: cite('practice', 'rate on the volume'),
  }),
  volume('V_bl', 'L_r * W_r * blinding * (1 + waste_concrete)', 'blinding to order'),
  volume('V_wl', 'L_r * W_r * working_layer', 'working layer under the raft, compacted'),
  volume('V_sc', 'length * width * screed * (1 + waste_concrete)', 'screed to order'),
]

const faces: readonly Step[] = [
  area('A_in', '2 * (length + width) * height', 'forms of the inner faces of the walls'),
  area('A_out', '2 * (L_o + W_o) * (height + roof) + 2 * (L_r + W_r) * raft', 'forms of all outer faces'),
  area('A_so', 'length * width', 'forms of the roof soffit'),
  area('A_w', '2 * (L_o + W_o) * (height + roof) + L_o * W_o', 'outside of walls and roof'),
  area(
    'A_m',
    '(A_w + L_r * W_r + 2 * (L_r + W_r) * raft + L_r * W_r - L_o * W_o) * (1 + waste_sheet)',
    'membrane all round: also raft below, edges and toe',
  ),
  area('A_p', 'A_w * (1 + waste_sheet)', 'protection board on walls and roof'),
]

const earth: readonly Step[] = [
  run('z_f', 'cover + roof + height + raft + blinding + working_layer', 'depth of the pit'),
  area('A_1', '(L_r + 2 * working_space) * (W_r + 2 * working_space)', 'area of the pit at formation'),
  area(
    'A_2',
    '(L_r + 2 * working_space + batter * z_f) * (W_r + 2 * working_space + batter * z_f)',
    'area at half its depth',
  ),
  area(
    'A_3',
    '(L_r + 2 * working_space + 2 * batter * z_f) * (W_r + 2 * working_space + 2 * batter * z_f)',
    'area at ground level',
  ),
  volume('V_ex', 'z_f / 6 * (A_1 + 4 * A_2 + A_3)', 'excavation, in place'),
  volume(
    'V_s',
    'L_o * W_o * (height + roof) + L_r * W_r * (raft + blinding + working_layer)',
    'room that box, blinding and working layer take',
  ),
  volume('V_fill', 'V_ex - V_s', 'fill back to ground level, compacted'),
]

/** Prismatic sums: outline, concrete, faces, earth by the prismoid. */
export const quantitiesSteps: readonly Step[] = [...box, ...concrete, ...faces, ...earth]
