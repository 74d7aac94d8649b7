import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkProject } from '../../../lib/project/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import { lumpedMass, roomDefaultSources } from '../../../lib/room/index.ts';
import {
  addPart,
  addRoom,
  addRule,
  copyRoom,
  deleteRoom,
  fillHours,
  moveEntry,
  removePart,
  renamePart,
  setEnvelopeKind,
  setFloorArea,
  usualProfiles,
} from '../../../src/app/rooms/edits.ts';
import { formSummaries } from '../../../src/app/rooms/formSummaries.ts';
import {
  addLayer,
  addSurface,
  layerName,
  materialOfLayer,
  removeSurface,
  setMassKind,
  setMaterial,
} from '../../../src/app/rooms/massEdits.ts';
import { materials } from '../../../src/library/materials.ts';
import { EXAMPLES, exampleText, shippedLibrary } from '../../lib/project/library.ts';
import { Words } from '../../../src/words/index.ts';

const english = await Words.load('en', ['rooms', 'library']);
const german = await Words.load('de', ['rooms', 'library']);
const library = shippedLibrary();

function example(name: (typeof EXAMPLES)[number]): Project {
  const { project, problems } = checkProject(JSON.parse(exampleText(name)), library);
  if (!project) throw new Error(JSON.stringify(problems));
  return project;
}

type Edit = (draft: Project, room: Project['rooms'][number], at: number) => unknown;

const edits: Record<string, Edit> = {
  add: (draft) => addRoom(english, draft),
  copy: (draft, room) => copyRoom(draft, room.id),
  delete: (draft, room, at) => deleteRoom(draft, room.id, draft.rooms[at % draft.rooms.length].id),
  // No smaller than any example's openings need walls for.
  area: (_, room, at) => setFloorArea(room, 40 + at * 7),
  class: (_, room) => setMassKind(english, room, 'class'),
  value: (_, room) => setMassKind(english, room, 'value'),
  layers: (_, room) => setMassKind(english, room, 'layers'),
  surface: (_, room) => addSurface(english, room),
  noSurface: (_, room, at) => removeSurface(room, at),
  layer: (_, room, at) => {
    const surface = room.mass.kind === 'layers' ? room.mass.surfaces[at] : undefined;
    if (surface && surface.layers.length < 20 && surface.part === undefined) addLayer(surface);
  },
  material: (_, room, at) => {
    const surface = room.mass.kind === 'layers' ? room.mass.surfaces[at] : undefined;
    if (surface) setMaterial(surface.layers[0], materials[(at * 7) % materials.length].id);
  },
  total: (_, room) => setEnvelopeKind(english, room, 'total'),
  parts: (_, room) => setEnvelopeKind(english, room, 'parts'),
  addPart: (_, room) => addPart(english, room),
  // The last part stays: a room without openings could lose no heat without it.
  removePart: (_, room, at) => {
    const { envelope } = room;
    if (envelope.kind === 'parts' && envelope.parts.length > 1) {
      removePart(room, at % envelope.parts.length);
    }
  },
  renamePart: (_, room, at) => {
    const { envelope } = room;
    if (envelope.kind === 'parts') renamePart(room, at % envelope.parts.length, 'Wall');
  },
  night: (_, room) => addRule(english, room, 'night'),
  day: (_, room) => addRule(english, room, 'day'),
  up: (_, room, at) => moveEntry(room.airing, at, -1),
  down: (_, room, at) => moveEntry(room.airing, at, 1),
  usual: (_, room) => Object.assign(room, usualProfiles(room)),
};

