/** The one meaning of each symbol that more than one module of the power supply prints, where their own words for it differ. */
export const powerNomenclature: Readonly<Record<string, string>> = {
  E_r: 'energy that is wanted of the bank',
  I_r: 'running current of all that run together',
  P_g: 'rated power of the generator',
  theta_a: 'temperature of the air',
}
