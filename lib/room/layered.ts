import {
  AIR,
  AIR_HEAT,
  INPUTS,
  INTERNAL,
  MASS,
  OPAQUE_SUN,
  RADIANT,
  SUN,
  TRANSMISSION,
  emptyNetwork,
  join,
  joinBoundary,
  type Network,
} from './network.ts';
import { roomSurfaces, type Surface } from './surfaces.ts';
import type { MassLayer, Room, RoomOpening } from './types.ts';

/** Inside coefficients, W/m2K: convection at a wall and long-wave radiation, EN ISO 52016-1:2017, table 25 (from memory). */
export const CONVECTION = 2.5;
export const RADIATION = 5.13;

/** Heat capacity of air and furniture per floor area, J/m2K: EN ISO 52016-1:2017, table B.17 (from memory). */
export const FURNITURE_CAPACITY = 10_000;

/** Share of the sun that goes to the air at once: EN ISO 52016-1:2017, table B.11 (from memory). */
export const SUN_TO_AIR = 0.1;
/** Share of the gains of people and appliances that goes to the air: EN ISO 13790:2008, C.2. */
export const INTERNAL_TO_AIR = 0.5;

/**
 * The room as layered surfaces that exchange heat with the air by convection and with each other
 * by radiation through one mean radiant node, in the manner of EN ISO 52016-1:2017, 6.5.6: layers
 * cut into slices, windows without mass, air and furniture one node.
 */
export function layeredNetwork(
  room: Room,
  openings: readonly RoomOpening[],
  ground: number,
): Network {
  const surfaces = roomSurfaces(room, openings, ground);
  const slices = surfaces.map((s) => s.layers.map(sliceCount));
  const starts: number[] = [];
  let next = 2;
  for (const counts of slices) {
    starts.push(next);
    next += 1 + counts.reduce((a, b) => a + b, 0);
  }
  const net = emptyNetwork(next);
  const air = 0;
  const radiant = 1;
  net.capacity[air] = (FURNITURE_CAPACITY * room.floorArea) / 3600;
  surfaces.forEach((surface, s) => {
    const start = starts[s];
    join(net, start, air, CONVECTION * surface.area);
    join(net, start, radiant, RADIATION * surface.area);
    const back = addLayers(net, start, surface, slices[s]);
    for (const b of surface.backing) {
      joinBoundary(net, back, b.conductance, b.outdoor ? 1 : 0, b.outdoor ? 0 : b.temperature);
    }
  });
  joinBoundary(net, air, room.thermalBridges, 1, 0);
  addGains(net, surfaces, starts);
  addOpaqueSun(net, surfaces, starts, slices);
  readTemperatures(net, air, radiant);
  return net;
}

/** Slices of a layer: thick enough to count, thin enough to follow a quarter of an hour. */
function sliceCount(layer: MassLayer): number {
  const diffusivity = layer.conductivity / (layer.density * layer.specificHeat);
  return Math.min(8, Math.max(1, Math.ceil(layer.thickness / Math.sqrt(diffusivity * 7200))));
}

/** Chains the slices behind a surface node, half a slice's capacity at each face; gives the last node. */
function addLayers(net: Network, start: number, surface: Surface, counts: number[]): number {
  let node = start;
  surface.layers.forEach((layer, l) => {
    const depth = layer.thickness / counts[l];
    const half = (0.5 * depth * layer.density * layer.specificHeat * surface.area) / 3600;
    for (let i = 0; i < counts[l]; i++) {
      join(net, node, node + 1, (layer.conductivity * surface.area) / depth);
      net.capacity[node] += half;
      net.capacity[node + 1] += half;
      node++;
    }
  });
  return node;
}

function addGains(net: Network, surfaces: Surface[], starts: number[]): void {
  const area = surfaces.reduce((sum, s) => sum + s.area, 0);
  const weight = surfaces.reduce((sum, s) => sum + s.sunWeight * s.area, 0);
  net.gain[AIR_HEAT] = 1;
  net.gain[SUN] = SUN_TO_AIR;
  net.gain[INTERNAL] = INTERNAL_TO_AIR;
  surfaces.forEach((surface, s) => {
    const row = starts[s] * INPUTS;
    net.gain[row + SUN] = ((1 - SUN_TO_AIR) * surface.sunWeight * surface.area) / weight;
    net.gain[row + INTERNAL] = ((1 - INTERNAL_TO_AIR) * surface.area) / area;
  });
}

/** Sun on the opaque parts acts as a warmer boundary behind all of them alike. */
function addOpaqueSun(net: Network, surfaces: Surface[], starts: number[], slices: number[][]) {
  const backs = surfaces.map((s, i) => ({
    node: starts[i] + slices[i].reduce((a, b) => a + b, 0),
    conductance: s.glass ? 0 : sum(s.backing.filter((b) => b.outdoor).map((b) => b.conductance)),
  }));
  const total = sum(backs.map((b) => b.conductance));
  if (total === 0) return;
  for (const b of backs) net.gain[b.node * INPUTS + OPAQUE_SUN] += b.conductance / total;
  net.feed[TRANSMISSION * INPUTS + OPAQUE_SUN] = 1;
}

function readTemperatures(net: Network, air: number, radiant: number): void {
  net.read[AIR * net.nodes + air] = 1;
  net.read[RADIANT * net.nodes + radiant] = 1;
  const total = sum([...net.capacity]);
  for (let i = 0; i < net.nodes; i++) {
    net.read[MASS * net.nodes + i] = net.capacity[i] / total;
  }
}

function sum(values: number[]): number {
  return values.reduce((a, b) => a + b, 0);
}
