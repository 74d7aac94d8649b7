import type charts from '../../data/words/en/charts.json';
import type client from '../../data/words/en/client.json';
import type common from '../../data/words/en/common.json';
import type decide from '../../data/words/en/decide.json';
import type entry from '../../data/words/en/entry.json';
import type fields from '../../data/words/en/fields.json';
import type library from '../../data/words/en/library.json';
import type openings from '../../data/words/en/openings.json';
import type problems from '../../data/words/en/problems.json';
import type rooms from '../../data/words/en/rooms.json';
import type rules from '../../data/words/en/rules.json';
import type schedules from '../../data/words/en/schedules.json';
import type shell from '../../data/words/en/shell.json';
import type site from '../../data/words/en/site.json';
import type weather from '../../data/words/en/weather.json';
import type year from '../../data/words/en/year.json';

/** The parts of a language file that are loaded apart, by the English words they hold. */
export interface Namespaces {
  charts: typeof charts;
  client: typeof client;
  common: typeof common;
  decide: typeof decide;
  entry: typeof entry;
  fields: typeof fields;
  library: typeof library;
  openings: typeof openings;
  problems: typeof problems;
  rooms: typeof rooms;
  rules: typeof rules;
  schedules: typeof schedules;
  shell: typeof shell;
  site: typeof site;
  weather: typeof weather;
  year: typeof year;
}

export type Namespace = keyof Namespaces;

export const languages = ['en', 'de'] as const;
export type Language = (typeof languages)[number];

type Load = () => Promise<{ default: object }>;

/** Where the words of a language are; each part comes by itself when it is first needed. */
export const wordFiles: Record<Namespace, Record<Language, Load>> = {
  charts: {
    en: () => import('../../data/words/en/charts.json'),
    de: () => import('../../data/words/de/charts.json'),
  },
  client: {
    en: () => import('../../data/words/en/client.json'),
    de: () => import('../../data/words/de/client.json'),
  },
  common: {
    en: () => import('../../data/words/en/common.json'),
    de: () => import('../../data/words/de/common.json'),
  },
  decide: {
    en: () => import('../../data/words/en/decide.json'),
    de: () => import('../../data/words/de/decide.json'),
  },
  entry: {
    en: () => import('../../data/words/en/entry.json'),
    de: () => import('../../data/words/de/entry.json'),
  },
  fields: {
    en: () => import('../../data/words/en/fields.json'),
    de: () => import('../../data/words/de/fields.json'),
  },
  library: {
    // English names and sources stand with the things themselves.
    en: () =>
      import('../../data/words/en/library.json').then(({ caution, frameShort }) => ({
        default: { caution, frameShort },
      })),
    de: () => import('../../data/words/de/library.json'),
  },
  openings: {
    en: () => import('../../data/words/en/openings.json'),
    de: () => import('../../data/words/de/openings.json'),
  },
  problems: {
    en: () => import('../../data/words/en/problems.json'),
    de: () => import('../../data/words/de/problems.json'),
  },
  rooms: {
    en: () => import('../../data/words/en/rooms.json'),
    de: () => import('../../data/words/de/rooms.json'),
  },
  rules: {
    en: () => import('../../data/words/en/rules.json'),
    de: () => import('../../data/words/de/rules.json'),
  },
  schedules: {
    en: () => import('../../data/words/en/schedules.json'),
    de: () => import('../../data/words/de/schedules.json'),
  },
  shell: {
    en: () => import('../../data/words/en/shell.json'),
    de: () => import('../../data/words/de/shell.json'),
  },
  site: {
    en: () => import('../../data/words/en/site.json'),
    de: () => import('../../data/words/de/site.json'),
  },
  weather: {
    en: () => import('../../data/words/en/weather.json'),
    de: () => import('../../data/words/de/weather.json'),
  },
  year: {
    en: () => import('../../data/words/en/year.json'),
    de: () => import('../../data/words/de/year.json'),
  },
};
