/** What the diffuse share of an hour hangs on. */
export interface BrlInput {
  /** Global over extraterrestrial of the hour. */
  clearness: number;
  /** Apparent solar time, hours. */
  solarTime: number;
  /** Solar altitude, degrees. */
  altitude: number;
  /** Global over extraterrestrial of the day. */
  dailyClearness: number;
  /** Mean clearness of the hours before and after; at sunrise and sunset that of the one there is. */
  persistence: number;
}

/**
 * Exponent of the diffuse share d = 1 / (1 + exp(x)) of an hour's global by Ridley, Boland & Lauret
 * (2010), "Modelling of diffuse solar fraction with multiple predictors", Renewable Energy 35(2),
 * eq. 10, the generic model for all places; coefficients from memory.
 */
export function brlExponent(x: BrlInput): number {
  return (
    -5.38 +
    6.63 * x.clearness +
    0.006 * x.solarTime -
    0.007 * x.altitude +
    1.75 * x.dailyClearness +
    1.31 * x.persistence
  );
}
