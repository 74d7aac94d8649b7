import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compileOpening } from '../../../lib/opening/index.ts';
import { fieldHints, geometryOf, newOpening } from '../../../lib/project/index.ts';
import type { ProjectOpening } from '../../../lib/project/index.ts';
import { blindPose, blindUp, inSeason } from '../../../src/app/charts/cut/blindDrawing.ts';
import { cutFrame, fitScale, scaleBar, turned } from '../../../src/app/charts/cut/frame.ts';
import type { Spot } from '../../../src/app/charts/cut/frame.ts';
import { cutHandles, snapped } from '../../../src/app/charts/cut/handles.ts';
import { cutLight } from '../../../src/app/charts/cut/light.ts';
import { litAcross, litUp, stopDistance, sunOnPlane } from '../../../src/app/charts/cut/rays.ts';
import { planSection, verticalSection } from '../../../src/app/charts/cut/shapes.ts';
import { blinds } from '../../../src/library/index.ts';

function sample(part: Partial<ProjectOpening> = {}): ProjectOpening {
  return { ...newOpening('window', { wall: 'w', room: 'r' }), ...part };
}

const subject = (opening: ProjectOpening) => ({
  opening,
  thickness: 0.42,
  panes: 3,
  wideGap: false,
});

const none = { head: 0, sill: 0, left: 0, right: 0 };

describe('rays', () => {
  it('sunlit height of a bare hole by hand: set-back 0.2 m, profile angle 45 degrees', () => {
    const deep = { head: 0.2, sill: 0.2, left: 0.2, right: 0.2 };
    const opening = sample({ width: 1, height: 1, setBack: 0.2, reveal: deep });
    const geometry = { ...geometryOf(opening), frame: none };
    const slope = Math.SQRT1_2;
    const [span] = litUp(geometry, 0.5, [0, slope, slope]);
    // One of 400 samples of a metre.
    expect(span[0]).toBeCloseTo(0, 9);
    expect(Math.abs(span[1] - 0.8)).toBeLessThan(0.0026);
    const [across] = litAcross(geometry, 0.4, [slope, 0, slope]);
    expect(Math.abs(across[1] - 0.8)).toBeLessThan(0.0026);
  });

  it('share of points reached agrees with the closed form of the engine', () => {
    const metres = (max: number) => fc.double({ min: 0, max, noNaN: true });
    const fin = fc.record({
      projection: metres(0.8),
      offset: metres(0.3),
      above: metres(0.3),
      below: metres(0.3),
    });
    const shapes = fc.record({
      setBack: metres(0.3),
      head: metres(0.4),
      sill: metres(0.4),
      left: metres(0.4),
      right: metres(0.4),
      overhang: fc.option(
        fc.record({
          projection: metres(1.2),
          aboveHead: metres(0.4),
          left: metres(0.5),
          right: metres(0.5),
        }),
        { nil: undefined },
      ),
      finLeft: fc.option(fin, { nil: undefined }),
      finRight: fc.option(fin, { nil: undefined }),
      sideways: fc.double({ min: -70, max: 70, noNaN: true }),
      profile: fc.double({ min: -20, max: 75, noNaN: true }),
    });
    fc.assert(
      fc.property(shapes, (s) => {
        const { setBack, head, sill, left, right, overhang, finLeft, finRight } = s;
        const reveal = { head, sill, left, right };
        const geometry = geometryOf(sample({ setBack, reveal, overhang, finLeft, finRight }));
        const ray = [
          Math.tan((s.sideways * Math.PI) / 180),
          Math.tan((s.profile * Math.PI) / 180),
          1,
        ];
        const length = Math.hypot(...ray);
        const sun = [ray[0] / length, ray[1] / length, ray[2] / length] as const;
        const { frame, width, height } = geometry;
        const N = 60;
        let lit = 0;
        for (let i = 0; i < N; i++) {
          for (let j = 0; j < N; j++) {
            const x = frame.left + ((i + 0.5) / N) * (width - frame.left - frame.right);
            const y = frame.sill + ((j + 0.5) / N) * (height - frame.sill - frame.head);
            if (stopDistance(geometry, x, y, sun) === 0) lit++;
          }
        }
        const exact = compileOpening(geometry).sunlit(...sun);
        // A grid of 60 x 60 misses along each edge of a shadow by up to half a cell: two edges
        // each way at most, 2 x 2 x 0.5 / 60.
        expect(Math.abs(lit / (N * N) - exact)).toBeLessThan(0.034);
      }),
      { numRuns: 60 },
    );
  });

  it('knows the sun on a plane by hand', () => {
    const west = { azimuth: 270, tilt: 90 };
    expect(sunOnPlane({ azimuth: 90, altitude: 30 }, west)).toBeUndefined();
    expect(sunOnPlane({ azimuth: 270, altitude: -3 }, west)).toBeUndefined();
    const sun = sunOnPlane({ azimuth: 240, altitude: 30 }, west)!;
    // tan p = tan 30 / cos 30; the south is on the right of one who faces a west wall.
    expect(sun.profile).toBeCloseTo((Math.atan(2 / 3) * 180) / Math.PI, 6);
    expect(sun.sideways).toBeCloseTo(30, 6);
  });

  it('ends rays at a lowered blind outside, and at the glass under one inside', () => {
    const sun = sunOnPlane({ azimuth: 180, altitude: 30 }, { azimuth: 180, tilt: 90 })!;
    const opening = sample({ setBack: 0.14 });
    const depthOf = (id: string) => {
      const blind = blinds.find((b) => b.id === id)!;
      const pose = blindPose(opening, blind, { kind: 'lower' }, sun.profile);
      const rays = cutLight(subject(opening), sun, pose)!.vertical.rays;
      return rays.map((ray) => ray[1][0]);
    };
    // Depth 0.14 is the glass; a fabric outside hangs before it.
    for (const depth of depthOf('external-fabric-dark')) expect(depth).toBeLessThan(0.13);
    expect(Math.max(...depthOf('internal-roller-white'))).toBeCloseTo(0.14, 6);
  });
});

