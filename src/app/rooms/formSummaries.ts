import type { Project } from '../../../lib/project/index.ts';
import { infiltrationRate, lumpedMass, ventilationFlow } from '../../../lib/room/index.ts';
import type { DayProfiles, Room } from '../../../lib/room/index.ts';
import { formatQuantity } from '../../../lib/units/index.ts';
import { sumUA } from './edits.ts';
import { MASSES } from './editing.ts';
import { AIR_CHANGES, lossUnit, roomFigure, storeUnit } from './units.ts';
import { temperatureText } from './verdict.ts';

/** What each part of a room's form comes to: readable while it is folded. */
export function formSummaries(project: Project, room: Room) {
  const { units } = project;
  const { mass, envelope, heating, cooling, airing, occupied } = room;
  const kWh = ({ weekday, weekend }: DayProfiles) => {
    const sum = (watts: readonly number[]) => watts.reduce((total, w) => total + w, 0);
    const mean = (5 * sum(weekday) + 2 * sum(weekend)) / 7 / 1000;
    return `${formatQuantity('energy', mean, units, { digits: 1 })} a day`;
  };
  const loss =
    envelope.kind === 'total'
      ? envelope.UA + (envelope.groundUA ?? 0)
      : sumUA(envelope.parts, 'outdoor') + sumUA(envelope.parts, 'ground');
  const air =
    infiltrationRate(room.infiltration) +
    ventilationFlow(room.ventilation, room.volume) / room.volume;
  const held = [
    heating ? `heated to ${temperatureText(heating.setPoint, units)}` : 'not heated',
    cooling ? `cooled to ${temperatureText(cooling.setPoint, units)}` : 'not cooled',
  ];
  const count = project.openings.filter((o) => o.room === room.id).length;
  return {
    size: formatQuantity('area', room.floorArea, units, { digits: 1 }),
    mass:
      mass.kind === 'class'
        ? (MASSES.find((m) => m.value === mass.class)?.text ?? '').toLowerCase()
        : roomFigure(lumpedMass(room).heatCapacity, storeUnit(units)),
    airing: airing.length === 1 ? '1 rule' : `${airing.length || 'no'} rules`,
    envelope: roomFigure(loss, lossUnit(units)),
    air: `${roomFigure(air, { ...AIR_CHANGES, digits: 2 })}`,
    people: kWh(room.people),
    appliances: kWh(room.appliances),
    climate: held.join(', '),
    occupied:
      occupied.weekday.length + occupied.weekend.length === 0
        ? 'never'
        : `${weekHours(room)} h a week`,
    openings: String(count || 'none'),
  };
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
