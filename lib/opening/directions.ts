import { gaussLegendre } from './gauss.ts';

const RAD = Math.PI / 180;

/**
 * Directions are named by two angles about the horizontal axis that lies in the plane: theta from
 * that axis (0 to the right, 180 to the left) and the profile angle p about it (0 square to the
 * plane, 90 straight up it). In plane coordinates s = (cos theta, sin theta sin p, sin theta cos p),
 * and the plane's irradiance by a radiance L is L sin^2 theta d(theta) d(sin p). The horizon is the
 * line p = tilt - 90, so sky and ground are whole strips of p.
 */
export interface Patch {
  theta: number;
  profile: number;
  /** View factor of the patch from an open plane. */
  weight: number;
  /** The patch's edges: theta in radians, v = sin p. */
  theta0: number;
  theta1: number;
  v0: number;
  v1: number;
}

/** Points in theta on each side of the middle, where the far jamb changes sides. */
const ACROSS = 9;
/** Points in v = sin p for each unit of it: -1 to 1 spans the hemisphere. */
const UP = 11;

/**
 * Gauss-Legendre patches of the sky's or the ground's half of what a plane of this tilt faces. The
 * weights add up to (1 + cos tilt) / 2 for the sky and (1 - cos tilt) / 2 for the ground.
 */
export function patches(half: 'sky' | 'ground', tilt: number): Patch[] {
  const horizon = -Math.cos(tilt * RAD);
  const [from, to] = half === 'sky' ? [horizon, 1] : [-1, horizon];
  // Head and sill change parts at p = 0: a rule must not straddle it.
  const cuts = from < 0 && to > 0 ? [from, 0, to] : [from, to];
  const list: Patch[] = [];
  for (let c = 1; c < cuts.length; c++) {
    const span = cuts[c] - cuts[c - 1];
    if (span < 1e-12) continue;
    const up = gaussLegendre(Math.max(3, Math.ceil(UP * span)));
    let v0 = cuts[c - 1];
    for (let j = 0; j < up.x.length; j++) {
      const v1 = v0 + (up.w[j] / 2) * span;
      const v = cuts[c - 1] + ((1 + up.x[j]) / 2) * span;
      for (const column of columns()) {
        const { theta, theta0, theta1 } = column;
        const weight = (column.weight * (v1 - v0)) / Math.PI;
        list.push({ theta, profile: Math.asin(v), weight, theta0, theta1, v0, v1 });
      }
      v0 = v1;
    }
  }
  return list;
}

/** A piece of the horizon's line; the weights add up to 1. */
export interface HorizonPiece {
  theta: number;
  theta0: number;
  theta1: number;
  weight: number;
}

/** The horizon in front of a plane, weighted by the cosine of incidence, evenly spread in cos theta. */
export function horizonPieces(): HorizonPiece[] {
  const rule = gaussLegendre(ACROSS);
  const list: HorizonPiece[] = [];
  for (const side of [1, -1]) {
    let u0 = side > 0 ? 1 : 0;
    for (let i = 0; i < ACROSS; i++) {
      const u1 = u0 - rule.w[i] / 2;
      const u = (side > 0 ? 1 : 0) - (1 + rule.x[i]) / 2;
      const weight = rule.w[i] / 4;
      list.push({
        theta: Math.acos(u),
        theta0: Math.acos(clip(u0)),
        theta1: Math.acos(clip(u1)),
        weight,
      });
      u0 = u1;
    }
  }
  return list;
}

interface Column {
  theta: number;
  theta0: number;
  theta1: number;
  /** Integral of sin^2 theta over the column. */
  weight: number;
}

let kept: Column[] | undefined;

function columns(): Column[] {
  if (kept) return kept;
  const rule = gaussLegendre(ACROSS);
  const list: Column[] = [];
  const quarter = Math.PI / 2;
  for (const begin of [0, quarter]) {
    const raw = Array.from(rule.x, (x, i) => {
      const theta = begin + ((1 + x) / 2) * quarter;
      return { theta, weight: (rule.w[i] / 2) * quarter * Math.sin(theta) ** 2 };
    });
    const sum = raw.reduce((s, c) => s + c.weight, 0);
    let theta0 = begin;
    raw.forEach(({ theta, weight }, i) => {
      const theta1 = theta0 + (rule.w[i] / 2) * quarter;
      list.push({ theta, theta0, theta1, weight: (weight * Math.PI) / 4 / sum });
      theta0 = theta1;
    });
  }
  kept = list;
  return list;
}

function clip(u: number): number {
  return Math.max(-1, Math.min(1, u));
}
