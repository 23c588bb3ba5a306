/** The one meaning of each symbol that more than one module of the shielding prints, where their own words for it differ. */
export const shieldingNomenclature: Readonly<Record<string, string>> = {
  A_c: 'wall at the corner that both legs see',
  B: 'build-up factor',
  D_in: 'dose inside over the stay',
  D_out: 'dose in the open over the stay',
  K_p: 'share of the open dose rate that is left at the end of the path',
  P: 'protection factor',
  P_req: 'required protection factor',
  R_s: 'radius of the contaminated plane',
  T: 'share of the radiation that comes through',
  X_all: 'mass per area of all layers',
  alpha: 'albedo at the bend',
  alpha_g: 'dose albedo for each steradian at the bend, as the author gives it',
  n_all: 'halvings in all layers',
  rho: 'density of the layer',
  t: 'thickness of the layer',
}