describe('pictures', () => {
  const corners: Spot[] = [
    [-1, -0.2],
    [-1, 2],
    [0.6, -0.2],
    [0.6, 2],
  ];

  it('hold all corners at the scale that fits, for walls and roofs', () => {
    for (const lean of [0, 30, 60, 90, -20]) {
      const scale = fitScale(corners, lean, 300, 200);
      const frame = cutFrame(corners, lean, scale, 300, 200);
      for (const corner of corners) {
        const [x, y] = frame.place(corner);
        expect(x).toBeGreaterThanOrEqual(-1e-6);
        expect(x).toBeLessThanOrEqual(300 + 1e-6);
        expect(y).toBeGreaterThanOrEqual(-1e-6);
        expect(y).toBeLessThanOrEqual(200 + 1e-6);
      }
    }
  });

  it('turn the outdoors of a roof upwards', () => {
    const [u, v] = turned([-1, 0], 60);
    expect(u).toBeCloseTo(-0.5, 9);
    expect(v).toBeCloseTo(Math.sqrt(3) / 2, 9);
  });

  it('read a drag back along its direction', () => {
    const frame = cutFrame(corners, 35, 120, 300, 200);
    const [x0, y0] = frame.place([0, 0]);
    const [x1, y1] = frame.place([-0.3, 0]);
    expect(frame.along(x1 - x0, y1 - y0, [-1, 0])).toBeCloseTo(0.3, 9);
    expect(frame.along(x1 - x0, y1 - y0, [0, 1])).toBeCloseTo(0, 9);
  });

  it('give a round scale bar', () => {
    expect(scaleBar(100, false)).toBe(0.5);
    expect(scaleBar(100, true)).toBeCloseTo(2 * 0.3048, 9);
  });

  it('show every part of a well-furnished opening in view', () => {
    const fin = { projection: 0.4, offset: 0.1, above: 0, below: 0 };
    const opening = sample({
      overhang: { projection: 1.1, aboveHead: 0.5, left: 2, right: 2 },
      finLeft: fin,
      finRight: fin,
    });
    for (const section of [verticalSection(subject(opening)), planSection(subject(opening))]) {
      const us = section.corners.map(([u]) => u);
      const vs = section.corners.map(([, v]) => v);
      for (const [u, v] of section.parts.flatMap((part) => part.spots)) {
        expect(u).toBeGreaterThanOrEqual(Math.min(...us) - 1e-9);
        expect(u).toBeLessThanOrEqual(Math.max(...us) + 1e-9);
        expect(v).toBeGreaterThanOrEqual(Math.min(...vs) - 1e-9);
        expect(v).toBeLessThanOrEqual(Math.max(...vs) + 1e-9);
      }
    }
  });
});

