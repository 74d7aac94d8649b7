import type client from './en/client.json';
import type common from './en/common.json';
import type decide from './en/decide.json';

/** The parts of a language file that are loaded apart, by the English words they hold. */
export interface Namespaces {
  client: typeof client;
  common: typeof common;
  decide: typeof decide;
}

export type Namespace = keyof Namespaces;

export const languages = ['en', 'de'] as const;
export type Language = (typeof languages)[number];

type Load = () => Promise<{ default: object }>;

/** Where the words of a language are; each part comes by itself when it is first needed. */
export const wordFiles: Record<Namespace, Record<Language, Load>> = {
  client: {
    en: () => import('./en/client.json'),
    de: () => import('./de/client.json'),
  },
  common: {
    en: () => import('./en/common.json'),
    de: () => import('./de/common.json'),
  },
  decide: {
    en: () => import('./en/decide.json'),
    de: () => import('./de/decide.json'),
  },
};
