import { beforeAll, describe, expect, it } from 'vitest';
import type { Project } from '../../lib/project/index.ts';
import { printPdf } from '../../src/cli/printPdf.ts';
import { clientPage } from '../../src/client/index.ts';
import type { PageChoices } from '../../src/client/index.ts';
import { Words } from '../../src/words/index.ts';
import type { Language } from '../../src/words/index.ts';
import { caseOf, example } from '../src/client/support.ts';
import type { Case } from '../src/client/support.ts';
import { distFolder } from './app.ts';
import { ensurePdfTools, readPdf } from './pdf.ts';

const CHOICES: PageChoices = {
  system: 'metric',
  size: 'a4',
  grey: false,
  order: false,
  appendix: false,
};

/** The studio with an annex: three walls more, six windows more in two more rooms, and notes. */
function withAnnex(project: Project): Project {
  const long = structuredClone(project);
  const wall = long.walls.find((w) => w.tilt === 90)!;
  const pane = long.openings.find((o) => o.kind === 'window' && !o.blind?.group)!;
  for (const [n, azimuth] of [45, 135, 315].entries())
    long.walls.push({ ...wall, id: `annex-${n}`, name: `Annex wall ${n + 1}`, azimuth });
  for (const n of [1, 2]) {
    const room = structuredClone(long.rooms[0]);
    long.rooms.push({ ...room, id: `annex-room-${n}`, name: `Annex room ${n}`, airing: [] });
  }
  for (let n = 0; n < 6; n++) {
    const { blind: _b, airing: _a, ...bare } = structuredClone(pane);
    const name = `Annex window number ${n + 1}`;
    const place = { wall: `annex-${n % 3}`, room: `annex-room-${(n % 2) + 1}` };
    long.openings.push({ ...bare, ...place, id: `annex-window-${n}`, name });
  }
  return { ...long, page: { notes: 'The order goes out with the windows in March. '.repeat(6) } };
}

describe('a page of a larger house', () => {
  let studio: Case;
  let larger: Case;

  beforeAll(() => {
    ensurePdfTools();
    studio = caseOf(example('studio'));
    larger = caseOf(withAnnex(example('studio')));
  }, 240_000);

  const pageOf = async ({ facts }: Case, language: Language, choices = CHOICES) =>
    clientPage(facts, await Words.load(language, ['client', 'library', 'rules']), choices);

  it('is set smaller only where it must be', async () => {
    expect((await pageOf(studio, 'en')).setting).toBe('plain');
    // The same in German has a tenth more letters.
    expect((await pageOf(studio, 'de')).setting).toBe('close');
    expect((await pageOf(larger, 'en')).setting).toBe('closest');
  });

  it.each([
    ['studio', 'de', 'a4'],
    ['studio', 'de', 'letter'],
    ['studio with an annex', 'en', 'a4'],
    ['studio with an annex', 'de', 'letter'],
  ] as const)('keeps to two sides of paper with all it says (%s, %s, %s)', async (...of) => {
    const [name, language, size] = of;
    const house = name === 'studio' ? studio : larger;
    const page = await pageOf(house, language, { ...CHOICES, size });
    const { pages } = readPdf(await printPdf(page, distFolder));
    expect(pages).toHaveLength(2);
    const text = pages.join(' ').replace(/\s+/g, ' ');
    for (const wall of house.project.walls) expect(text).toContain(wall.name);
    for (const line of page.sheet.cautions.lines) expect(text).toContain(line.slice(0, 24));
  });
});
