import type { Infiltration, Room, Ventilation } from './types.ts';

/** Heat capacity of a cubic metre of air at sea level, J/m3K: EN ISO 13790:2008, 9.3.1. */
const AIR_AT_SEA_LEVEL = 1200;

/** Heat capacity of a cubic metre of air, J/m3K, thinned by height as in the standard atmosphere (ISO 2533:1975). */
export function airHeatCapacity(elevation: number): number {
  return AIR_AT_SEA_LEVEL * (1 - (0.0065 * elevation) / 288.15) ** 5.2559;
}

/** Mean air changes through leaks, 1/h: n50 e (EN ISO 13789:2007, annex C). */
export function infiltrationRate(leak: Infiltration): number {
  return leak.kind === 'ach' ? leak.ach : leak.n50 * leak.shielding;
}

/** Air a ventilation brings into a room, m3/h. */
export function ventilationFlow(ventilation: Ventilation, volume: number): number {
  const { flow } = ventilation;
  return flow.kind === 'ach' ? flow.ach * volume : flow.m3PerHour;
}

/** Heat carried per kelvin by the air that always comes in, W/K. */
export interface AirExchange {
  /** Leaks. */
  infiltration: number;
  /** Ventilation with the heat recovery at work. */
  recovered: number;
  /** Ventilation with the heat recovery passed by. */
  bypassed: number;
}

export function airExchange(room: Room, heatCapacity: number): AirExchange {
  const perFlow = heatCapacity / 3600;
  const bypassed = ventilationFlow(room.ventilation, room.volume) * perFlow;
  return {
    infiltration: infiltrationRate(room.infiltration) * room.volume * perFlow,
    recovered: bypassed * (1 - room.ventilation.heatRecovery),
    bypassed,
  };
}
