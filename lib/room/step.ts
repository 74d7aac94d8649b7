import { createAirPath } from './airPath.ts';
import type { RoomModel } from './compile.ts';
import {
  AIR,
  AIR_HEAT,
  CONSTANT,
  INTERNAL,
  MASS,
  OPAQUE_SUN,
  OUTDOOR,
  RADIANT,
  SUN,
  TRANSMISSION,
} from './network.ts';
import { endOf, inputsPart, perAirWatt, reading } from './reading.ts';
import type { HeatBalance, RoomInput, RoomState, RoomStep, SteppingRoom } from './stepping.ts';
import type { HeatingOrCooling } from './types.ts';

/** A room that is stepped hour by hour, so that blinds can answer to its temperature. */
export function createRoom(model: RoomModel): SteppingRoom {
  const { response: r, people, appliances, room } = model;
  const { count: n, keep } = r;
  const air = reading(r, [AIR, 1]);
  const operative = reading(r, [AIR, model.airWeight], [RADIANT, 1 - model.airWeight]);
  const mass = reading(r, [MASS, 1]);
  const loss = reading(r, [TRANSMISSION, 1]);
  const airPerWatt = perAirWatt(air);
  const operativePerWatt = perAirWatt(operative);
  const massPerWatt = perAirWatt(mass);
  const airByMode = air.memory;
  const operativeByMode = operative.memory;
  const massByMode = mass.memory;
  const toAirEnd = endOf(r, AIR_HEAT);
  const sunEnd = endOf(r, SUN);
  const internalEnd = endOf(r, INTERNAL);
  const outdoorEnd = endOf(r, OUTDOOR);
  const opaqueEnd = endOf(r, OPAQUE_SUN);
  const constantEnd = endOf(r, CONSTANT);
  const heat = limits(room.heating, -Infinity);
  const cool = limits(room.cooling, Infinity);
  const path = createAirPath(model);

  const x = new Float64Array(n);
  const before = new Float64Array(n);
  const last = { sun: 0, internal: 0, outdoor: 0, opaqueSun: 0, toAir: 0 };
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
    let freeAir = inputsPart(air, sun, internal, outdoor, opaqueSun);
    let free = inputsPart(operative, sun, internal, outdoor, opaqueSun);
    let freeMass = inputsPart(mass, sun, internal, outdoor, opaqueSun);
    for (let k = 0; k < n; k++) {
      const xk = x[k];
      freeAir += airByMode[k] * xk;
      free += operativeByMode[k] * xk;
      freeMass += massByMode[k] * xk;
    }

    // Air from outside gives H (outdoor - air) with air = freeAir + perWatt x heat: solved for heat.
    const conductance = path.solve(hour, freeAir, airPerWatt, input);
    const damped = 1 + airPerWatt * conductance;
    const fromOutside = (conductance * (outdoor - freeAir)) / damped;
    const power = needed(free + operativePerWatt * fromOutside, operativePerWatt / damped);
    const toAir = fromOutside + power / damped;

    for (let k = 0; k < n; k++) {
      const xk = x[k];
      before[k] = xk;
      x[k] =
        keep[k] * xk +
        sunEnd[k] * sun +
        internalEnd[k] * internal +
        outdoorEnd[k] * outdoor +
        opaqueEnd[k] * opaqueSun +
        constantEnd[k] +
        toAirEnd[k] * toAir;
    }
    last.sun = sun;
    last.internal = internal;
    last.outdoor = outdoor;
    last.opaqueSun = opaqueSun;
    last.toAir = toAir;
    out.air = freeAir + airPerWatt * toAir;
    out.operative = free + operativePerWatt * toAir;
    out.mass = freeMass + massPerWatt * toAir;
    out.heating = power > 0 ? power : 0;
    out.cooling = power < 0 ? -power : 0;
    out.airing = path.flow();
    out.airConductance = conductance;
    return out;
  }

  /** Heating (positive) or cooling the set-points ask for, W. */
  function needed(operativeWithout: number, perWatt: number): number {
    if (operativeWithout < heat.setPoint) {
      return Math.min((heat.setPoint - operativeWithout) / perWatt, heat.maxPower);
    }
    if (operativeWithout > cool.setPoint) {
      return -Math.min((operativeWithout - cool.setPoint) / perWatt, cool.maxPower);
    }
    return 0;
  }

  function balance(target: HeatBalance): HeatBalance {
    const { sun, internal, outdoor, opaqueSun, toAir } = last;
    let transmission =
      inputsPart(loss, sun, internal, outdoor, opaqueSun) + perAirWatt(loss) * toAir;
    let storage = 0;
    for (let k = 0; k < n; k++) {
      transmission += loss.memory[k] * before[k];
      storage += r.heat[k] * (x[k] - before[k]);
    }
    target.sun = sun;
    target.internal = internal;
    target.heating = out.heating;
    target.cooling = out.cooling;
    target.air = out.airConductance * (outdoor - out.air);
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
    reset,
    state: () => ({ modes: x.slice(), open: path.open.slice() }),
    step,
    balance,
  };
}

function limits(device: HeatingOrCooling | undefined, never: number) {
  return {
    setPoint: device?.setPoint ?? never,
    maxPower: device === undefined ? 0 : (device.maxPower ?? Infinity),
  };
}
