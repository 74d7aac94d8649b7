import type { Project } from '../../../lib/project/index.ts';
import { infiltrationRate, lumpedMass, ventilationFlow } from '../../../lib/room/index.ts';
import type { DayProfiles, Room } from '../../../lib/room/index.ts';
import type { UnitSystem } from '../../../lib/units/index.ts';
import type { Wording } from '../../words/index.ts';
import { sumUA } from './edits.ts';
import { AIR_CHANGES, lossUnit, roomFigure, storeUnit } from './units.ts';
import { temperatureText } from './verdict.ts';

/** What each part of a room's form comes to: readable while it is folded. */
export function formSummaries(words: Wording, project: Project, room: Room) {
  const t = words.of('rooms');
  const { units } = project;
  const { mass, envelope, airing, occupied } = room;
  const kWh = ({ weekday, weekend }: DayProfiles) => {
    const sum = (watts: readonly number[]) => watts.reduce((total, w) => total + w, 0);
    const mean = (5 * sum(weekday) + 2 * sum(weekend)) / 7 / 1000;
    return t('summary.perDay', { energy: words.quantity('energy', mean, units, { digits: 1 }) });
  };
  const loss =
    envelope.kind === 'total'
      ? envelope.UA + (envelope.groundUA ?? 0)
      : sumUA(envelope.parts, 'outdoor') + sumUA(envelope.parts, 'ground');
  const air =
    infiltrationRate(room.infiltration) +
    ventilationFlow(room.ventilation, room.volume) / room.volume;
  const count = project.openings.filter((o) => o.room === room.id).length;
  return {
    size: words.quantity('area', room.floorArea, units, { digits: 1 }),
    mass:
      mass.kind === 'class'
        ? t(`mass.short.${mass.class}`)
        : roomFigure(words, lumpedMass(room).heatCapacity, storeUnit(units)),
    airing:
      airing.length === 0 ? t('summary.noRules') : t('summary.rules', { count: airing.length }),
    envelope: roomFigure(words, loss, lossUnit(units)),
    air: roomFigure(words, air, { ...AIR_CHANGES, digits: 2 }),
    people: kWh(room.people),
    appliances: kWh(room.appliances),
    climate: climateText(words, room, units),
    occupied:
      occupied.weekday.length + occupied.weekend.length === 0
        ? t('summary.never')
        : t('summary.weekHours', { hours: words.decimal(String(weekHours(room))) }),
    openings: count === 0 ? t('summary.none') : String(count),
  };
}

function climateText(words: Wording, room: Room, units: UnitSystem): string {
  const t = words.of('rooms');
  const { heating, cooling } = room;
  const heated = heating && temperatureText(words, heating.setPoint, units);
  const cooled = cooling && temperatureText(words, cooling.setPoint, units);
  if (heated && cooled) return t('summary.heatedAndCooled', { heating: heated, cooling: cooled });
  if (heated) return t('summary.heated', { heating: heated });
  return cooled ? t('summary.cooled', { cooling: cooled }) : t('summary.neither');
}

/** Hours of a week in which somebody is in; overlapping spans count once. */
function weekHours({ occupied }: Room): number {
  const hours = (spans: Room['occupied']['weekday']) => {
    const quarters = new Set<number>();
    for (const { from, to } of spans) {
      const length = (to - from + 1440) % 1440 || 1440;
      for (let minute = 0; minute < length; minute += 15) quarters.add((from + minute) % 1440);
    }
    return quarters.size / 4;
  };
  return 5 * hours(occupied.weekday) + 2 * hours(occupied.weekend);
}
