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

/** The words of one part in a language; each part comes by itself when it is first needed. */
export async function loadWords(language: Language, namespace: Namespace): Promise<object> {
  const file = (await import(`../../data/words/${language}/${namespace}.json`)) as {
    default: object;
  };
  return file.default;
}
