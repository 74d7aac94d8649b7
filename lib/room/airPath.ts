import { airingSpeed, STACK } from './airing.ts';
import type { RoomModel } from './compile.ts';
import type { RoomInput } from './stepping.ts';

/** Newton's steps come down from above on a rising convex curve: three or four do. */
const NEWTON_STEPS = 12;
/** A last move this small (K) leaves an error of less than its square over eight differences. */
const CLOSE_ENOUGH = 0.01;

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
  // Flow follows area and height only, so sashes of one height count as one.
  const heights = Float64Array.from(new Set(model.openings.map((o) => o.airing.height)));
  const group = Uint16Array.from(model.openings, (o) => heights.indexOf(o.airing.height));
  const open = new Uint8Array(rules.length);
  const areas = new Float64Array(count);
  const owner = new Int16Array(count);
  const areaOfHeight = new Float64Array(heights.length);
  let flow = 0;

  /** Airing conductance of the open sashes at a difference inside - outside, W/K. */
  function sashes(difference: number, wind: number): number {
    let sum = 0;
    for (let g = 0; g < areaOfHeight.length; g++) {
      if (areaOfHeight[g] > 0) sum += areaOfHeight[g] * airingSpeed(wind, heights[g], difference);
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
      for (let g = 0; g < areaOfHeight.length; g++) {
        if (areaOfHeight[g] === 0) continue;
        const speed = airingSpeed(wind, heights[g], d);
        value += areaOfHeight[g] * speed;
        slope += (areaOfHeight[g] * STACK * heights[g]) / speed;
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
    gather();
  }

  function release(i: number): void {
    for (let o = 0; o < count; o++) if (areas[o] > 0 && owner[o] === i) areas[o] = 0;
    gather();
  }

  function gather(): void {
    for (let g = 0; g < areaOfHeight.length; g++) areaOfHeight[g] = 0;
    for (let o = 0; o < count; o++) areaOfHeight[group[o]] += areas[o];
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
    let difference = gap / (1 + perWatt * steady);
    let shut = true;
    for (let i = 0; i < rules.length; i++) {
      const wasOpen = open[i] === 1;
      open[i] = 0;
      if (!allowed(i, hour, wind)) continue;
      const { openAbove, closeBelow, margin } = rules[i].rule;
      const inside = outdoor + difference;
      const wanted = wasOpen
        ? inside > closeBelow && difference > 0
        : inside >= openAbove && difference >= margin;
      if (!wanted) continue;
      if (shut) areas.fill(0);
      shut = false;
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
    if (shut) return steady;
    const total = steady + sashes(difference, wind);
    flow = (total - without) / airHeatCapacity;
    return total;
  }

  return { open, solve, flow: () => flow };
}
