/** Time zones the browser knows, with the one in use even where it is not among them. */
export function zoneChoices(inUse: string): { value: string; text: string; group: string }[] {
  const known = Intl.supportedValuesOf('timeZone');
  const all = known.includes(inUse) ? known : [...known, inUse];
  return all.map((zone) => {
    const [area, ...rest] = zone.split('/');
    const text = (rest.length ? rest.join(', ') : zone).replaceAll('_', ' ');
    return { value: zone, text, group: rest.length ? area : 'Other' };
  });
}
