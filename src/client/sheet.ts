import { answerOf, facadeRows, openingAnswers } from './answer.ts';
import type { Answer } from './answer.ts';
import { scheduleCards } from './card.ts';
import type { ScheduleCard } from './card.ts';
import { costTexts, costsOf } from './costs.ts';
import type { CostText } from './costs.ts';
import { dayHours, dayPicture, hottestSummerDay } from './dayPicture.ts';
import { hottestRoom } from './facts.ts';
import type { PageFacts } from './facts.ts';
import { roomHours } from './hours.ts';
import type { RoomHoursText } from './hours.ts';
import { paletteOf } from './marks.ts';
import type { Picture } from './marks.ts';
import { ringPicture } from './ringPicture.ts';
import type { Teller } from './teller.ts';
import { assumptions, cautions, sources, weatherNotes } from './texts.ts';
import { VERSION } from './version.ts';
import { hotDays, yearPicture } from './yearPicture.ts';
import { plannedExternal } from '../../lib/decide/index.ts';
import type { Table } from '../../lib/findings/index.ts';

/** A head with the lines under it. */
export interface Section {
  head: string;
  lines: string[];
}

/** The client page, ready to be set: words and pictures, no figures left to work out. */
export interface Sheet {
  title: string;
  place: string;
  date: string;
  question: string;
  answer: Answer;
  hours: {
    head: string;
    about: string;
    before: string;
    after: string;
    rooms: RoomHoursText[];
    notes: string[];
  };
  year: Picture;
  ring: Picture;
  facades: { table: Table; note: string };
  day: Picture;
  costs?: { head: string; figures: CostText[] };
  cards: { head: string; note: string; cards: ScheduleCard[] };
  notes?: Section;
  assumptions: Section;
  cautions: Section;
  sources: Section;
  footer: string;
}

export function clientSheet(facts: PageFacts, teller: Teller, grey: boolean): Sheet {
  const { t } = teller;
  const { project, hours, study } = facts;
  const colours = paletteOf(grey);
  const hottest = hottestRoom(facts);
  const room = hours.rooms.find((r) => r.id === hottest.id)!;
  const limit = project.settings.overheatingLimit;
  const day = hottestSummerDay(room, hours.calendar, study.place.latitude);
  const costs = costsOf(facts);
  const page = project.page ?? {};
  const date = new Intl.DateTimeFormat(
    teller.words.language === 'en' ? 'en-GB' : teller.words.language,
    {
      dateStyle: 'long',
    },
  ).format(facts.date);
  return {
    title: page.title?.trim() ? page.title : project.name,
    place: project.site.name,
    date,
    question: page.question?.trim() ? page.question : t('question'),
    answer: answerOf(facts, teller),
    hours: {
      head: t('hours.head', { limit: teller.quantity('temperature', limit, 0) }),
      about: t('hours.about'),
      before: t('hours.before'),
      after: t(hasShading(facts) ? 'hours.after' : 'hours.afterNothing'),
      rooms: roomHours(facts, teller),
      notes: planNote(facts, teller),
    },
    year: yearPicture(hotDays(room, hours.calendar, limit), hottest.name, limit, teller, colours),
    ring: ringPicture(facts, openingAnswers(facts), teller, colours),
    facades: { table: facadeTable(facts, teller), note: t('facade.note') },
    day: dayPicture(
      dayHours(room, hours, day),
      { day, room: hottest.name, limit },
      teller,
      colours,
    ),
    ...(costs
      ? {
          costs: {
            head: t(costs.of === 'planned' ? 'costs.planned' : 'costs.answer'),
            figures: costTexts(facts, costs, teller),
          },
        }
      : {}),
    cards: { head: t('card.head'), note: t('card.note'), cards: scheduleCards(facts, teller) },
    ...(page.notes?.trim() ? { notes: { head: t('notes'), lines: page.notes.split(/\n+/) } } : {}),
    assumptions: {
      head: t('assume.head'),
      lines: [...assumptions(facts, teller), ...weatherNotes(facts, teller)],
    },
    cautions: { head: t('caution.head'), lines: cautions(facts, teller) },
    sources: { head: t('source.head'), lines: sources(facts, teller) },
    footer: t('footer', {
      file: facts.fileName,
      date,
      version: VERSION,
      weather: study.weather.name,
    }),
  };
}

function hasShading({ project }: PageFacts): boolean {
  return project.openings.some((o) => o.blind ?? o.insectScreen);
}

/** How the plan and the answer differ, where they do. */
function planNote(facts: PageFacts, teller: Teller): string[] {
  const { project, decision } = facts;
  const { smallest } = decision.sets;
  if (!smallest) return [];
  const planned = plannedExternal(project, facts);
  const missing = smallest.openings.filter((id) => !planned.has(id));
  const names = (ids: string[]) =>
    teller.words.list(ids.map((id) => project.openings.find((o) => o.id === id)!.name));
  if (missing.length === 0) return [];
  return [
    teller.t('hours.missing', { openings: names(missing), hours: teller.hours(smallest.hours) }),
  ];
}

function facadeTable(facts: PageFacts, teller: Teller): Table {
  const { t } = teller;
  return {
    title: t('facade.head'),
    columns: [
      { head: t('facade.facade'), align: 'left' },
      { head: t('facade.bareHead'), align: 'left' },
      { head: t('facade.externalHead'), align: 'left' },
      { head: t('facade.verdictHead'), align: 'left' },
    ],
    rows: facadeRows(facts, teller).map((row) => [
      `${row.name} (${row.facing})`,
      row.bare,
      row.external,
      row.verdict,
    ]),
  };
}
