import { lumpedMass, SURFACE_PER_FLOOR } from './mass.ts';
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
import type { Room, RoomOpening } from './types.ts';

/** Coupling of air and surface and of surface and mass, W/m2K: EN ISO 13790:2008, 7.2.2.2 and 12.2.2. */
const AIR_TO_SURFACE = 3.45;
const SURFACE_TO_MASS = 9.1;

const AIR_NODE = 0;
const SURFACE_NODE = 1;
const MASS_NODE = 2;

/**
 * The five resistances and one capacity of the simple hourly method, EN ISO 13790:2008, annex C:
 * an air node, a surface node that the windows join to outdoors, a mass node that the opaque parts
 * join to outdoors. The air that comes in acts on the air node and is left to the stepping.
 *
 * @param ground temperature under ground parts that have none of their own, C
 */
export function fiveResistanceNetwork(
  room: Room,
  openings: readonly RoomOpening[],
  ground: number,
): Network {
  const net = emptyNetwork(3);
  const { heatCapacity, massArea } = lumpedMass(room);
  const surface = SURFACE_PER_FLOOR * room.floorArea;
  const windows = openings.reduce((sum, o) => sum + o.area * o.U, 0);
  net.capacity[MASS_NODE] = heatCapacity / 3600;
  join(net, AIR_NODE, SURFACE_NODE, AIR_TO_SURFACE * surface);
  join(net, SURFACE_NODE, MASS_NODE, SURFACE_TO_MASS * massArea);
  joinBoundary(net, SURFACE_NODE, windows, 1, 0);
  const outdoor = joinOpaque(net, room, ground, SURFACE_TO_MASS * massArea);
  if (outdoor > 0) {
    net.gain[MASS_NODE * INPUTS + OPAQUE_SUN] = 1;
    net.feed[TRANSMISSION * INPUTS + OPAQUE_SUN] = 1;
  }
  addGains(net, surface, massArea, windows);
  net.read[AIR * 3 + AIR_NODE] = 1;
  net.read[RADIANT * 3 + SURFACE_NODE] = 1;
  net.read[MASS * 3 + MASS_NODE] = 1;
  return net;
}

/** Joins the mass to what lies behind the opaque parts: 1/H_em = 1/H_op - 1/H_ms; gives the outdoor part. */
function joinOpaque(net: Network, room: Room, ground: number, massCoupling: number): number {
  const paths = opaquePaths(room, ground);
  const total = paths.reduce((sum, p) => sum + p.UA, 0);
  const stretch = 1 / Math.max(1 - total / massCoupling, 0.1);
  let outdoor = 0;
  for (const path of paths) {
    joinBoundary(
      net,
      MASS_NODE,
      path.UA * stretch,
      path.outdoor ? 1 : 0,
      path.outdoor ? 0 : path.temperature,
    );
    if (path.outdoor) outdoor += path.UA;
  }
  return outdoor;
}

function opaquePaths(room: Room, ground: number) {
  const { envelope } = room;
  const bridges = { UA: room.thermalBridges, outdoor: true, temperature: 0 };
  if (envelope.kind === 'total') {
    return [
      bridges,
      { UA: envelope.UA, outdoor: true, temperature: 0 },
      { UA: envelope.groundUA ?? 0, outdoor: false, temperature: ground },
    ];
  }
  return [
    bridges,
    ...envelope.parts
      .filter((p) => p.boundary !== 'room' || p.temperature !== undefined)
      .map((p) => ({
        UA: p.area * p.U,
        outdoor: p.boundary === 'outdoor',
        temperature: p.temperature ?? ground,
      })),
  ];
}

/** Shares of the gains by equations C.1 to C.3; the rest of C.3 leaves through the windows. */
function addGains(net: Network, surface: number, massArea: number, windows: number): void {
  const toMass = massArea / surface;
  const lost = windows / (SURFACE_TO_MASS * surface);
  const toSurface = 1 - toMass - lost;
  net.gain[AIR_NODE * INPUTS + AIR_HEAT] = 1;
  net.gain[AIR_NODE * INPUTS + INTERNAL] = 0.5;
  for (const [input, share] of [
    [SUN, 1],
    [INTERNAL, 0.5],
  ]) {
    net.gain[SURFACE_NODE * INPUTS + input] = share * toSurface;
    net.gain[MASS_NODE * INPUTS + input] = share * toMass;
    net.feed[TRANSMISSION * INPUTS + input] = -share * lost;
  }
}
