/**
 * Coulomb's active coefficient, vertical wall, level ground; rows by angle of friction, columns by wall friction 0, 5, ... 25 degrees.
 * Row 28 is Das, Principles of Foundation Engineering (memory); the others from the closed form, evaluated outside this project and
 * checked there against a search over trial wedges.
 */
export const coulombActive: Readonly<Record<string, readonly number[]>> = {
  26: [0.3905, 0.3722, 0.359, 0.3501, 0.3447, 0.3425],
  28: [0.361, 0.3448, 0.333, 0.3251, 0.3203, 0.3186],
  30: [0.3333, 0.3189, 0.3085, 0.3014, 0.2973, 0.2959],
  32: [0.3073, 0.2945, 0.2852, 0.2791, 0.2755, 0.2745],
  34: [0.2827, 0.2714, 0.2633, 0.2579, 0.2549, 0.2542],
  36: [0.2596, 0.2497, 0.2426, 0.2379, 0.2354, 0.235],
  38: [0.2379, 0.2292, 0.223, 0.219, 0.2169, 0.2167],
  40: [0.2174, 0.2098, 0.2045, 0.2011, 0.1994, 0.1995],
  42: [0.1982, 0.1916, 0.187, 0.1841, 0.1828, 0.1831],
}
