import { describe, expect, it } from 'vitest';
import studio from '../../../data/examples/studio.shadewright.json' with { type: 'json' };
import { plainRules } from '../../../lib/search/index.ts';
import type { Cell, FacadeVerdict, SetFindings, VerdictKind } from '../../../lib/decide/index.ts';
import { parseProject } from '../../../lib/project/index.ts';
import type { FacadeSure, Spread, SureCase } from '../../../lib/sure/index.ts';
import { casesOf } from '../../../lib/sure/index.ts';
import { sureText, spreadText } from '../../../src/app/decide/sureText.ts';
import { compassText, reasonText, setTexts, verdictText } from '../../../src/app/decide/text.ts';
import { criterionText } from '../../../src/app/decide/units.ts';
import { stations } from '../../../src/library/climates.ts';
import { blinds, glazings } from '../../../src/library/index.ts';
import { Words } from '../../../src/words/index.ts';
import { cardWords } from '../../../src/words/rules.ts';
import de from '../../../data/words/de/decide.json' with { type: 'json' };
import en from '../../../data/words/en/decide.json' with { type: 'json' };

const project = parseProject(structuredClone(studio), { glazings, blinds, stations });
const english = await Words.load('en', ['decide', 'rules']);
const german = await Words.load('de', ['decide', 'rules']);

type Tree = { [key: string]: string | Tree };

/** Every text by its path. */
function texts(tree: Tree, path = ''): [string, string][] {
  return Object.entries(tree).flatMap(([key, value]) =>
    typeof value === 'string'
      ? [[`${path}${key}`, value] as [string, string]]
      : texts(value, `${path}${key}.`),
  );
}

const placeholders = (text: string) => [...text.matchAll(/{{(\w+)}}/g)].map((m) => m[1]).sort();

const cell = (hours: number, kept: boolean): Cell => ({
  hours,
  kept,
  heatingKWh: 1500,
  summerGain: 100,
  winterLost: 0,
  viewHoursLost: 0,
});

function verdictOf(kind: VerdictKind, change: Partial<FacadeVerdict> = {}): FacadeVerdict {
  return {
    facade: 'west',
    kind,
    others: 'planned',
    rooms: ['studio'],
    bare: cell(1088, false),
    external: cell(769, true),
    externalFrom: 'planned',
    cheaper: [
      { treatment: 'screen', cell: cell(873, true) },
      { treatment: 'internal', cell: cell(974, false) },
    ],
    inSmallestSet: [],
    escapeRoutes: [],
    ...change,
  };
}

describe('the language files of the decision', () => {
  it('say the same things with the same figures in them', () => {
    const [first, second] = [texts(en), texts(de)];
    expect(second.map(([path]) => path)).toEqual(first.map(([path]) => path));
    second.forEach(([path, text], i) =>
      expect(placeholders(text), path).toEqual(placeholders(first[i][1])),
    );
  });
});

describe('the verdict on a facade', () => {
  it('names the measure that is enough, in both languages', () => {
    const verdict = verdictOf('cheaper', { enough: 'screen' });
    expect(verdictText(english, verdict)).toBe('no external blinds: insect screen is enough');
    expect(verdictText(german, verdict)).toBe('kein Außenschutz nötig: Insektenschutz genügt');
    expect(reasonText(english, verdict, project)).toBe(
      'With this facade bare and all else as planned, Studio: 1,088 hours over, limit broken; with insect screen 873 hours over, limit kept; with external blinds here 769 hours over, limit kept.',
    );
    expect(reasonText(german, verdict, project)).toContain('Insektenschutz: 873 Überhitzungs');
  });

  it('names what was tried where external blinds are needed', () => {
    const verdict = verdictOf('needs', { others: 'allExternal' });
    const reason = reasonText(english, verdict, project);
    expect(reason).toContain('external blinds everywhere else');
    expect(reason).toContain('(insect screen 873, internal blind 974)');
    expect(reasonText(english, { ...verdict, cheaper: [] }, project)).not.toContain('cheaper');
  });

  it('counts what would be saved, one hour and none', () => {
    const saved = (hours: number) =>
      reasonText(english, verdictOf('none', { bare: cell(769 + hours, true) }), project);
    expect(saved(1)).toMatch(/would save 1 hour only\.$/);
    expect(saved(12)).toMatch(/would save 12 hours only\.$/);
    expect(saved(0)).toMatch(/would save nothing\.$/);
    expect(saved(-2)).toMatch(/would save nothing\.$/);
  });

  it('has words for every kind and no kind shares its words with another', () => {
    const kinds: VerdictKind[] = ['needs', 'cheaper', 'better', 'none', 'notEnough'];
    for (const words of [english, german]) {
      const said = kinds.map((kind) => verdictText(words, verdictOf(kind)));
      expect(new Set(said).size).toBe(kinds.length);
      for (const kind of kinds)
        expect(reasonText(words, verdictOf(kind), project)).toMatch(/1[.,]088/);
    }
  });

  it('tells the compass by eighths of the circle', () => {
    expect(compassText(english, 225)).toBe('south-west 225°');
    expect(compassText(german, 337.6)).toBe('Norden 338°');
    expect(compassText(english, 337.4)).toBe('north-west 337°');
  });

  it('names the criterion with its limit in the units of the page', () => {
    const settings = { ...project.settings, criterion: 'shareAbove' as const };
    expect(criterionText(english, { settings, units: 'imperial' })).toContain('77 °F');
    // In German a no-break space stands before the per cent sign.
    expect(criterionText(german, { settings, units: 'metric' })).toBe(
      'höchstens 10\u00a0% des Jahres über 25 °C',
    );
  });
});

