import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { validateBlind } from '../../../lib/blind/index.ts';
import type { Blind } from '../../../lib/blind/index.ts';
import { buildTypicalYear, normalsProblems, previewFile } from '../../../lib/climate/index.ts';
import type { Problem, Text } from '../../../lib/problem/index.ts';
import { validateRoom, roomCautions } from '../../../lib/room/index.ts';
import type { Room } from '../../../lib/room/index.ts';
import { validateSchedule } from '../../../lib/schedule/index.ts';
import { stations } from '../../../src/library/climates.ts';
import { Words } from '../../../src/words/index.ts';
import { defaultRoom } from '../../../lib/room/index.ts';
import { englishIn } from './englishIn.ts';

type Tree = { [key: string]: string | Tree };

const german = await Words.load('de', []);

function sentences(tree: Tree): string[] {
  return Object.values(tree).flatMap((each) =>
    typeof each === 'string' ? [each] : sentences(each),
  );
}

/** Names of fields and of published works, which are the same in every language. */
const SAME = /\b(openAbove|angleM(in|ax)|decimal degrees|Long & \w+|--weather)\b/g;

const textsOf = ({ texts }: Problem): Text[] => {
  expect(texts).toBeDefined();
  const { message, allowed, fix, value, where } = texts!;
  return [message, allowed, fix, value, where].filter((text) => text !== undefined);
};

function expectGerman(texts: readonly Text[]): void {
  expect(texts.length).toBeGreaterThan(0);
  for (const text of texts) {
    if (text.file === '' && !text.parts) continue; // letters of the user
    const told = german.text(text);
    expect(englishIn(told.replace(SAME, '')), told).toEqual([]);
    expect(told).not.toContain('{{');
  }
}

describe.each(['rules', 'problems', 'weather', 'fields', 'entry'])('German of %s', (file) => {
  it('has no English word', () => {
    const tree = JSON.parse(readFileSync(`data/words/de/${file}.json`, 'utf8')) as Tree;
    for (const text of sentences(tree)) {
      const plain = text.replace(/\{\{\w+\}\}/g, '').replace(SAME, '');
      expect(englishIn(plain), text).toEqual([]);
    }
  });
});

describe('what is wrong with parts', () => {
  it('is told in German: blinds', () => {
    const blind = {
      id: 'b',
      name: 'B',
      position: 'above',
      kind: 'slats',
      slatWidth: 0.001,
      slatSpacing: 0.4,
      reflectanceUpper: 0.8,
      reflectanceLower: 'x',
      slatTransmittance: 0.5,
      angleMin: 60,
      angleMax: 30,
      windLimit: 0.25,
      source: '',
    } as unknown as Blind;
    const problems = validateBlind(blind);
    expect(problems.length).toBeGreaterThanOrEqual(6);
    expectGerman(problems.flatMap(textsOf));
  });

  it('is told in German: schedules', () => {
    const { problems } = validateSchedule({
      id: 's',
      name: 'S',
      rules: [
        {
          id: 'a',
          when: {
            months: [],
            dates: { from: '02-30', to: '05-01' },
            clock: { from: 7, to: 2000 },
            irradianceAbove: { at: 100, release: 150 },
            roomAbove: { at: 99, release: 22 },
          },
          then: { kind: 'tilt', angle: 120 },
        },
        { id: 'a', when: { weekdays: [8] }, then: { kind: 'fly' } as never },
      ],
      minMinutesBetweenMoves: -1,
    });
    expect(problems.length).toBeGreaterThanOrEqual(10);
    expectGerman(problems.flatMap(textsOf));
    const [first] = problems;
    expect(german.text(first.texts!.allowed!)).toBe('0 bis 1440 min');
  });

  it('is told in German: rooms, with decimal commas', () => {
    const room: Room = { ...defaultRoom('r', 'R', 'living', 20), volume: 30 };
    const { warnings } = validateRoom(room, []);
    expectGerman(warnings.flatMap(textsOf));
    const height = warnings.find((w) => w.path === 'room.volume')!;
    expect(height.value).toBe('"1.5 m"');
    expect(german.text(height.texts!.value!)).toBe('1,5 m');
    expect(german.text(height.texts!.allowed!)).toBe('1,8 bis 8 m');
    expectGerman(Object.values(roomCautions));
  });
});

describe('what the engine says of weather', () => {
  const { normals, latitude, longitude, elevation } = stations[0];
  const place = { latitude, longitude, elevation, standardOffset: 0, name: 'Ort' };

  it('is in German: built years', () => {
    const { messages, source } = buildTypicalYear(normals, place, { warmer: 1.5, sunnier: 1.2 });
    expectGerman([...messages, source.note]);
    expect(messages.map((m) => german.text(m)).join(' ')).toContain('1,5 K wärmer');
  });

  it('is in German: monthly values', () => {
    const ghi = normals.ghiKWhPerM2Day.map((value, m) => (m === 6 ? 13.5 : value));
    const wrong = { ...normals, ghiKWhPerM2Day: ghi };
    const problems = normalsProblems(wrong, latitude);
    expectGerman(problems.flatMap(textsOf));
    expect(german.text(problems[0].texts!.message)).toContain('Juli');
    expect(german.text(problems[0].texts!.value!)).toBe('13,5 kWh/m² am Tag');
    expectGerman(normalsProblems({ ...normals, wind: [1, 2] }).flatMap(textsOf));
  });

  it.each([
    ['empty', ''],
    ['no table', 'some words\nand others\n'],
    ['too short', `month,day,hour,ghi,dni,dhi,temp,wind\n${'1,1,1,10,5,5,3.5,2\n'.repeat(30)}`],
    ['a binary file', 'PK\u0000\u0001'],
  ])('is in German: a file that is %s', (_, text) => {
    const { checks } = previewFile(text, undefined, { latitude, longitude, elevation });
    expect(checks.some((check) => check.level === 'error')).toBe(true);
    expectGerman(checks.map((check) => check.sentence));
  });

  it('writes thousands, lines and columns in the manner of the language', () => {
    const rows = '1,1,1,10,5,5,3.5,2\n1,1,2,x,5,5,3.5,2\n1,1,3,10,5,5,3.5,2\n';
    const text = `month,day,hour,ghi,dni,dhi,temp,wind\n${rows.repeat(1200)}`;
    const { checks } = previewFile(text, undefined, { latitude, longitude, elevation });
    expect(checks.map(({ sentence }) => german.text(sentence))).toEqual([
      'Zeile 3, Spalte „ghi“: ist keine Zahl; 1.199 weitere in dieser Spalte auch nicht (angegeben: "x"). Berichtigen oder die Zelle leer lassen, wo der Wert fehlt.',
    ]);
  });
});
