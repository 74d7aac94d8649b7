/** What must stand beside any advice on heat in rooms. Whole sentences for the page. */
export const roomCautions = {
  heat: 'Heat harms the old, the very young and the ill first: where such people live, plan for cooler rooms than the usual limits and for somewhere cool to go in a heat wave.',
  escape:
    'A blind must never block a window or door meant for escape or rescue: it has to open by hand, from inside, without power.',
  airing:
    'A window left open for the night can let in a fall, a burglar or rain: secure low windows, guard upper ones against children falling, and follow the local rules.',
  heights:
    'Blinds are fitted, cleaned and repaired at height and must bear the wind of the place: leave fixing and wind load to those licensed for it.',
  glass:
    'Blinds and films inside the glass can heat it until it cracks: ask the maker of the glass first.',
  model:
    'These are figures of a model in a typical year, not a promise: a real summer can be hotter, and people live otherwise than assumed.',
  decides: 'A locally licensed professional decides; local codes come before anything said here.',
} as const;
