import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import studio from '../../../data/examples/studio.shadewright.json' with { type: 'json' };
import { checkProject, parseProject } from '../../../lib/project/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import * as edits from '../../../src/app/openings/edits.ts';
import * as parts from '../../../src/app/openings/parts.ts';
import * as sizes from '../../../src/app/openings/sizes.ts';
import { stations } from '../../../src/library/climates.ts';
import { blinds, frames, glazings } from '../../../src/library/index.ts';
import { Words } from '../../../src/words/index.ts';

const english = await Words.load('en', ['openings', 'library']);
const german = await Words.load('de', ['openings', 'library']);

const library = { glazings, blinds, stations };
const start = parseProject(studio, library);
const fresh = (): Project => structuredClone(start);

/** The example with gross areas left out, so that any number of openings fits. */
function roomy(): Project {
  const project = fresh();
  for (const wall of project.walls) delete wall.area;
  return project;
}

const problems = (project: Project) => checkProject(project, library).problems;

describe('adding, copying and deleting', () => {
  it.each(['window', 'door', 'fixed', 'rooflight'] as const)(
    'adds a %s that can be run',
    (kind) => {
      const project = roomy();
      const id = edits.addOpening(english, project, kind, 'east')!;
      expect(edits.openingOf(project, id)).toMatchObject({ kind, wall: 'east', room: 'studio' });
      expect(problems(project)).toEqual([]);
      expect({ ...project, openings: project.openings.slice(0, -1) }).toEqual(roomy());
    },
  );

  it('copies beside the original, with an id and a name of its own', () => {
    const project = roomy();
    const first = edits.copyOpening(project, 'west-door')!;
    const second = edits.copyOpening(project, first)!;
    const ids = project.openings.map((o) => o.id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(edits.openingOf(project, first)!.name).toBe('West door 2');
    expect(edits.openingOf(project, second)!.name).toBe('West door 3');
    const { id: _a, name: _b, ...original } = edits.openingOf(project, 'west-door')!;
    const { id: _c, name: _d, ...copy } = edits.openingOf(project, second)!;
    expect(copy).toEqual(original);
    expect(problems(project)).toEqual([]);
  });

  it('deletes with what refers to it: leads of groups and airing rules', () => {
    const project = fresh();
    project.groups[0].lead = 'west-door';
    edits.deleteOpening(project, 'west-door');
    edits.deleteOpening(project, 'west-window');
    expect(project.groups[0].lead).toBe('any');
    expect(JSON.stringify(project.rooms)).not.toContain('west-window');
    expect(problems(project)).toEqual([]);
  });

  it('moves the openings of a wall that goes, or deletes them', () => {
    const moved = roomy();
    edits.deleteWall(moved, 'west', 'south');
    expect(moved.openings.map((o) => o.id)).toEqual(start.openings.map((o) => o.id));
    expect(edits.openingOf(moved, 'west-door')!.wall).toBe('south');
    expect(problems(moved)).toEqual([]);

    const gone = roomy();
    edits.deleteWall(gone, 'west');
    expect(gone.openings.some((o) => o.wall === 'west')).toBe(false);
    expect(problems(gone)).toEqual([]);
  });

  it('keeps every reference sound through any run of edits', () => {
    const kinds = ['window', 'door', 'fixed', 'rooflight'] as const;
    const step = fc.record({ what: fc.nat(8), which: fc.nat(20), other: fc.nat(20) });
    fc.assert(
      fc.property(fc.array(step, { maxLength: 12 }), (steps) => {
        const project = roomy();
        for (const { what, which, other } of steps) {
          const opening = project.openings[which % Math.max(1, project.openings.length)];
          const wall = project.walls[other % Math.max(1, project.walls.length)];
          if (what === 0 && wall) edits.addOpening(english, project, kinds[which % 4], wall.id);
          if (what === 1) edits.addWall(english, project);
          if (what === 2 && wall && project.walls.length > 1) {
            const to = project.walls.find((w) => w.id !== wall.id)!.id;
            edits.deleteWall(project, wall.id, which % 2 ? to : undefined);
          }
          if (!opening || !edits.openingOf(project, opening.id)) continue;
          if (what === 3) edits.copyOpening(project, opening.id);
          if (what === 4) edits.mirrorToOpposite(english, project, opening.id);
          if (what === 5) edits.deleteOpening(project, opening.id);
          if (what === 6) parts.ownGlazing(english, project, opening.id);
          if (what === 7) parts.setBlind(project, opening.id, blinds[other % 17].id);
          if (what === 8) sizes.setSize(opening, other % 2 ? 'width' : 'height', 0.6 + which / 20);
        }
        expect(problems(project)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});

describe('names of new things', () => {
  it('are in the language of the page, and free', () => {
    const names = (words: Words) => {
      const project = roomy();
      const made = [
        edits.addOpening(words, project, 'rooflight', 'east')!,
        edits.addOpening(words, project, 'rooflight', 'east')!,
        edits.mirrorToOpposite(words, project, 'corner-pane')!,
      ].map((id) => edits.openingOf(project, id)!.name);
      const wall = edits.wallOf(project, edits.addWall(words, project))!.name;
      const glazing = parts.glazingOf(project, parts.ownGlazing(words, project, 'west-door')!)!;
      return [...made, wall, glazing.name, glazing.source];
    };
    expect(names(english)).toEqual([
      'Roof-light, East wall',
      'Roof-light, East wall 2',
      'South-west corner pane, North-east wall',
      'South-east wall',
      'Own: Triple, two low-e coatings, argon',
      'Entered by the user.',
    ]);
    expect(names(german)).toEqual([
      'Dachfenster, East wall',
      'Dachfenster, East wall 2',
      'South-west corner pane, Nordostwand',
      'Südostwand',
      'Eigen: Dreifach, zwei Wärmeschutzschichten, Argon',
      'Selbst eingegeben.',
    ]);
  });

  it('an own glazing made from an own one keeps its name, with a number', () => {
    const project = fresh();
    const first = parts.ownGlazing(english, project, 'west-door')!;
    const { name } = parts.glazingOf(project, first)!;
    const second = parts.ownGlazing(english, project, 'west-door')!;
    expect(parts.glazingOf(project, second)!.name).toBe(`${name} 2`);
  });
});

describe('mirroring', () => {
  it('swaps left and right, and twice gives what was', () => {
    const project = fresh();
    const opening = edits.openingOf(project, 'south-long')!;
    opening.finLeft = { projection: 0.5, offset: 0.1, above: 0, below: 0 };
    opening.reveal.left = 0.1;
    opening.overhang!.left = 0.4;
    const before = structuredClone(project);
    edits.mirrorOpening(project, 'south-long');
    expect(opening.finLeft).toBeUndefined();
    expect(opening.finRight).toEqual(edits.openingOf(before, 'south-long')!.finLeft);
    expect(opening.reveal).toMatchObject({ left: 0.16, right: 0.1 });
    expect(opening.overhang).toMatchObject({ left: 1.2, right: 0.4 });
    edits.mirrorOpening(project, 'south-long');
    expect(project).toEqual(before);
  });

  it('puts a copy on the wall opposite, or on a new one like its own', () => {
    const project = roomy();
    const east = edits.mirrorToOpposite(english, project, 'west-door')!;
    expect(edits.openingOf(project, east)!.wall).toBe('east');
    const corner = edits.mirrorToOpposite(english, project, 'corner-pane')!;
    const made = edits.wallOf(project, edits.openingOf(project, corner)!.wall)!;
    expect(made).toMatchObject({ azimuth: 45, tilt: 90, thickness: 0.42, U: 0.12 });
    expect(problems(project)).toEqual([]);
  });
});

describe('sizes', () => {
  it('a set-back takes along the reveal faces that end flush, and only those', () => {
    const project = fresh();
    const opening = edits.openingOf(project, 'west-door')!;
    opening.reveal.sill = 0.3;
    sizes.setSetBack(opening, 0.2);
    expect(opening.setBack).toBe(0.2);
    expect(opening.reveal).toEqual({ head: 0.2, sill: 0.3, left: 0.2, right: 0.2 });
  });

  it('a sash that no longer fits shrinks to the hole in its frame; one that fits stays', () => {
    const opening = edits.openingOf(fresh(), 'west-door')!;
    sizes.setSize(opening, 'width', 1.1);
    expect(opening.airing!.width).toBe(0.98);
    sizes.setSize(opening, 'width', 0.9);
    expect(opening.airing!.width).toBeCloseTo(0.66, 9);
  });

  it('a thinner wall brings its glass forward', () => {
    const project = fresh();
    edits.setThickness(project, 'west', 0.15);
    expect(edits.openingOf(project, 'west-door')!.setBack).toBe(0.15);
    expect(edits.openingOf(project, 'south-long')!.setBack).toBe(0.16);
    expect(problems(project)).toEqual([]);
  });
});

describe('parts', () => {
  it('recognises the frame it has copied', () => {
    const opening = edits.openingOf(fresh(), 'west-door')!;
    for (const frame of frames) {
      parts.takeFrame(opening, frame.id);
      expect(opening.frame.Uf).toBe(frame.Uf);
      const known = frames.find((f) => f.id === parts.frameOf(opening))!;
      // Two library frames may have the same figures.
      expect(known.widths).toEqual(frame.widths);
      expect(known.psiInstall).toBe(frame.psiInstall);
    }
    opening.frame.Uf = 0.81;
    expect(parts.frameOf(opening)).toBeUndefined();
  });

  it('gives a glazing of its own and leaves that of the others', () => {
    const project = fresh();
    const id = parts.ownGlazing(english, project, 'west-door')!;
    parts.setGlazing(project, id, 'g', 0.35);
    expect(parts.glazingOf(project, id)).toMatchObject({ g: 0.35 });
    expect(parts.usersOf(project, id)).toEqual(['West door']);
    expect(edits.openingOf(project, 'west-window')!.glazing).toBe('triple-low-e');
    expect(problems(project)).toEqual([]);
  });

  it('an own glazing stays possible through any figures', () => {
    const project = fresh();
    edits.openingOf(project, 'west-door')!.glazing = 'double-clear-3';
    const id = parts.ownGlazing(english, project, 'west-door')!;
    for (const g of [0.1, 0.9, 0.05]) {
      parts.setGlazing(project, id, 'g', g);
      expect(problems(project)).toEqual([]);
    }
    parts.setGlazing(project, id, 'panes', 4);
    parts.setGlazing(project, id, 'solarTransmittance', 0.6);
    expect(parts.glazingOf(project, id)!.g).toBe(0.6);
    expect(problems(project)).toEqual([]);
  });

  it('gives a blind of its own and leaves that of the others', () => {
    const project = fresh();
    const kept = edits.openingOf(project, 'west-window')!.blind;
    const id = parts.ownBlind(english, project, 'west-door')!;
    parts.setBlindFigure(project, id, 'reflectanceUpper', 0.33);
    expect(parts.blindById(project, id)).toMatchObject({ reflectanceUpper: 0.33 });
    expect(parts.usersOf(project, id)).toEqual(['West door']);
    expect(edits.openingOf(project, 'west-window')!.blind).toEqual(kept);
    expect(problems(project)).toEqual([]);
  });

  it('an own blind stays possible through any figures its fields allow', () => {
    const figures = {
      slats: {
        // Sizes that do not fit each other are a problem told, not a figure changed unasked.
        slatWidth: [0.05, 0.1],
        slatSpacing: [0.05, 0.1],
        reflectanceUpper: [0, 1],
        reflectanceLower: [0, 1],
        slatTransmittance: [0, 1],
        angleMin: [-90, 90],
        angleMax: [-90, 90],
      },
      fabric: { openness: [0, 1], diffuseTransmittance: [0, 1], reflectance: [0, 1] },
      shutter: { transmittance: [0, 1], reflectance: [0, 1] },
    };
    const entry = fc.record({
      which: fc.nat(20),
      share: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.nat(100), fc.array(entry, { maxLength: 8 }), (start, entries) => {
        const project = fresh();
        const base = parts.shadesOf(project)[start % parts.shadesOf(project).length];
        parts.setBlind(project, 'west-door', base.id);
        edits.openingOf(project, 'west-door')!.blind!.standingAngle &&= 45;
        const id = parts.ownBlind(english, project, 'west-door')!;
        for (const { which, share } of entries) {
          const ranges = Object.entries(figures[base.kind]);
          const [field, [least, most]] = ranges[which % ranges.length];
          const value = least + share * (most - least);
          parts.setBlindFigure(project, id, field as parts.BlindFigure, value);
          expect(parts.blindById(project, id)).toMatchObject({ [field]: value });
        }
        expect(problems(project)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('a blind is moved by a schedule or a group, never both', () => {
    const project = fresh();
    project.groups[0].lead = 'west-door';
    parts.setMover(project, 'west-door', { kind: 'schedule', id: 'east-morning' });
    const { blind } = edits.openingOf(project, 'west-door')!;
    expect(blind).toMatchObject({ schedule: 'east-morning' });
    expect(blind).not.toHaveProperty('group');
    expect(project.groups[0].lead).toBe('any');
    parts.setMover(project, 'west-door', { kind: 'group', id: 'west-remote' });
    expect(blind).not.toHaveProperty('schedule');
    expect(problems(project)).toEqual([]);
  });

  it('another blind keeps what moves it and drops what it cannot do', () => {
    const project = fresh();
    parts.setBlind(project, 'west-door', 'external-roller-shutter');
    expect(edits.openingOf(project, 'west-door')!.blind).toEqual({
      blind: 'external-roller-shutter',
      windLimit: 10,
      group: 'west-remote',
    });
    parts.setBlind(project, 'west-door', undefined);
    expect(edits.openingOf(project, 'west-door')).not.toHaveProperty('blind');
    expect(problems(project)).toEqual([]);
  });

  it('offers meshes as screens and the rest as blinds', () => {
    const project = fresh();
    expect(parts.screensOf(project)[0].id).toContain('insect-screen');
    expect(parts.shadesOf(project).some((b) => b.id.startsWith('insect'))).toBe(false);
  });
});
