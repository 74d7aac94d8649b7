import { describe, expect, it } from 'vitest';
import { newOpening } from '../../../lib/project/index.ts';
import { blindPose } from '../../../src/app/charts/cut/blindDrawing.ts';
import { cutTable, describeCut } from '../../../src/app/charts/cut/describe.ts';
import type { CutFacts } from '../../../src/app/charts/cut/describe.ts';
import { cutHandles } from '../../../src/app/charts/cut/handles.ts';
import {
  describeRing,
  facingText,
  gainText,
  listed,
} from '../../../src/app/charts/ring/describe.ts';
import type { RingFacts } from '../../../src/app/charts/ring/describe.ts';
import type { RingOpening } from '../../../src/app/charts/ring/layout.ts';
import { blinds } from '../../../src/library/index.ts';
import { Words } from '../../../src/words/index.ts';

const FILES = ['charts', 'openings', 'library'] as const;
const english = await Words.load('en', FILES);
const german = await Words.load('de', FILES);
const unit = { symbol: 'kWh', show: (kWh: number) => kWh };

const door: RingOpening = {
  id: 'door',
  name: 'West door',
  wall: 'west',
  wallName: 'West wall',
  azimuth: 270,
  tilt: 90,
  width: 1.2,
  without: 1234,
  with: 308.5,
};

describe('what the ring says', () => {
  const facts: RingFacts = {
    openings: [door, { ...door, id: 'b', name: 'Loft', tilt: 0, without: 100, with: undefined }],
    unit,
    when: '21 June, 13:00 to 14:00',
    sun: { azimuth: 181.2, altitude: 68.7 },
    behindHills: false,
    sunny: ['West door', 'Loft'],
  };

  it('names the opening with the most sun and those the sun stands before', () => {
    expect(describeRing(english, facts)).toBe(
      'The plan as a dial, north up, with 2 openings. West door (faces west 270 degrees) takes ' +
        'the most summer sun: 1,234\u00a0kWh without shading, 75\u00a0% stopped. ' +
        '21 June, 13:00 to 14:00: the sun stands in the south, 181°, 69° high, ' +
        'before West door and Loft.',
    );
    expect(describeRing(german, { ...facts, sunny: [] })).toBe(
      'Der Grundriss als Zifferblatt, Norden oben, mit 2 Öffnungen. Die meiste Sommersonne nimmt ' +
        'West door auf (zeigt nach Westen, 270 Grad): 1.234\u00a0kWh ohne Sonnenschutz, ' +
        'davon 75\u00a0% abgehalten. 21 June, 13:00 to 14:00: die Sonne steht im Süden, 181°, ' +
        '69° hoch; sie trifft keine der Öffnungen.',
    );
  });

  it('says nothing of light before sunrise or behind hills', () => {
    const night = { ...facts, openings: [], sun: { azimuth: 0, altitude: -20 } };
    expect(describeRing(english, night)).toBe(
      'The plan as a dial, north up, with 0 openings. 21 June, 13:00 to 14:00: the sun is down.',
    );
    expect(describeRing(english, { ...facts, behindHills: true })).toMatch(
      /69° high, behind the horizon's hills or trees\.$/,
    );
  });

  it('tells gains, the sky and long lists', () => {
    expect(facingText(english, { azimuth: 90, tilt: 0 })).toBe('faces the sky');
    expect(facingText(english, door, 'short')).toBe('faces west 270°');
    expect(gainText(english, { ...door, without: undefined }, unit)).toBe(
      'summer gain not yet known',
    );
    expect(gainText(german, { ...door, with: undefined }, unit)).toBe(
      'Sommergewinn 1.234\u00a0kWh ohne Sonnenschutz',
    );
    expect(listed(english, ['a', 'b', 'c'])).toBe('a, b and c');
    expect(listed(english, ['a', 'b', 'c', 'd', 'e', 'f'])).toBe('6 of the openings');
    expect(listed(german, ['a', 'b', 'c'])).toBe('a, b und c');
  });
});

describe('what the wall cut says', () => {
  const fin = { projection: 0.4, offset: 0.05, above: 0, below: 0 };
  const opening = {
    ...newOpening('window', { wall: 'w', room: 'r' }),
    name: 'Window',
    overhang: { projection: 0.6, aboveHead: 0.2, left: 0.3, right: 0.3 },
    finLeft: fin,
  };
  const subject = { opening, thickness: 0.42, panes: 3, wideGap: false };
  const slats = blinds.find((b) => b.kind === 'slats')!;
  const action = { kind: 'lower' } as const;
  const facts: CutFacts = {
    subject,
    units: 'metric',
    when: 'Noon',
    sunText: 'the sun',
    sun: { vector: [0, 0, 1], profile: 62.4, sideways: -12.2 },
    share: 0.416,
    pose: blindPose({ ...opening, blind: undefined }, slats, action, 62.4),
    action,
    screened: true,
  };

  it('tells sizes, the sun on the plane, the blind and the screen', () => {
    expect(describeCut(english, facts)).toBe(
      'Window, 1.200 m wide and 1.400 m high, in a wall 0.420 m thick: 3 panes set back 0.140 m, ' +
        'an overhang of 0.600 m, a fin on the left. Noon: the sun; profile angle 62°, ' +
        '12° from the left; it reaches 42\u00a0% of the glass. Blind: down, at 45°. ' +
        'Insect screen in place.',
    );
    expect(describeCut(german, { ...facts, pose: undefined, screened: false })).toBe(
      'Window, 1,200 m breit und 1,400 m hoch, in einer 0,420 m dicken Wand: 3 Scheiben, um ' +
        '0,140 m zurückgesetzt, eine Auskragung von 0,600 m, eine Blende links. Noon: the sun; ' +
        'Profilwinkel 62°, 12° von links; sie erreicht 42\u00a0% des Glases.',
    );
  });

  it('tells where no sun falls, and sun square on', () => {
    const bare = { ...facts, pose: undefined, screened: false };
    expect(describeCut(english, { ...bare, sun: undefined })).toMatch(
      /Noon: the sun; no direct sun on this opening\.$/,
    );
    const square = { ...facts.sun!, sideways: 0.2 };
    expect(describeCut(english, { ...bare, sun: square })).toMatch(
      /; profile angle 62°, square on; it reaches/,
    );
  });

  it('has a name and a step to undo for every handle, in both languages', () => {
    const both = { ...opening, finRight: fin };
    const handles = cutHandles(
      { ...subject, opening: both },
      { vertical: 0.1, plan: 0.1 },
      () => undefined,
    );
    expect(handles.map((h) => h.id)).toHaveLength(13);
    const step = (words: Words, id: (typeof handles)[number]['id']) =>
      words.of('openings')(`cut.step.${id}`, { name: 'Door' });
    const table = cutTable(english, handles, 'metric');
    handles.forEach(({ id }, row) => {
      const name = String(table.cell(row, 0));
      expect(name).not.toContain('cut.');
      expect(step(english, id)).toBe(`Change ${name.toLowerCase()} of Door`);
      expect(step(german, id)).toMatch(/^Door: \S.* ändern$/);
    });
  });
});
