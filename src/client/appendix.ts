import type { Table } from '../../lib/findings/index.ts';
import { openingTables, siteTables, wallTable } from './appendixHouse.ts';
import { partTables, scheduleTable } from './appendixParts.ts';
import { roomTables, settingsTable } from './appendixRooms.ts';
import { criteriaTables, decisionTables, monthTables } from './appendixResults.ts';
import { checksum } from './checksum.ts';
import { DefaultMarks } from './defaultMarks.ts';
import type { PageFacts } from './facts.ts';
import { column, keyTable } from './tables.ts';
import type { Teller } from './teller.ts';
import { dataMark, weatherNotes, weatherSource } from './texts.ts';
import { VERSION } from './version.ts';

/** A part of the appendix with its tables. */
export interface AppendixSection {
  head: string;
  lines: string[];
  tables: Table[];
}

/** What another engineer needs to repeat the study. */
export interface Appendix {
  title: string;
  about: string;
  sections: AppendixSection[];
}

/** Ids of the models with their references in the words. */
export const MODELS = [
  'sun',
  'sky',
  'split',
  'built',
  'opening',
  'glass',
  'window',
  'blind',
  'total',
  'schedule',
  'room',
  'air',
  'airing',
  'criteria',
  'decide',
] as const;

export function technicalAppendix(facts: PageFacts, teller: Teller): Appendix {
  const { t } = teller;
  const marks = new DefaultMarks();
  const house: AppendixSection = {
    head: t('appendix.inputs'),
    lines: [t('appendix.marks')],
    tables: [
      ...siteTables(facts, teller, marks),
      wallTable(facts, teller, marks),
      ...openingTables(facts, teller, marks),
      ...partTables(facts, teller),
      ...scheduleTable(facts, teller),
      ...roomTables(facts, teller, marks),
      settingsTable(facts, teller, marks),
    ],
  };
  const defaults: Table = {
    title: t('appendix.defaults'),
    columns: [column(t('in.input')), column(t('in.source'))],
    rows: [...marks.used].map((key) => [t(`defaultName.${key}`), t(`defaultSource.${key}`)]),
  };
  if (defaults.rows.length > 0) house.tables.push(defaults);
  return {
    title: t('appendix.title'),
    about: t('appendix.about'),
    sections: [
      {
        head: t('appendix.identity'),
        lines: weatherNotes(facts, teller),
        tables: [identity(facts, teller)],
      },
      house,
      {
        head: t('appendix.models'),
        lines: [],
        tables: [
          {
            title: t('appendix.modelsTitle'),
            columns: [column(t('in.step')), column(t('in.reference'))],
            rows: MODELS.map((id) => [t(`model.${id}`), t(`modelSource.${id}`)]),
          },
        ],
      },
      {
        head: t('appendix.results'),
        lines: [],
        tables: [
          ...criteriaTables(facts, teller),
          ...decisionTables(facts, teller),
          ...monthTables(facts, teller),
        ],
      },
    ],
  };
}

function identity(facts: PageFacts, teller: Teller): Table {
  const { t } = teller;
  const { project, study } = facts;
  return keyTable(t('appendix.identityTitle'), [
    [t('in.program'), `Shadewright ${VERSION}`],
    [t('in.data'), dataMark(facts)],
    [t('in.file'), `${facts.fileName} (${t('in.layout', { version: project.version })})`],
    [t('in.fileMark'), checksum(project)],
    [t('in.weather'), weatherSource(facts, teller)],
    [
      t('in.weatherPlace'),
      `${teller.number(study.place.latitude, 3)}°, ${teller.number(study.place.longitude, 3)}°, ${study.place.timeZone}`,
    ],
    ...(project.climate.kind === 'file' || study.weather.kind !== 'normals'
      ? []
      : [[t('in.seed'), String(project.climate.seed)]]),
  ]);
}