describe('blinds in the section', () => {
  const slats = blinds.find((b) => b.id === 'external-slats-80-silver')!;

  it('cover the share of the glass they are told to, slats at their angle', () => {
    const opening = sample();
    const pose = blindPose(opening, slats, { kind: 'tilt', angle: 60, share: 0.5 }, 40);
    expect(pose).toMatchObject({ share: 0.5, angle: 60 });
    const { lines } = blindUp(subject(opening), pose, 0.001);
    const lowest = Math.min(...lines.flat().map(([, y]) => y));
    const glass = opening.height - opening.frame.widths.head - opening.frame.widths.sill;
    const foot = opening.height - opening.frame.widths.head - glass / 2;
    // The last slat hangs within one spacing of the foot.
    expect(Math.abs(lowest - foot)).toBeLessThan(0.08);
    const [outer, inner] = lines[0];
    // The outer edge (less depth) hangs lower by tan 60 of its reach.
    expect((inner[1] - outer[1]) / (inner[0] - outer[0])).toBeCloseTo(Math.tan(Math.PI / 3), 6);
  });

  it('stay within the drive, and draw nothing while raised', () => {
    const opening = sample({ blind: { blind: slats.id, standingAngle: 90 } });
    expect(blindPose(opening, slats, { kind: 'lower' }, 40).angle).toBe(78);
    const up = blindPose(opening, slats, { kind: 'raise' }, 40);
    expect(blindUp(subject(opening), up, 0.01).lines).toEqual([]);
  });

  it('know a season that runs over new year', () => {
    expect(inSeason(0, { from: '11-01', to: '02-01' })).toBe(true);
    expect(inSeason(180, { from: '11-01', to: '02-01' })).toBe(false);
    expect(inSeason(180, { from: '05-01', to: '10-01' })).toBe(true);
  });
});

describe('handles', () => {
  const opening = sample({
    overhang: { projection: 0.6, aboveHead: 0.25, left: 1, right: 1 },
    finLeft: { projection: 0.3, offset: 0.05, above: 0, below: 0 },
    finRight: { projection: 0.4, offset: 0.1, above: 0, below: 0 },
    reveal: { head: 0.1, sill: 0.11, left: 0.12, right: 0.13 },
  });
  const gap = { vertical: 0.2, plan: 0.2 };
  const hints = fieldHints();
  const hintOf = (field: string) => hints.get(field);
  const handles = cutHandles(subject(opening), gap, hintOf);

  it('are there for every dimension of every part', () => {
    expect(handles.map((h) => h.id).sort()).toEqual(
      [
        'finLeft.offset',
        'finLeft.projection',
        'finRight.offset',
        'finRight.projection',
        'height',
        'overhang.aboveHead',
        'overhang.projection',
        'reveal.head',
        'reveal.left',
        'reveal.right',
        'reveal.sill',
        'setBack',
        'width',
      ].sort(),
    );
    expect(cutHandles(subject(sample()), gap, hintOf)).toHaveLength(7);
  });

  it.each(handles.map((h) => [h.id, h] as const))('%s sets its own field only', (id, handle) => {
    const draft = structuredClone(opening);
    const next = handle.value + 0.05;
    handle.set(draft, next);
    const after = cutHandles(subject(draft), gap, hintOf);
    for (const other of after) {
      const before = handles.find((h) => h.id === other.id)!;
      if (other.id === id) expect(other.value).toBeCloseTo(next, 9);
      else expect(other.value).toBe(before.value);
    }
    const { width, height, setBack, reveal, overhang, finLeft, finRight, airing, ...rest } = draft;
    expect(rest).toEqual(
      Object.fromEntries(Object.keys(rest).map((k) => [k, opening[k as keyof ProjectOpening]])),
    );
  });

  it('stand where their value is, and move by it', () => {
    for (const handle of handles) {
      const draft = structuredClone(opening);
      handle.set(draft, handle.value + 0.05);
      const moved = cutHandles(subject(draft), gap, hintOf).find((h) => h.id === handle.id)!;
      const by = [moved.spot[0] - handle.spot[0], moved.spot[1] - handle.spot[1]];
      expect(by[0] * handle.direction[0] + by[1] * handle.direction[1]).toBeCloseTo(0.05, 9);
    }
  });

  it('keep to the ranges of the project file, to the wall and to the frame', () => {
    for (const handle of handles) {
      const hint = hintOf(handle.field)!;
      expect(handle.min).toBeGreaterThanOrEqual(hint.min!);
      expect(handle.max).toBeLessThanOrEqual(hint.max!);
    }
    const setBack = handles.find((h) => h.id === 'setBack')!;
    expect(snapped(setBack, 3, 0.005)).toBe(0.42);
    expect(snapped(setBack, -1, 0.005)).toBe(0);
    expect(snapped(setBack, 0.1234, 0.005)).toBe(0.125);
  });
});
