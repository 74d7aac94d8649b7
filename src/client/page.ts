import type { Language, Words } from '../words/index.ts';
import { InputError } from '../../lib/problem/index.ts';
import type { UnitSystem } from '../../lib/units/index.ts';
import { technicalAppendix } from './appendix.ts';
import type { Appendix } from './appendix.ts';
import type { PageFacts } from './facts.ts';
import { settingOf } from './length.ts';
import type { Setting } from './length.ts';
import { orderList } from './orderList.ts';
import type { OrderList } from './orderList.ts';
import { clientSheet } from './sheet.ts';
import type { Sheet } from './sheet.ts';
import { Teller } from './teller.ts';

export type PaperSize = 'a4' | 'letter';

/** How the page is to be printed. */
export interface PageChoices {
  system: UnitSystem;
  size: PaperSize;
  grey: boolean;
  order: boolean;
  appendix: boolean;
}

/** Everything that is printed, as plain data: what the workbench shows and the command line prints. */
export interface ClientPage {
  format: 'shadewright-page';
  version: 1;
  language: Language;
  size: PaperSize;
  grey: boolean;
  setting: Setting;
  sheet: Sheet;
  order?: OrderList;
  appendix?: Appendix;
}

/**
 * The client page with what is to be printed with it.
 * @throws InputError for a house without a room, which has nothing to be judged by
 */
export function clientPage(facts: PageFacts, words: Words, choices: PageChoices): ClientPage {
  if (facts.study.rooms.length === 0) {
    throw new InputError({
      path: 'rooms',
      message: 'are none, so there is nothing to judge the sun by',
      value: '0 rooms',
      allowed: 'one room or more',
      fix: 'Add a room and say which openings are in it.',
    });
  }
  const teller = new Teller(words, choices.system);
  const { size, grey } = choices;
  const sheet = clientSheet(facts, teller, grey);
  return {
    format: 'shadewright-page',
    version: 1,
    language: words.language,
    size,
    grey,
    setting: settingOf(sheet),
    sheet,
    ...(choices.order ? { order: orderList(facts, teller) } : {}),
    ...(choices.appendix ? { appendix: technicalAppendix(facts, teller) } : {}),
  };
}