describe('the smallest set in sentences', () => {
  const set = { openings: ['west-door', 'corner-pane'], cost: 2.5, broken: 0, hours: 995 };
  const sets = (change: Partial<SetFindings>): SetFindings => ({
    smallest: set,
    leastCost: 2.5,
    exact: true,
    front: [{ openings: [], cost: 0, broken: 1, hours: 1358 }, set],
    creep: { broken: 0, hours: 0 },
    evaluations: 83,
    possible: 512,
    candidates: [],
    parts: [],
    ...change,
  });

  it('says which, how it is known and what it costs', () => {
    const [which, proof, price] = setTexts(german, sets({}), project, true);
    expect(which).toContain('2 Öffnungen genügen: West door und South-west corner pane.');
    expect(proof).toContain('83 von 512');
    expect(price).toContain('2,50');
    expect(setTexts(english, sets({}), project, false)).toHaveLength(2);
  });

  it('says when nothing is needed, nothing is enough or nothing is proven', () => {
    const none = { openings: [], cost: 0, broken: 0, hours: 700 };
    expect(setTexts(english, sets({ smallest: none }), project, false)).toEqual([
      'No external blind is needed at all: with none of them every room keeps its limit (700 hours over).',
    ]);
    const greedy = setTexts(english, sets({ exact: false, leastCost: 2 }), project, false);
    expect(greedy[1]).toContain('no set can cost less than 2, and this one costs 2.50');
    const hopeless = sets({ smallest: undefined, front: [{ ...set, broken: 2, hours: 995 }] });
    expect(setTexts(english, hopeless, project, false)[0]).toContain('2 rooms still broken');
  });
});

describe('how sure in sentences', () => {
  const cases: SureCase[] = casesOf(7);
  const interval = { least: 724, low: 744, median: 800, high: 890, most: 1461 };
  const spread: Spread = { years: interval, all: interval };
  const figures = { hours: spread, summerGain: spread, winterLost: spread, heatingKWh: spread };
  const facade = (flips: FacadeSure['flips']): FacadeSure => ({
    facade: 'west',
    kind: 'better',
    agreement: 1 - flips.length / cases.length,
    closeCall: flips.length > 0,
    flips,
    counts: {},
    bare: figures,
    external: figures,
  });

  it('puts the years of a flip together and names the other cases', () => {
    const ids = ['year-8', 'year-9', 'climate-2-1.05', 'glass-0.95', 'forgetful'];
    const flips = ids.map((id) => ({ case: id, words: '', kind: 'needs' as const }));
    expect(ids.every((id) => cases.some((c) => c.id === id))).toBe(true);
    const said = sureText(english, facade(flips), { cases }, 'West', 'better with, not needed');
    // 24 of 29 cases: 82.76 %.
    expect(said).toBe(
      'West: “better with, not needed” in only 83% of the cases. Otherwise: “needs external blinds” (2 other years; 2 K warmer and 5% more sun; g-value 5% lower; people who forget one day in five).',
    );
  });

  it('says plainly when all cases agree', () => {
    const said = sureText(german, facade([]), { cases }, 'West', 'kein Sonnenschutz');
    expect(said).toBe('West: „kein Sonnenschutz“ in allen 29 Fällen.');
    expect(spreadText(german, spread)).toBe('744 bis 890 (724 bis 1.461)');
  });
});

describe('the card of a schedule', () => {
  const schedule = {
    id: 'found',
    name: 'Found',
    rules: [
      {
        id: 'a',
        when: {
          dates: { from: '05-01', to: '09-15' },
          irradianceAbove: { at: 400, release: 350 },
          roomAbove: { at: 24, release: 23.5 },
        },
        then: { kind: 'lower' as const },
      },
    ],
    minMinutesBetweenMoves: 30,
  };

  it('is in German with its decimal comma', () => {
    const [rule, pause] = plainRules(schedule, 'West', cardWords(german));
    expect(rule).toContain(
      '1. Mai bis 15. September, West: herunter bei 400 W/m² auf der Fassade und',
    );
    expect(rule).toContain('23,5 °C im Raum');
    expect(pause).toBe('mindestens 30 Minuten zwischen zwei Fahrten');
  });

  it('is in English as the library writes it', () => {
    expect(plainRules(schedule, 'West', cardWords(english))).toEqual(plainRules(schedule, 'West'));
  });

  it('keeps to the units of the system', () => {
    // 400 W/m2 is 126.8 Btu/h ft2, 23.5 C is 74.3 F.
    const [rule] = plainRules(schedule, 'West', cardWords(german), 'imperial');
    expect(rule).toContain('herunter bei 127 Btu/h ft² auf der Fassade und 75,2 °F im Raum');
    expect(rule).toContain('74,3 °F');
  });
});
