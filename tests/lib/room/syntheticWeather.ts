import { HOURS } from '../../../lib/time/index.ts';

export interface SyntheticWeather {
  outdoor: Float64Array;
  wind: Float64Array;
  /** Sun that comes in, W. */
  sun: Float64Array;
}

/** A small generator of even numbers from 0 to 1 (mulberry32), so that every run is the same. */
export function generator(seed: number): () => number {
  let a = seed >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/**
 * Invented weather for tests: a yearly and a daily sine, day-to-day noise that lasts (0.7), and an
 * afternoon pulse of sun through a west window that the day's cloud cuts.
 */
export function syntheticWeather(mean = 10, seed = 7, peakSun = 3500): SyntheticWeather {
  const random = generator(seed);
  const outdoor = new Float64Array(HOURS);
  const wind = new Float64Array(HOURS);
  const sun = new Float64Array(HOURS);
  let anomaly = 0;
  let clear = 1;
  for (let hour = 0; hour < HOURS; hour++) {
    const day = Math.floor(hour / 24);
    const h = hour % 24;
    if (h === 0) {
      clear = random() < 0.55 ? 0.8 + 0.2 * random() : 0.7 * random();
      anomaly = 0.7 * anomaly + 2.4 * (2 * random() - 1) + 0.8 * (clear - 0.6);
    }
    const season = Math.cos((2 * Math.PI * (day - 200)) / 365);
    const swing = (3 + 4 * clear) * Math.cos((2 * Math.PI * (h - 15)) / 24);
    outdoor[hour] = mean + 11 * season + anomaly + swing + 0.3 * (2 * random() - 1);
    wind[hour] = 3 * random() + 1;
    const length = 12 + 3 * season;
    const height = Math.max(0, Math.cos((Math.PI * (h + 0.5 - 12.5)) / length));
    const west = Math.exp(-(((h + 0.5 - 16.5) / 2.2) ** 2));
    const pulse = Math.abs(h - 12) > length / 2 ? 0 : 0.12 * height + 0.88 * west * height ** 0.5;
    sun[hour] = peakSun * clear * pulse * (0.75 + 0.25 * season);
  }
  return { outdoor, wind, sun };
}