describe('edits of rooms', () => {
  it('leave a project that can be computed, whatever their order', () => {
    const step = fc.record({
      edit: fc.constantFrom(...Object.keys(edits)),
      room: fc.nat(20),
      at: fc.nat(5),
    });
    const examples = Object.fromEntries(EXAMPLES.map((name) => [name, example(name)]));
    fc.assert(
      fc.property(
        fc.constantFrom(...EXAMPLES),
        fc.array(step, { maxLength: 12 }),
        (name, steps) => {
          const draft = structuredClone(examples[name]);
          const before = draft.openings.length;
          for (const { edit, room, at } of steps) {
            edits[edit](draft, draft.rooms[room % draft.rooms.length], at);
          }
          const { problems } = checkProject(draft, library);
          expect(problems).toEqual([]);
          expect(draft.openings.length).toBe(before);
          expect(draft.rooms.length).toBeGreaterThan(0);
        },
      ),
      { numRuns: 150 },
    );
  });

  it('move the openings of a deleted room and have its rules forget them', () => {
    const draft = example('bellingham');
    const [living, bedroom] = draft.rooms;
    const moved = draft.openings.filter((o) => o.room === bedroom.id);
    expect(moved.length).toBeGreaterThan(0);
    deleteRoom(draft, bedroom.id, living.id);
    expect(draft.rooms.map((r) => r.id)).toEqual([living.id]);
    expect(draft.openings.every((o) => o.room === living.id)).toBe(true);
  });

  it('keep the last room', () => {
    const draft = example('studio');
    deleteRoom(draft, draft.rooms[0].id, draft.rooms[0].id);
    expect(draft.rooms.length).toBe(1);
  });

  it('copy a room without its openings', () => {
    const draft = example('studio');
    const id = copyRoom(draft, 'studio')!;
    const copy = draft.rooms.find((r) => r.id === id)!;
    expect(copy.name).toBe('Studio 2');
    expect(draft.openings.some((o) => o.room === id)).toBe(false);
    expect(copy.airing.every((rule) => rule.openings === undefined)).toBe(true);
    expect(draft.rooms[0].airing[0].openings).toBeDefined();
  });

  it('keep the clear height where the floor area changes', () => {
    const [room] = example('studio').rooms;
    const height = room.volume / room.floorArea;
    setFloorArea(room, 60);
    // The volume is kept to a litre.
    expect(room.volume / 60).toBeCloseTo(height, 4);
  });

  it('go on with the heat storage and the losses there were', () => {
    const [room] = example('studio').rooms;
    const mass = lumpedMass(room);
    setMassKind(english, room, 'value');
    expect(lumpedMass(room)).toEqual(mass);
    // By hand: walls 48 x 0.12 + roof 43 x 0.09 to outdoors, floor 38 x 0.11 to the ground.
    setEnvelopeKind(english, room, 'total');
    expect(room.envelope).toEqual({ kind: 'total', UA: 9.63, groundUA: 4.18 });
  });

  it('start layers from a light room of its size, and know their materials again', () => {
    const [room] = example('studio').rooms;
    setMassKind(english, room, 'layers');
    if (room.mass.kind !== 'layers') throw new Error('changed');
    // EN ISO 13790:2008, table 12: a very light room stores 80, a light one 110 kJ/m2K of floor;
    // boards on a timber frame lie about there.
    const perFloor = lumpedMass(room).heatCapacity / room.floorArea / 1000;
    expect(perFloor).toBeGreaterThan(60);
    expect(perFloor).toBeLessThan(130);
    const [layer] = room.mass.surfaces[0].layers;
    for (const { id } of materials) {
      setMaterial(layer, id);
      expect(materialOfLayer(layer)?.id).toBe(id);
    }
    layer.density = 1234;
    expect(materialOfLayer(layer)).toBeUndefined();
  });

  it('rename an inner surface with its part', () => {
    const [room] = example('bellingham').rooms;
    if (room.mass.kind !== 'layers' || room.envelope.kind !== 'parts') throw new Error('changed');
    const at = room.envelope.parts.findIndex(
      (p) => room.mass.kind === 'layers' && room.mass.surfaces.some((s) => s.part === p.name),
    );
    const old = room.envelope.parts[at].name;
    const count = room.mass.surfaces.filter((s) => s.part === old).length;
    renamePart(room, at, 'Another name');
    expect(room.mass.surfaces.filter((s) => s.part === 'Another name').length).toBe(count);
    removePart(room, at);
    expect(room.mass.surfaces.some((s) => s.part === 'Another name')).toBe(false);
  });
});

