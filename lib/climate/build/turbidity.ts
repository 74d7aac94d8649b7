/** Aerosol optical depth at 550 nm of a clean day; common practice. */
const CLEAN_AEROSOL = 0.04;

/**
 * Linke turbidity of a clean day from the dew point, degrees C, by Ineichen (2008), "Conversion
 * function between the Linke turbidity and the atmospheric water vapor and aerosol content", Solar
 * Energy 82(11), eq. 7 (coefficients from memory). The water above comes from the dew point at the
 * ground as ln w = 0.06 + 0.07 t (Reitan 1963 and Smith 1966 agree within a tenth; from memory).
 */
export function cleanTurbidity(dewPoint: number, elevation: number): number {
  const pressure = (1 - (0.0065 * elevation) / 288.15) ** -5.25588; // sea level over here
  const aerosol = 3.91 * Math.exp(0.689 * pressure) * CLEAN_AEROSOL;
  const water = 0.376 * (0.06 + 0.07 * dewPoint);
  const rest = 2 + 0.54 * pressure - 0.5 * pressure ** 2 + 0.16 * pressure ** 3;
  return Math.min(Math.max(aerosol + water + rest, 1.6), 4);
}
