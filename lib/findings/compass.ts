const WORDS = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
];

/** Compass word for an azimuth in degrees clockwise from north. */
export function compassWord(azimuth: number): string {
  return WORDS[Math.round((((azimuth % 360) + 360) % 360) / 45) % 8];
}
