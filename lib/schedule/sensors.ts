/** What a blind's sensors read. Arrays are known by identity: change none after its first use. */
export interface Sensors {
  /** 1 while the sun is on the facade, else 0; STEPS values. */
  sunOnFacade: Uint8Array;
  /** Global irradiance on the facade, W/m2; STEPS values. */
  facadeIrradiance: Float64Array;
  /** Outdoor temperature, C; HOURS values. */
  outdoor: Float64Array;
  /** Wind at the facade, m/s; HOURS values. */
  wind: Float64Array;
}
