import type { VerdictKind } from '../../../lib/decide/index.ts';
import type { FacadeSure, Spread, SureCase, SureFindings } from '../../../lib/sure/index.ts';
import type { Words } from '../../words/index.ts';
import { verdictText } from './text.ts';
import type { Tongue } from './text.ts';

export type SureTongue = Tongue & Pick<Words, 'percent'>;

/** What is different in a case; other years of the same climate are told together by their number. */
function caseText(words: SureTongue, { kind, warmer, sunnier, glass, blind }: SureCase): string {
  const t = words.of('decide');
  const by = (factor: number) => words.percent(Math.abs(factor - 1));
  switch (kind) {
    case 'climate':
      return words.list([
        ...(warmer > 0 ? [t('sure.case.warmer', { figure: words.number(warmer) })] : []),
        ...(sunnier > 1 ? [t('sure.case.sunnier', { figure: by(sunnier) })] : []),
      ]);
    case 'glass':
      return t(glass > 1 ? 'sure.case.glassMore' : 'sure.case.glassLess', { figure: by(glass) });
    case 'blind':
      return t(blind > 1 ? 'sure.case.blindMore' : 'sure.case.blindLess', { figure: by(blind) });
    case 'occupants':
      return t('sure.case.occupants');
    default:
      return t('sure.case.plan');
  }
}

function casesText(words: SureTongue, cases: readonly SureCase[]): string {
  const years = cases.filter((c) => c.kind === 'year').length;
  const others = cases.filter((c) => c.kind !== 'year').map((c) => caseText(words, c));
  const t = words.of('decide');
  return [...(years > 0 ? [t('sure.case.year', { count: years })] : []), ...others].join('; ');
}

/** Whether a verdict holds in every case, and otherwise in which it comes out another way. */
export function sureText(
  words: SureTongue,
  facade: FacadeSure,
  findings: Pick<SureFindings, 'cases'>,
  name: string,
  verdict: string,
): string {
  const t = words.of('decide');
  const { cases } = findings;
  if (!facade.closeCall) {
    return t('sure.firm', { facade: name, verdict, cases: words.number(cases.length) });
  }
  const kinds = [...new Set(facade.flips.map((flip) => flip.kind))];
  const flips = kinds.map((kind) => {
    const ids = facade.flips.filter((flip) => flip.kind === kind).map((flip) => flip.case);
    return t('sure.flip', {
      verdict: flipText(words, kind),
      cases: casesText(
        words,
        cases.filter((c) => ids.includes(c.id)),
      ),
    });
  });
  return t('sure.close', {
    facade: name,
    verdict,
    share: words.percent(facade.agreement),
    flips: flips.join('; '),
  });
}

function flipText(words: SureTongue, kind: VerdictKind): string {
  if (kind === 'cheaper') return words.of('decide')('sure.somethingCheaper');
  return verdictText(words, { kind });
}

/** Eight of ten cases and the ends, of all cases. */
export function spreadText(words: SureTongue, { all }: Spread): string {
  const { low, high, least, most } = all;
  const figure = (value: number) => words.number(value);
  return words.of('decide')('sure.interval', {
    low: figure(low),
    high: figure(high),
    least: figure(least),
    most: figure(most),
  });
}
