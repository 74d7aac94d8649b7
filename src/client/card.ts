import { commonSchedule, plannedExternal } from '../../lib/decide/index.ts';
import type { ProjectOpening } from '../../lib/project/index.ts';
import { describeSchedule } from '../../lib/schedule/index.ts';
import type { Schedule } from '../../lib/schedule/index.ts';
import { neededOpenings } from './answer.ts';
import { blindOf, openingOf } from './facts.ts';
import type { PageFacts } from './facts.ts';
import { scheduleName, scheduleWords } from '../words/rules.ts';
import type { Teller } from './teller.ts';

/** What moves the blinds of one remote channel or of openings on the same schedule. */
export interface ScheduleCard {
  heading: string;
  /** The blinds it moves, by opening. */
  openings: string;
  lines: string[];
}

/** Cards to put by the remote: groups first, then single blinds, then what is suggested. */
export function scheduleCards(facts: PageFacts, teller: Teller): ScheduleCard[] {
  const { project, decision } = facts;
  const { t, words } = teller;
  const tell = (schedule: Schedule) =>
    describeSchedule(schedule, teller.system, scheduleWords(words));
  const names = (openings: readonly ProjectOpening[]) => words.list(openings.map((o) => o.name));
  const withBlind = project.openings.filter((o) => o.blind);
  const scheduleOf = (id: string) => project.schedules.find((s) => s.id === id);

  const grouped = project.groups.flatMap((group): ScheduleCard[] => {
    const members = withBlind.filter((o) => o.blind!.group === group.id);
    const schedule = scheduleOf(group.schedule);
    if (members.length === 0 || !schedule) return [];
    const heading = t('card.channel', { channel: group.channel, name: group.name });
    return [
      {
        heading,
        openings: names(members),
        lines: [...tell(schedule), ...wind(facts, members, teller)],
      },
    ];
  });
  const single = project.schedules.flatMap((schedule): ScheduleCard[] => {
    const members = withBlind.filter((o) => !o.blind!.group && o.blind!.schedule === schedule.id);
    if (members.length === 0) return [];
    return [
      {
        heading: scheduleName(words, schedule.name),
        openings: names(members),
        lines: [...tell(schedule), ...wind(facts, members, teller)],
      },
    ];
  });
  const planned = plannedExternal(project, facts);
  const added = neededOpenings(facts)
    .filter((id) => !planned.has(id))
    .map((id) => openingOf(facts, id));
  const suggested: ScheduleCard[] =
    added.length === 0
      ? []
      : [
          {
            heading: t('card.suggested'),
            openings: names(added),
            lines: tell(commonSchedule(decision.hemisphere)),
          },
        ];
  // The longest first, so that they fill the columns of a sheet evenly.
  const length = ({ lines }: ScheduleCard) => lines.join(' ').length;
  return [...grouped, ...single.sort((a, b) => length(b) - length(a)), ...suggested];
}

function wind(facts: PageFacts, members: readonly ProjectOpening[], teller: Teller): string[] {
  const limits = members.flatMap((o) => windLimit(facts, o) ?? []);
  if (limits.length === 0) return [];
  return [teller.t('card.wind', { speed: teller.quantity('windSpeed', Math.min(...limits)) })];
}

/** Wind speed above which the blind of an opening is raised, m/s. */
export function windLimit(facts: PageFacts, { blind }: ProjectOpening): number | undefined {
  return blind && (blind.windLimit ?? blindOf(facts, blind.blind)?.windLimit);
}