describe('names of what is new', () => {
  it('are in the language of the page', () => {
    const draft = example('studio');
    const { parts, rule } = madeIn(english, draft);
    expect(parts).toEqual(['Walls', 'Roof', 'Floor', 'Wall']);
    expect(rule).toBe('Night airing, tilted');
    const made = madeIn(german, draft);
    expect(made.parts).toEqual(['Wände', 'Dach', 'Boden', 'Wand']);
    expect(made.rule).toBe('Nachtlüftung, gekippt');
    expect(draft.rooms.map((room) => room.name)).toEqual(['Studio', 'Room', 'Raum']);
    expect(checkProject(draft, library).problems).toEqual([]);
  });

  it('of materials follow the page, whatever the project keeps', () => {
    const [room] = example('studio').rooms;
    setMassKind(german, room, 'layers');
    if (room.mass.kind !== 'layers') throw new Error('changed');
    const [floor] = room.mass.surfaces;
    expect(floor.name).toBe('Boden');
    expect(layerName(english, floor.layers[0])).toBe('Timber, softwood');
    expect(layerName(german, floor.layers[0])).not.toBe('Timber, softwood');
    expect(layerName(german, { ...floor.layers[0], name: 'Own floor' })).toBe('Own floor');
  });
});

/** A room made on a page of a language, with one more wall. */
function madeIn(words: Words, draft: Project): { parts: string[]; rule?: string } {
  const id = addRoom(words, draft);
  const room = draft.rooms.find((r) => r.id === id)!;
  addPart(words, room);
  const { envelope, airing } = room;
  const parts = envelope.kind === 'parts' ? envelope.parts.map((part) => part.name) : [];
  return { parts, rule: airing[0].name };
}

describe('the sources of what a room starts with', () => {
  it('are those of the engine', () => {
    const t = english.of('rooms');
    for (const [key, source] of Object.entries(roomDefaultSources)) {
      expect(t(`sourceOf.${key as keyof typeof roomDefaultSources}`)).toBe(source);
    }
  });
});

describe('filling hours', () => {
  it('fills the hours the clock passes from the first time to the second', () => {
    const hour = fc.integer({ min: 0, max: 23 });
    fc.assert(
      fc.property(hour, hour, (from, to) => {
        const filled = fillHours(new Array<number>(24).fill(0), from, to, 1);
        // Walks the clock round by hand.
        const expected = new Array<number>(24).fill(0);
        let at = from;
        do {
          expected[at] = 1;
          at = (at + 1) % 24;
        } while (at !== to);
        expect(filled).toEqual(expected);
      }),
    );
  });
});

describe('summaries of the form', () => {
  it('add up the hours somebody is in', () => {
    const project = example('studio');
    // 9:00 to 18:00 on five days, 10:00 to 13:00 on two: 51 hours.
    expect(formSummaries(english, project, project.rooms[0]).occupied).toBe('51 h a week');
    const room = structuredClone(project.rooms[0]);
    // Spans that lap over midnight and over each other: 22:00 to 8:00 is ten hours.
    room.occupied = {
      weekday: [
        { from: 1320, to: 420 },
        { from: 360, to: 480 },
      ],
      weekend: [],
    };
    expect(formSummaries(english, project, room).occupied).toBe('50 h a week');
  });

  it('give the heat of people as the mean of a week', () => {
    const project = example('studio');
    // 8 hours of 90 W on five days and 3 on two, in kWh a day: (5 x 0.72 + 2 x 0.27) / 7 = 0.59.
    expect(formSummaries(english, project, project.rooms[0]).people).toBe('0.6 kWh a day');
    expect(formSummaries(german, project, project.rooms[0]).people).toBe('0,6 kWh am Tag');
  });
});
