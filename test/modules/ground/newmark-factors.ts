/** Influence factors of a rectangle below its corner by its two sides over the depth: Chapra, Table P20.27, looked up on a page that reprints it. */
export const newmarkFactors: readonly (readonly [m: number, n: number, printed: number])[] = [
  [0.1, 1.2, 0.02926],
  [0.1, 1.4, 0.03007],
  [0.2, 1.2, 0.05733],
  [0.2, 1.4, 0.05894],
  [0.3, 1.2, 0.08323],
  [0.3, 1.4, 0.08561],
  [0.4, 1.2, 0.10631],
  [0.4, 1.4, 0.10941],
  [0.5, 1.2, 0.12626],
  [0.5, 1.4, 0.13003],
  [0.6, 1.2, 0.14309],
  [0.6, 1.4, 0.14749],
  [0.7, 1.2, 0.15703],
  [0.7, 1.4, 0.16199],
  [0.8, 1.2, 0.16843],
  [0.8, 1.4, 0.17389],
]
