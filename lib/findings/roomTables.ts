import type { CauseKind, CriterionResult } from '../room/index.ts';
import type { RoomDetail, RoomOutcome, RoomResult, StudyResult } from '../study/index.ts';
import { monthOfDay, dayOfYear } from '../time/index.ts';
import type { Table } from './table.ts';

const CAUSE_WORDS: Record<Exclude<CauseKind, 'opening'>, string> = {
  people: 'people',
  appliances: 'lights and appliances',
  outdoorAir: 'warm air from outside',
  envelope: 'walls, roof, floor and panes',
  heating: 'heat left over from heating',
  cooling: 'cooling',
};

/** What heats a room in its overheating hours, the greatest part first: `West door` 0.41. */
export function causeShares(
  detail: RoomDetail,
  nameOf: (opening: string) => string,
): { name: string; share: number; isSun: boolean }[] {
  return detail.causes.causes
    .map(({ kind, opening, share }) => ({
      name: kind === 'opening' ? nameOf(opening!) : CAUSE_WORDS[kind],
      share,
      isSun: kind === 'opening',
    }))
    .filter((cause) => cause.share >= 0.005)
    .sort((a, b) => b.share - a.share);
}

/** Sentences on what heats the room when it is too hot. */
export function causeSentences(detail: RoomDetail, nameOf: (opening: string) => string): string[] {
  const { hours, threshold } = detail.causes;
  if (hours === 0) return [`The room is never over ${threshold} °C.`];
  const shares = causeShares(detail, nameOf);
  const sun = shares.filter((c) => c.isSun);
  const all = sun.reduce((sum, c) => sum + c.share, 0);
  const first = sun.slice(0, 3).map((c) => `${c.name}: ${percent(c.share)}`);
  return [
    `${hours} hours over ${threshold} °C; ${percent(all)} of the heat in them is sun through the glass.`,
    ...(first.length ? [`Of all the heat in the overheating hours: ${first.join('; ')}.`] : []),
  ];
}

/** How a room fares, without and with shading. */
export function roomTable(room: RoomResult, limit: number): Table {
  const pair = (label: string, value: (o: RoomOutcome) => string) => [
    label,
    value(room.without),
    value(room.with),
  ];
  return {
    title: `Room: ${room.name}`,
    columns: [
      { head: '', align: 'left' },
      { head: 'Without shading', align: 'right' },
      { head: 'With shading', align: 'right' },
    ],
    rows: [
      pair(`Hours over ${limit} C`, (o) => String(o.hotHours)),
      pair('  of them with somebody in', (o) => String(o.hotHoursOccupied)),
      pair('Warmest hour, C', (o) => o.episodes.warmest.toFixed(1)),
      pair('Hottest day, mean C', (o) => o.episodes.hottestDayMean.toFixed(1)),
      pair('  on', (o) => dayText(o.episodes.hottestDay)),
      pair('Longest run of hot hours', (o) => String(o.episodes.longestRunHours)),
      pair('Days with a hot hour', (o) => String(o.episodes.daysOver)),
      pair('Heating need, kWh a year', (o) => o.heatingKWh.toFixed(0)),
      ...(room.without.coolingKWh + room.with.coolingKWh > 0
        ? [pair('Cooling, kWh a year', (o) => o.coolingKWh.toFixed(0))]
        : []),
    ],
  };
}

/** Every criterion with its source, without and with shading. */
export function criteriaTable(room: RoomResult): Table {
  return {
    title: `Criteria: ${room.name} (comparisons, not code checks)`,
    columns: [
      { head: 'Criterion', align: 'left' },
      { head: 'Limit', align: 'right' },
      { head: 'Without', align: 'right' },
      { head: 'With', align: 'right' },
      { head: 'Source', align: 'left' },
    ],
    rows: room.without.criteria.map((criterion, i) => {
      const limit = criterion.limit === undefined ? '-' : figure(criterion, criterion.limit);
      return [
        criterion.title.english,
        limit,
        judged(criterion),
        judged(room.with.criteria[i]),
        criterion.source.english,
      ];
    }),
  };
}

function judged(criterion: CriterionResult): string {
  const value = figure(criterion, criterion.value);
  if (criterion.met === undefined) return value;
  return `${value} ${criterion.met ? 'kept' : 'not kept'}`;
}

function figure({ unit }: CriterionResult, value: number): string {
  return unit === '1' ? `${(value * 100).toFixed(1)} %` : `${value.toFixed(0)} ${unit}`;
}

function dayText(day: number): string {
  const month = monthOfDay(day);
  const inMonth = day - dayOfYear(month, 1) + 1;
  return `${String(month).padStart(2, '0')}-${String(inMonth).padStart(2, '0')}`;
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}

/** Name of an opening of a study by its id. */
export function openingNames(result: StudyResult): (id: string) => string {
  const names = new Map(result.openings.map((o) => [o.id, o.name]));
  return (id) => names.get(id) ?? id;
}
