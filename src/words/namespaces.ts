import type common from './en/common.json';

/** The parts of a language file that are loaded apart, by the English words they hold. */
export interface Namespaces {
  common: typeof common;
}

export type Namespace = keyof Namespaces;

export const languages = ['en', 'de'] as const;
export type Language = (typeof languages)[number];

type Load = () => Promise<{ default: object }>;

/** Where the words of a language are; each part comes by itself when it is first needed. */
export const wordFiles: Record<Namespace, Record<Language, Load>> = {
  common: {
    en: () => import('./en/common.json'),
    de: () => import('./de/common.json'),
  },
};
