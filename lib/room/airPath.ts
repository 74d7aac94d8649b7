import { airingSpeed, STACK } from './airing.ts';
import type { RoomModel } from './compile.ts';
import type { RoomInput } from './stepping.ts';

/** Newton's steps come down from above on a rising convex curve: three or four do. */
const NEWTON_STEPS = 12;
/** A last move this small leaves an error of about its square, K. */
const CLOSE_ENOUGH = 1e-3;

/** Decides each hour which air comes in. */
export interface AirPath {
  /** 1 for each airing rule that stands open at the end of the last hour. */
  readonly open: Uint8Array;
  /**
   * Heat carried by all the air of the hour per kelvin between outside and inside, W/K.
   *
   * @param hour of the year
   * @param free mean air temperature of the hour if no air came in, C
   * @param perWatt rise of that mean for one watt taken by the air, K/W
   */
  solve(hour: number, free: number, perWatt: number, input: RoomInput): number;
  /** Flow through opened sashes in the last hour, m3/s. */
  flow(): number;
}

/**
 * The air that comes in during an hour, solved with the hour's own mean air temperature, so that
 * neither bypass nor sashes flutter: both cool no further than to the temperature at which they
 * shut, being open for part of the hour. A sash opens by the temperature the room would have with
 * it shut; its flow follows the difference that remains with it open.
 */
export function createAirPath(model: RoomModel): AirPath {
  const { rules, exchange, occupied, airHeatCapacity } = model;
  const { infiltration, recovered, bypassed } = exchange;
  const bypassAbove = model.room.ventilation.bypassAbove ?? Infinity;
  const count = model.openings.length;
  const heights = Float64Array.from(model.openings, (o) => o.airing.height);
  const open = new Uint8Array(rules.length);
  const areas = new Float64Array(count);
  const owner = new Int16Array(count);
  let flow = 0;

  /** Airing conductance of the open sashes at a difference inside - outside, W/K. */
  function sashes(difference: number, wind: number): number {
    let sum = 0;
    for (let o = 0; o < count; o++) {
      if (areas[o] > 0) sum += areas[o] * airingSpeed(wind, heights[o], difference);
    }
    return 0.5 * airHeatCapacity * sum;
  }

  /** Difference inside - outside with the sashes open, from the one with them shut, both above 0. */
  function aired(shut: number, perWatt: number, wind: number): number {
    const half = 0.5 * airHeatCapacity * perWatt;
    let d = shut;
    for (let i = 0; i < NEWTON_STEPS; i++) {
      let value = 0;
      let slope = 0;
      for (let o = 0; o < count; o++) {
        if (areas[o] === 0) continue;
        const speed = airingSpeed(wind, heights[o], d);
        value += areas[o] * speed;
        slope += (areas[o] * STACK * heights[o]) / speed;
      }
      const move = (d + half * value * d - shut) / (1 + half * (value + 0.5 * slope * d));
      d -= move;
      if (move < CLOSE_ENOUGH) break;
    }
    return d;
  }

  /** Opens the sashes of rule i that earlier rules have left shut. */
  function claim(i: number, hour: number, factor: Float64Array): void {
    const { rule, turned, tilted } = rules[i];
    const tilt = rule.position === 'tilt' || (occupied[hour] === 0 && rule.whenVacant === 'tilt');
    const area = tilt ? tilted : turned;
    for (let o = 0; o < count; o++) {
      if (areas[o] > 0 || area[o] === 0) continue;
      areas[o] = area[o] * factor[o];
      owner[o] = i;
    }
  }

  function release(i: number): void {
    for (let o = 0; o < count; o++) if (areas[o] > 0 && owner[o] === i) areas[o] = 0;
  }

  function allowed(i: number, hour: number, wind: number): boolean {
    const { rule, allowed: inTime } = rules[i];
    if (inTime[hour] === 0 || (occupied[hour] === 0 && rule.whenVacant === 'closed')) return false;
    return wind < (rule.windLimit ?? Infinity);
  }

  /** Conductance with the heat recovery passed by as far as needed, W/K. */
  function ventilated(gap: number, outdoor: number, perWatt: number): number {
    const always = infiltration + recovered;
    if (gap <= 0 || bypassAbove === Infinity) return always;
    const most = infiltration + bypassed;
    if (bypassAbove <= outdoor) return most;
    const needed = (gap / (bypassAbove - outdoor) - 1) / perWatt;
    return Math.min(Math.max(always, needed), most);
  }

  function solve(hour: number, free: number, perWatt: number, input: RoomInput): number {
    const { outdoor, wind, flowFactor } = input;
    const gap = free - outdoor;
    let steady = ventilated(gap, outdoor, perWatt);
    flow = 0;
    if (rules.length === 0) return steady;

    const without = steady;
    for (let o = 0; o < count; o++) areas[o] = 0;
    let difference = gap / (1 + perWatt * steady);
    for (let i = 0; i < rules.length; i++) {
      const { openAbove, closeBelow, margin } = rules[i].rule;
      const inside = outdoor + difference;
      const wanted =
        open[i] === 1
          ? inside > closeBelow && difference > 0
          : inside >= openAbove && difference >= margin;
      open[i] = 0;
      if (!wanted || !allowed(i, hour, wind)) continue;
      claim(i, hour, flowFactor);
      const damped = 1 + perWatt * steady;
      const aim = aired(gap / damped, perWatt / damped, wind);
      if (outdoor + aim >= closeBelow) {
        open[i] = 1;
        difference = aim;
        continue;
      }
      release(i);
      difference = closeBelow - outdoor;
      steady = (gap / difference - 1) / perWatt - sashes(difference, wind);
    }
    const total = steady + sashes(difference, wind);
    flow = (total - without) / airHeatCapacity;
    return total;
  }

  return { open, solve, flow: () => flow };
}
