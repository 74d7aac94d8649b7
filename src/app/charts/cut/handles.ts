import type { FieldHint, ProjectOpening } from '../../../../lib/project/index.ts';
import { setSetBack, setSize } from '../../openings/sizes.ts';
import type { Spot } from './frame.ts';
import { PLATE, depth, wallBelow } from './shapes.ts';
import type { CutSubject } from './shapes.ts';

/** A dimension that can be taken by its end in a section. */
export interface CutHandle {
  id: HandleId;
  /** Field of the project file, for its range. */
  field: string;
  section: 'vertical' | 'plan';
  value: number;
  /** Range that keeps the opening buildable, m. */
  min: number;
  max: number;
  spot: Spot;
  /** Where the measure starts, for its line. */
  from: Spot;
  /** Direction in which the value grows. */
  direction: Spot;
  /** Where its figure stands beside the handle. */
  words: 'left' | 'right' | 'above' | 'below';
  set(opening: ProjectOpening, value: number): void;
}

type Reveal = 'head' | 'sill' | 'left' | 'right';
type Fin = 'finLeft' | 'finRight';
export type HandleId =
  | 'height'
  | 'width'
  | 'setBack'
  | `reveal.${Reveal}`
  | `overhang.${'projection' | 'aboveHead'}`
  | `${Fin}.${'projection' | 'offset'}`;

/** Least glass that a drag leaves, m. */
const LEAST_GLASS = 0.1;

type Draft = Omit<CutHandle, 'min' | 'max'> & { min?: number; max?: number };

/**
 * The handles of an opening's sections: those of parts it has.
 * @param gap room that keeps a handle apart from what it measures, m of either section
 * @param hintOf range of a field of the project file
 */
export function cutHandles(
  subject: CutSubject,
  gap: { vertical: number; plan: number },
  hintOf: (field: string) => FieldHint | undefined,
): CutHandle[] {
  const { opening, thickness } = subject;
  const { width, height, frame, overhang } = opening;
  const { left, right, head, sill } = frame.widths;
  const behind = thickness + gap.vertical;
  const under = -wallBelow(opening) - gap.vertical;
  const drafts: Draft[] = [
    {
      id: 'height',
      field: 'openings[].height',
      section: 'vertical',
      value: height,
      min: head + sill + LEAST_GLASS,
      spot: [behind, height],
      from: [behind, 0],
      direction: [0, 1],
      words: 'right',
      set: (o, value) => setSize(o, 'height', value),
    },
    {
      id: 'setBack',
      field: 'openings[].setBack',
      section: 'vertical',
      value: opening.setBack,
      max: thickness,
      spot: [opening.setBack, under],
      from: [0, under],
      direction: [1, 0],
      words: 'right',
      set: setSetBack,
    },
    reveal(subject, 'head', 'vertical', [depth(subject, opening.reveal.head), height], 'left'),
    reveal(subject, 'sill', 'vertical', [depth(subject, opening.reveal.sill), 0], 'left'),
    {
      id: 'width',
      field: 'openings[].width',
      section: 'plan',
      value: width,
      min: left + right + LEAST_GLASS,
      spot: [width, thickness + gap.plan],
      from: [0, thickness + gap.plan],
      direction: [1, 0],
      words: 'right',
      set: (o, value) => setSize(o, 'width', value),
    },
    reveal(subject, 'left', 'plan', [0, depth(subject, opening.reveal.left)], 'below'),
    reveal(subject, 'right', 'plan', [width, depth(subject, opening.reveal.right)], 'below'),
    ...(overhang ? overhangHandles(opening, overhang, gap.vertical) : []),
    ...finHandles(opening, 'finLeft', gap.plan),
    ...finHandles(opening, 'finRight', gap.plan),
  ];
  return drafts.map((draft) => {
    const hint = hintOf(draft.field);
    return {
      ...draft,
      min: Number(Math.max(draft.min ?? 0, hint?.min ?? 0).toFixed(5)),
      max: Math.min(draft.max ?? Infinity, hint?.max ?? Infinity),
    };
  });
}

function reveal(
  { opening }: CutSubject,
  side: Reveal,
  section: 'vertical' | 'plan',
  spot: Spot,
  words: Draft['words'],
): Draft {
  const vertical = section === 'vertical';
  const glass: Spot = vertical ? [opening.setBack, spot[1]] : [spot[0], opening.setBack];
  return {
    id: `reveal.${side}`,
    field: `openings[].reveal.${side}`,
    section,
    value: opening.reveal[side],
    spot,
    from: glass,
    direction: vertical ? [-1, 0] : [0, -1],
    words,
    set: (o, value) => (o.reveal[side] = value),
  };
}

function overhangHandles(
  { height }: ProjectOpening,
  { projection, aboveHead }: NonNullable<ProjectOpening['overhang']>,
  gap: number,
): Draft[] {
  const at = height + aboveHead;
  const over = at + PLATE + gap;
  const before = -projection - gap;
  return [
    {
      id: 'overhang.projection',
      field: 'openings[].overhang.projection',
      section: 'vertical',
      value: projection,
      spot: [-projection, over],
      from: [0, over],
      direction: [-1, 0],
      words: 'above',
      set: (o, value) => o.overhang && (o.overhang.projection = value),
    },
    {
      id: 'overhang.aboveHead',
      field: 'openings[].overhang.aboveHead',
      section: 'vertical',
      value: aboveHead,
      spot: [before, at],
      from: [before, height],
      direction: [0, 1],
      words: 'left',
      set: (o, value) => o.overhang && (o.overhang.aboveHead = value),
    },
  ];
}

function finHandles(opening: ProjectOpening, name: Fin, gap: number): Draft[] {
  const fin = opening[name];
  if (!fin) return [];
  const out = name === 'finLeft' ? -1 : 1;
  const jamb = name === 'finLeft' ? 0 : opening.width;
  const face = jamb + out * fin.offset;
  const beside = face + out * (PLATE + gap);
  const before = -fin.projection - gap;
  return [
    {
      id: `${name}.projection`,
      field: `openings[].${name}.projection`,
      section: 'plan',
      value: fin.projection,
      spot: [beside, -fin.projection],
      from: [beside, 0],
      direction: [0, -1],
      words: 'below',
      set: (o, value) => {
        const own = o[name];
        if (own) own.projection = value;
      },
    },
    {
      id: `${name}.offset`,
      field: `openings[].${name}.offset`,
      section: 'plan',
      value: fin.offset,
      spot: [face, before],
      from: [jamb, before],
      direction: [out, 0],
      words: name === 'finLeft' ? 'left' : 'right',
      set: (o, value) => {
        const own = o[name];
        if (own) own.offset = value;
      },
    },
  ];
}

/** Steps of a drag and of the arrow keys: whole figures in the unit shown, m. */
export function handleSteps(imperial: boolean): { drag: number; key: number } {
  const inch = 0.0254;
  return imperial ? { drag: inch / 8, key: inch / 4 } : { drag: 0.005, key: 0.01 };
}

/** A value brought to a whole step inside the range of its handle. */
export function snapped({ min, max }: CutHandle, value: number, step: number): number {
  const whole = Math.round(value / step) * step;
  return Number(Math.min(max, Math.max(min, whole)).toFixed(5));
}
