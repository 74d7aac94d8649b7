import { symmetricEigen } from './eigen.ts';

/** What drives a room's network, in the order of the columns of `gain` and `feed`. */
export const AIR_HEAT = 0; // heat given to the air node, W
export const SUN = 1; // sun that came in, W
export const INTERNAL = 2; // people and appliances, W
export const OUTDOOR = 3; // outdoor temperature, C
export const OPAQUE_SUN = 4; // heat led inwards by sun on the opaque parts, W
export const CONSTANT = 5; // 1: boundaries of fixed temperature
export const INPUTS = 6;

/** What is read off it: mean temperatures and the heat led in by the envelope. */
export const AIR = 0;
export const RADIANT = 1;
export const MASS = 2;
export const TRANSMISSION = 3; // W, inwards
export const OUTPUTS = 4;

/**
 * Nodes joined by conductances: C dT/dt = -K T + gain u, y = read T + feed u. Matrices row by row.
 * Capacities in Wh/K, so that time runs in hours and powers in W.
 */
export interface Network {
  nodes: number;
  capacity: Float64Array;
  /** nodes x nodes, symmetric. */
  K: Float64Array;
  /** nodes x INPUTS */
  gain: Float64Array;
  /** OUTPUTS x nodes */
  read: Float64Array;
  /** OUTPUTS x INPUTS */
  feed: Float64Array;
}

export function emptyNetwork(nodes: number): Network {
  return {
    nodes,
    capacity: new Float64Array(nodes),
    K: new Float64Array(nodes * nodes),
    gain: new Float64Array(nodes * INPUTS),
    read: new Float64Array(OUTPUTS * nodes),
    feed: new Float64Array(OUTPUTS * INPUTS),
  };
}

/** Joins two nodes by a conductance, W/K. */
export function join(net: Network, i: number, j: number, conductance: number): void {
  const n = net.nodes;
  net.K[i * n + i] += conductance;
  net.K[j * n + j] += conductance;
  net.K[i * n + j] -= conductance;
  net.K[j * n + i] -= conductance;
}

/**
 * Joins a node to boundaries by a total conductance (W/K) whose temperature is
 * `outdoorShare` x outdoor + `fixed`; counts its heat as transmission.
 */
export function joinBoundary(
  net: Network,
  i: number,
  conductance: number,
  outdoorShare: number,
  fixed: number,
): void {
  const n = net.nodes;
  net.K[i * n + i] += conductance;
  net.gain[i * INPUTS + OUTDOOR] += conductance * outdoorShare;
  net.gain[i * INPUTS + CONSTANT] += conductance * fixed;
  net.read[TRANSMISSION * n + i] -= conductance;
  net.feed[TRANSMISSION * INPUTS + OUTDOOR] += conductance * outdoorShare;
  net.feed[TRANSMISSION * INPUTS + CONSTANT] += conductance * fixed;
}

/** The network without its nodes of no capacity, which follow the others at once. */
export function eliminateMassless(net: Network): Network {
  const { nodes: n } = net;
  const K = net.K.slice();
  const gain = net.gain.slice();
  const read = net.read.slice();
  const feed = net.feed.slice();
  for (let k = 0; k < n; k++) {
    if (net.capacity[k] > 0) continue;
    const pivot = K[k * n + k];
    for (let o = 0; o < OUTPUTS; o++) {
      const w = read[o * n + k] / pivot;
      if (w === 0) continue;
      for (let j = 0; j < n; j++) if (j !== k) read[o * n + j] -= w * K[k * n + j];
      for (let m = 0; m < INPUTS; m++) feed[o * INPUTS + m] += w * gain[k * INPUTS + m];
      read[o * n + k] = 0;
    }
    for (let i = 0; i < n; i++) {
      const w = K[i * n + k] / pivot;
      if (i === k || w === 0) continue;
      for (let j = 0; j < n; j++) if (j !== k) K[i * n + j] -= w * K[k * n + j];
      for (let m = 0; m < INPUTS; m++) gain[i * INPUTS + m] -= w * gain[k * INPUTS + m];
    }
    for (let i = 0; i < n; i++) if (i !== k) K[i * n + k] = K[k * n + i] = 0;
  }
  const kept = Array.from({ length: n }, (_, i) => i).filter((i) => net.capacity[i] > 0);
  const m = kept.length;
  const small = emptyNetwork(m);
  small.feed.set(feed);
  kept.forEach((i, a) => {
    small.capacity[a] = net.capacity[i];
    kept.forEach((j, b) => (small.K[a * m + b] = K[i * n + j]));
    for (let u = 0; u < INPUTS; u++) small.gain[a * INPUTS + u] = gain[i * INPUTS + u];
    for (let o = 0; o < OUTPUTS; o++) small.read[o * m + a] = read[o * n + i];
  });
  return small;
}

/**
 * The network in its own modes, each a single capacity: dx/dt = -rate x + drive u,
 * y = read x + feed u. `heat` is the heat stored per unit of x, Wh. Rates in 1/h, slowest first.
 */
export interface Modes {
  count: number;
  rate: Float64Array;
  /** count x INPUTS */
  drive: Float64Array;
  /** OUTPUTS x count */
  read: Float64Array;
  heat: Float64Array;
  feed: Float64Array;
}

/** Splits a network into modes (massless nodes go first). */
export function networkModes(network: Network): Modes {
  const net = eliminateMassless(network);
  const n = net.nodes;
  const root = net.capacity.map(Math.sqrt);
  const scaled = net.K.map((k, at) => k / (root[Math.floor(at / n)] * root[at % n]));
  const { values, vectors } = symmetricEigen(scaled, n);
  const order = Array.from({ length: n }, (_, k) => k).sort((a, b) => values[a] - values[b]);
  const modes: Modes = {
    count: n,
    rate: Float64Array.from(order, (k) => values[k]),
    drive: new Float64Array(n * INPUTS),
    read: new Float64Array(OUTPUTS * n),
    heat: new Float64Array(n),
    feed: net.feed,
  };
  order.forEach((column, k) => {
    for (let i = 0; i < n; i++) {
      const v = vectors[i * n + column];
      modes.heat[k] += v * root[i];
      for (let u = 0; u < INPUTS; u++) {
        modes.drive[k * INPUTS + u] += (v / root[i]) * net.gain[i * INPUTS + u];
      }
      for (let o = 0; o < OUTPUTS; o++) {
        modes.read[o * n + k] += (net.read[o * n + i] * v) / root[i];
      }
    }
  });
  return modes;
}
