import { polar, sectorPath } from '../app/charts/ring/dial.ts';
import { layoutRing } from '../app/charts/ring/layout.ts';
import type { RingArc } from '../app/charts/ring/layout.ts';
import type { OpeningAnswer } from './answer.ts';
import type { PageFacts } from './facts.ts';
import { openingOf, wallOf } from './facts.ts';
import { fitted, path, round, text } from './marks.ts';
import type { Mark, Palette, Picture } from './marks.ts';
import type { Teller } from './teller.ts';

const SIZE = 200;
const WIDTH = 640;
const ROW = 22;
const KEY = SIZE + 22;

/** The plan as a dial with its openings by number, and what each needs beside it. */
export function ringPicture(
  facts: PageFacts,
  answers: readonly OpeningAnswer[],
  teller: Teller,
  colours: Palette,
): Picture {
  const { t } = teller;
  const { arcs, radii } = layoutRing(ringInput(facts), SIZE);
  const height = Math.max(SIZE, ROW * answers.length + 8);
  const middle = { x: SIZE / 2, y: Math.min(height, SIZE) / 2 };
  const moved = (marks: Mark[]): Mark[] =>
    marks.map(({ tag, attrs, text: letters }) => ({
      tag,
      attrs:
        tag === 'path' || tag === 'circle'
          ? { ...attrs, transform: `translate(${middle.x},${middle.y})` }
          : {
              ...attrs,
              x: round(Number(attrs.x) + middle.x),
              y: round(Number(attrs.y) + middle.y),
            },
      ...(letters === undefined ? {} : { text: letters }),
    }));
  const numbers = numberPlaces(arcs, radii.rim);
  const dial = [
    path(circlePath(radii.base), { stroke: colours.line, fill: colours.never }),
    path(circlePath(radii.rim), { stroke: colours.line, 'stroke-dasharray': '1 3' }),
    ...compassMarks(radii.rim, teller, colours),
    ...arcs.map((arc, i) => arcMark(arc, answers[i]!, colours)),
    ...arcs.flatMap((_, i) => numberMark(numbers[i]!, i + 1, colours)),
  ];
  return {
    title: t('ring.title'),
    about: t('ring.about'),
    width: WIDTH,
    height,
    marks: [...moved(dial), ...keyMarks(facts, answers, teller, colours)],
    table: {
      columns: [{ head: t('ring.opening') }, { head: t('ring.facade') }, { head: t('ring.need') }],
      rows: answers.map((answer) => [
        openingOf(facts, answer.id).name,
        teller.facing(wallOf(facts, openingOf(facts, answer.id).wall).azimuth),
        needText(answer, teller),
      ]),
    },
  };
}

function ringInput({ project, study }: PageFacts) {
  const sums = new Map(study.openings.map((o) => [o.id, o.sums]));
  return project.openings.map((opening) => {
    const wall = project.walls.find((w) => w.id === opening.wall)!;
    return {
      id: opening.id,
      name: opening.name,
      wall: wall.id,
      wallName: wall.name,
      azimuth: wall.azimuth,
      tilt: wall.tilt,
      width: opening.width * opening.count,
      without: sums.get(opening.id)?.without.summer,
      with: sums.get(opening.id)?.with.summer,
    };
  });
}

/** What an opening needs, in a few words. */
export function needText({ need, saved }: OpeningAnswer, teller: Teller): string {
  const { t } = teller;
  if (need === 'blind') return t('need.blind');
  if (need === 'plannedExternal') return t('need.plannedExternal', { hours: teller.hours(saved) });
  if (need === 'otherShading') return t('need.otherShading');
  return t('need.none');
}

function arcMark(
  { from, to, inner, outer }: RingArc,
  { need }: OpeningAnswer,
  colours: Palette,
): Mark {
  const style =
    need === 'blind'
      ? { fill: colours.hot, stroke: colours.hot }
      : need === 'none'
        ? { fill: colours.paper, stroke: colours.ink }
        : { fill: colours.eased, stroke: colours.easedInk };
  return path(sectorPath(from, to, inner, outer), { ...style, 'stroke-width': 1 });
}

/** Numbers stand outside their arcs, pushed apart where arcs are close. */
function numberPlaces(arcs: readonly RingArc[], rim: number) {
  const placed: { x: number; y: number }[] = [];
  for (const arc of arcs) {
    let radius = arc.outer + 11;
    let azimuth = arc.middle;
    let place = polar(azimuth, radius);
    for (
      let tries = 1;
      placed.some((p) => Math.hypot(p.x - place.x, p.y - place.y) < 16.5);
      tries++
    ) {
      azimuth = arc.middle + (tries % 2 ? 1 : -1) * Math.ceil(tries / 2) * 4;
      if (tries % 16 === 0) radius = Math.min(rim - 9, radius + 17);
      place = polar(azimuth, radius);
      if (tries > 120) break;
    }
    placed.push(place);
  }
  return placed;
}

function numberMark({ x, y }: { x: number; y: number }, n: number, colours: Palette): Mark[] {
  const circle: Mark = {
    tag: 'circle',
    attrs: {
      cx: round(x),
      cy: round(y),
      r: 7.2,
      fill: colours.paper,
      stroke: colours.ink,
      'stroke-width': 0.9,
    },
  };
  const letters = text(x, y + 3.5, String(n), {
    size: 10,
    fill: colours.ink,
    anchor: 'middle',
    weight: 700,
  });
  return [circle, letters];
}

function compassMarks(rim: number, teller: Teller, colours: Palette): Mark[] {
  return [0, 90, 180, 270].map((azimuth) => {
    const { x, y } = polar(azimuth, rim + 11);
    const letter = [...teller.compass(azimuth)][0]!.toUpperCase();
    return text(x, y + 4.5, letter, { size: 13, fill: colours.ink, anchor: 'middle', weight: 700 });
  });
}

function keyMarks(
  facts: PageFacts,
  answers: readonly OpeningAnswer[],
  teller: Teller,
  colours: Palette,
): Mark[] {
  return answers.flatMap((answer, i) => {
    const y = 16 + i * ROW;
    const { name } = openingOf(facts, answer.id);
    const swatch = arcMark({ from: -1, to: 1, inner: 0, outer: 1 } as RingArc, answer, colours);
    return [
      ...numberMark({ x: KEY + 9, y: y - 1 }, i + 1, colours),
      {
        tag: 'rect',
        attrs: {
          x: KEY + 23,
          y: y - 8,
          width: 12,
          height: 12,
          fill: swatch.attrs.fill!,
          stroke: swatch.attrs.stroke!,
        },
      },
      text(KEY + 42, y - 0.5, fitted(name, WIDTH - KEY - 44, 11), {
        size: 11,
        fill: colours.ink,
        weight: 700,
      }),
      text(KEY + 42, y + 11, fitted(needText(answer, teller), WIDTH - KEY - 36, 10), {
        size: 10,
        fill: colours.soft,
      }),
    ] satisfies Mark[];
  });
}

function circlePath(radius: number): string {
  const r = round(radius);
  return `M0,${-r}A${r},${r} 0 1 1 0,${r}A${r},${r} 0 1 1 0,${-r}Z`;
}
