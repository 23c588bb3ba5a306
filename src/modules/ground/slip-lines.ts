/** Ground under a strip, and what lies beside it, in coherent units; angles in radians. */
export interface StripGround {
  readonly phi: number
  readonly c: number
  readonly gamma: number
  /** Load on the level of the base beside the strip. */
  readonly q: number
}

/** A place in the field: across from the edge of the strip, down, mean stress, direction of the major stress from the level. */
export interface Node {
  readonly x: number
  readonly z: number
  readonly p: number
  readonly psi: number
}

/**
 * How far the field reaches beside the strip, how far it turns about the edge, and into how many parts it is cut. `sliding` is the part
 * of the reach whose slip lines end under the strip itself, where soil slides along the base; without it they all end on its axis.
 */
export interface Field {
  readonly reach: number
  readonly turn: number
  readonly sliding: number
  readonly parts: number
}

/** The turn about the edge at which soil slides along a rough base. */
export const mostTurn = ({ phi }: Pick<StripGround, 'phi'>): number => (3 * Math.PI) / 4 + phi / 2

const radius = ({ phi, c }: StripGround, p: number): number => p * Math.sin(phi) + c * Math.cos(phi)

/** The lower edge of the soil that moves down with the strip, from its edge to its axis: the base as far as soil slides on it, then a slip line. */
export function lowerEdge(ground: StripGround, field: Field): readonly Node[] {
  const { parts, turn } = field
  let ray = passive(ground, field)
  const rest = (ray[0] as Node).p
  for (let j = 1; j <= parts; j += 1) {
    const psi = (turn * j) / parts
    ray = next(ground, ray, { x: 0, z: 0, p: turned(ground, rest, psi), psi })
  }
  const edge: Node[] = [ray[0] as Node]
  for (let i = 0; i < slides(field); i += 1) {
    const start = onBase(ground, ray[1] as Node)
    edge.push(start)
    ray = next(ground, ray.slice(1), start)
  }
  return [...edge, ...ray.slice(1)]
}

const slides = ({ sliding, parts }: Field): number => (sliding > 0 ? parts / 2 : 0)

/** The first slip line from the edge, where the ground beside the strip is pushed aside. */
function passive(ground: StripGround, field: Field): readonly Node[] {
  const { phi, gamma, q, c } = ground
  const { reach, sliding, parts } = field
  const [first, slope] = [slides(field), Math.tan(Math.PI / 4 - phi / 2)]
  const rest = (q + c * Math.cos(phi)) / (1 - Math.sin(phi))
  return Array.from({ length: parts + 1 }, (_, k) => {
    const share = k < first ? (sliding * k) / first : sliding + ((1 - sliding) * (k - first)) / (parts - first)
    const x = (reach * share) / 2
    return { x, z: x * slope, p: rest + (gamma * x * slope) / (1 - Math.sin(phi)), psi: 0 }
  })
}

/** The next slip line of that family, from its first node on. */
function next(ground: StripGround, ray: readonly Node[], start: Node): readonly Node[] {
  const nodes = [start]
  for (let k = 1; k < ray.length; k += 1) nodes.push(met(ground, ray[k] as Node, nodes[k - 1] as Node))
  return nodes
}

/** Where the slip line through `a` comes up to the base, along which the soil slides. */
function onBase(ground: StripGround, a: Node): Node {
  const { phi, gamma } = ground
  const psi = mostTurn(ground)
  const one = (a.psi + psi) / 2 - (Math.PI / 4 - phi / 2)
  const x = a.x - (a.z * Math.cos(one)) / Math.sin(one)
  const fixed = gamma * (-Math.cos(phi) * a.z - Math.sin(phi) * (x - a.x)) + Math.cos(phi) * a.p
  let p = a.p
  for (let turn = 0; turn < 60; turn += 1)
    p = (fixed + (radius(ground, a.p) + radius(ground, p)) * (psi - a.psi)) / Math.cos(phi)
  return { x, z: 0, p, psi }
}

/** Mean stress at the edge itself, where the major stress has turned by an angle. */
function turned({ phi, c }: StripGround, p: number, psi: number): number {
  if (phi < 1e-9) return p + 2 * c * psi
  const pull = c / Math.tan(phi)
  return (p + pull) * Math.exp(2 * psi * Math.tan(phi)) - pull
}

/** Where the slip line of one family through `a` meets that of the other through `b`, with the stress there. */
function met(ground: StripGround, a: Node, b: Node): Node {
  const { phi, gamma } = ground
  const [mu, sin, cos] = [Math.PI / 4 - phi / 2, Math.sin(phi), Math.cos(phi)]
  let node: Node = { x: b.x, z: b.z, p: (a.p + b.p) / 2, psi: b.psi }
  for (let turn = 0; turn < 40; turn += 1) {
    const [one, other] = [(a.psi + node.psi) / 2 - mu, (b.psi + node.psi) / 2 + mu]
    const along = ((b.x - a.x) * Math.sin(other) - (b.z - a.z) * Math.cos(other)) / Math.sin(other - one)
    const x = a.x + along * Math.cos(one)
    const z = a.z + along * Math.sin(one)
    const [ra, rb] = [radius(ground, a.p) + radius(ground, node.p), radius(ground, b.p) + radius(ground, node.p)]
    const left = gamma * (cos * (z - a.z) - sin * (x - a.x)) + cos * a.p - ra * a.psi
    const right = gamma * (cos * (z - b.z) + sin * (x - b.x)) + cos * b.p + rb * b.psi
    const psi = (right - left) / (ra + rb)
    const moved = Math.abs(psi - node.psi)
    node = { x, z, p: (left + ra * psi) / cos, psi }
    if (moved < 1e-13) break
  }
  return node
}

/** Mean pressure that a rough strip bears: the stress over this edge less the weight of the soil above it. */
export function pressureOver(ground: StripGround, edge: readonly Node[]): number {
  const sigma = ({ p, psi }: Node): number => p - radius(ground, p) * Math.cos(2 * psi)
  const tau = ({ p, psi }: Node): number => radius(ground, p) * Math.sin(2 * psi)
  let force = 0
  for (let k = 1; k < edge.length; k += 1) {
    const [a, b] = [edge[k - 1] as Node, edge[k] as Node]
    const [dx, dz] = [b.x - a.x, b.z - a.z]
    force += ((tau(a) + tau(b)) / 2) * dz - ((sigma(a) + sigma(b)) / 2) * dx + (ground.gamma * (a.z + b.z) * dx) / 2
  }
  return force / Math.abs((edge[edge.length - 1] as Node).x)
}
