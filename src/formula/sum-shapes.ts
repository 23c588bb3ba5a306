import type { Shape } from './shape.ts'

/** Sums and differences: `s` a slot, `k` a constant, `x` any function. The order of working is that of the brackets. */
// biome-ignore format: a table, one shape a line
export const sumShapes: Readonly<Record<string, Shape>> = {
  's+s': ([a, b]) => s => (s[a] as number) + (s[b] as number),
  's-s': ([a, b]) => s => (s[a] as number) - (s[b] as number),
  's+k': ([a, b]) => s => (s[a] as number) + b,
  's-k': ([a, b]) => s => (s[a] as number) - b,
  'k+s': ([a, b]) => s => a + (s[b] as number),
  'k-s': ([a, b]) => s => a - (s[b] as number),
  'x+k': ([a], [x]) => s => x(s) + a,
  'x-k': ([a], [x]) => s => x(s) - a,
  'k+x': ([a], [x]) => s => a + x(s),
  'k-x': ([a], [x]) => s => a - x(s),
  'x+s': ([a], [x]) => s => x(s) + (s[a] as number),
  'x-s': ([a], [x]) => s => x(s) - (s[a] as number),
  's+x': ([a], [x]) => s => (s[a] as number) + x(s),
  's-x': ([a], [x]) => s => (s[a] as number) - x(s),
  'x+x': (_, [x, y]) => s => x(s) + y(s),
  'x-x': (_, [x, y]) => s => x(s) - y(s),
  '(s+s)+s': ([a, b, c]) => s => (s[a] as number) + (s[b] as number) + (s[c] as number),
  '(s-s)-s': ([a, b, c]) => s => (s[a] as number) - (s[b] as number) - (s[c] as number),
  's+(s*s)': ([a, b, c]) => s => (s[a] as number) + (s[b] as number) * (s[c] as number),
  's-(s*s)': ([a, b, c]) => s => (s[a] as number) - (s[b] as number) * (s[c] as number),
  's+(k*s)': ([a, b, c]) => s => (s[a] as number) + b * (s[c] as number),
  's-(k*s)': ([a, b, c]) => s => (s[a] as number) - b * (s[c] as number),
  's+(s/k)': ([a, b, c]) => s => (s[a] as number) + (s[b] as number) / c,
  's-(s/k)': ([a, b, c]) => s => (s[a] as number) - (s[b] as number) / c,
}
