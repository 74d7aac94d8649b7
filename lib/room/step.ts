import { createAirPath } from './airPath.ts';
import type { RoomModel } from './compile.ts';
import {
  AIR,
  AIR_HEAT,
  CONSTANT,
  INPUTS,
  INTERNAL,
  MASS,
  OPAQUE_SUN,
  OUTDOOR,
  RADIANT,
  SUN,
  TRANSMISSION,
} from './network.ts';
import { endOf, reading } from './reading.ts';
import type { HeatBalance, RoomInput, RoomState, RoomStep, SteppingRoom } from './stepping.ts';
import type { HeatingOrCooling } from './types.ts';

/** A room that is stepped hour by hour, so that blinds can answer to its temperature. */
export function createRoom(model: RoomModel): SteppingRoom {
  const { response: r, people, appliances, room } = model;
  const n = r.count;
  const air = reading(r, [AIR, 1]);
  const operative = reading(r, [AIR, model.airWeight], [RADIANT, 1 - model.airWeight]);
  const mass = reading(r, [MASS, 1]);
  const loss = reading(r, [TRANSMISSION, 1]);
  // Inputs in the order of network.ts.
  const [airPerWatt, airSun, airInternal, airOutdoor, airOpaque, airConstant] = air.part;
  const [perWatt, bySun, byInternal, byOutdoor, byOpaque, byConstant] = operative.part;
  const [massPerWatt, massSun, massInternal, massOutdoor, massOpaque, massConstant] = mass.part;
  const inputs = Array.from({ length: INPUTS }, (_, input) => input);
  // Per mode, side by side as the loops below take them.
  const reads = interleave([air.memory, operative.memory, mass.memory]);
  const drives = interleave([r.keep, ...inputs.map((input) => endOf(r, input))]);
  const heat = limits(room.heating, -Infinity);
  const cool = limits(room.cooling, Infinity);
  const path = createAirPath(model);

  const x = new Float64Array(n);
  const before = new Float64Array(n);
  const given = new Float64Array(INPUTS);
  given[CONSTANT] = 1;
  const out: RoomStep = {
    air: 0,
    operative: 0,
    mass: 0,
    heating: 0,
    cooling: 0,
    airing: 0,
    airConductance: 0,
  };

  function step(hour: number, input: RoomInput): RoomStep {
    const { sun, outdoor, opaqueSun } = input;
    const internal = people[hour] + appliances[hour];
    let freeAir =
      airSun * sun +
      airInternal * internal +
      airOutdoor * outdoor +
      airOpaque * opaqueSun +
      airConstant;
    let free =
      bySun * sun + byInternal * internal + byOutdoor * outdoor + byOpaque * opaqueSun + byConstant;
    let freeMass =
      massSun * sun +
      massInternal * internal +
      massOutdoor * outdoor +
      massOpaque * opaqueSun +
      massConstant;
    for (let k = 0, i = 0; k < n; k++, i += 3) {
      const xk = x[k];
      freeAir += reads[i] * xk;
      free += reads[i + 1] * xk;
      freeMass += reads[i + 2] * xk;
    }

    // Air from outside gives H (outdoor - air) with air = freeAir + perWatt x heat: solved for heat.
    const conductance = path.solve(hour, freeAir, airPerWatt, input);
    const damped = 1 + airPerWatt * conductance;
    const fromOutside = (conductance * (outdoor - freeAir)) / damped;
    const power = needed(free + perWatt * fromOutside, perWatt / damped);
    const toAir = fromOutside + power / damped;

    for (let k = 0, i = 0; k < n; k++, i += 7) {
      const xk = x[k];
      before[k] = xk;
      x[k] =
        drives[i] * xk +
        drives[i + 1] * toAir +
        drives[i + 2] * sun +
        drives[i + 3] * internal +
        drives[i + 4] * outdoor +
        drives[i + 5] * opaqueSun +
        drives[i + 6];
    }
    given[AIR_HEAT] = toAir;
    given[SUN] = sun;
    given[INTERNAL] = internal;
    given[OUTDOOR] = outdoor;
    given[OPAQUE_SUN] = opaqueSun;
    out.air = freeAir + airPerWatt * toAir;
    out.operative = free + perWatt * toAir;
    out.mass = freeMass + massPerWatt * toAir;
    out.heating = power > 0 ? power : 0;
    out.cooling = power < 0 ? -power : 0;
    out.airing = path.flow();
    out.airConductance = conductance;
    return out;
  }

  /** Heating (positive) or cooling the set-points ask for, W. */
  function needed(operativeWithout: number, risePerWatt: number): number {
    if (operativeWithout < heat.setPoint) {
      return Math.min((heat.setPoint - operativeWithout) / risePerWatt, heat.maxPower);
    }
    if (operativeWithout > cool.setPoint) {
      return -Math.min((operativeWithout - cool.setPoint) / risePerWatt, cool.maxPower);
    }
    return 0;
  }

  function balance(target: HeatBalance): HeatBalance {
    let transmission = 0;
    let storage = 0;
    for (let u = 0; u < INPUTS; u++) transmission += loss.part[u] * given[u];
    for (let k = 0; k < n; k++) {
      transmission += loss.memory[k] * before[k];
      storage += r.heat[k] * (x[k] - before[k]);
    }
    target.sun = given[SUN];
    target.internal = given[INTERNAL];
    target.heating = out.heating;
    target.cooling = out.cooling;
    target.air = out.airConductance * (given[OUTDOOR] - out.air);
    target.transmission = transmission;
    target.storage = storage;
    return target;
  }

  function reset(start: RoomState | number): void {
    if (typeof start === 'number') {
      for (let k = 0; k < n; k++) x[k] = r.heat[k] * start;
      path.open.fill(0);
    } else {
      x.set(start.modes);
      path.open.set(start.open);
    }
  }

  reset(20);
  return {
    model,
    last: out,
    reset,
    state: () => ({ modes: x.slice(), open: path.open.slice() }),
    step,
    balance,
  };
}

/** Columns laid side by side: all values of mode 0, then of mode 1 and so on. */
function interleave(columns: Float64Array[]): Float64Array {
  const width = columns.length;
  return new Float64Array(width * columns[0].length).map(
    (_, at) => columns[at % width][Math.floor(at / width)],
  );
}

function limits(device: HeatingOrCooling | undefined, never: number) {
  return {
    setPoint: device?.setPoint ?? never,
    maxPower: device === undefined ? 0 : (device.maxPower ?? Infinity),
  };
}
