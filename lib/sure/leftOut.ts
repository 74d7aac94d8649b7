import type { SureWeather } from './weather.ts';

/** What the cases do not cover, in sentences for the user. */
export function leftOut(weather: Pick<SureWeather, 'kind'>): string[] {
  const years =
    weather.kind === 'normals'
      ? 'All typical years have the same monthly means of sun and temperature: they differ in their ' +
        'days, not in how warm the summer is. Real summers differ by more; the warmer and sunnier ' +
        'years stand for that.'
      : "The first year is the hourly file's own; the others are built from its monthly means, so " +
        'they differ from it in method as well as in their days (east and west get the same cloud). ' +
        'Real summers differ by more than these; the warmer and sunnier years stand for that.';
  return [
    years,
    'Glass, blinds, climate and people are changed one at a time, not all at once.',
    'The blinds compared stay those of the decision: the smallest set is not searched again, and of ' +
      'the cheaper measures only the one that was enough and the one that came nearest are tried.',
    'Blinds that read sun, weather or the room are taken as driven and never forget; those moved by ' +
      'clock alone and all internal blinds are moved by hand. Sashes are opened as planned in every ' +
      'case.',
    'No heat goes from room to room; trees, neighbours, use of the rooms and gains stay as planned; ' +
      'the town is no warmer than the station.',
  ];
}
