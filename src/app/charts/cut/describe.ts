import { fromSI, unitOf } from '../../../../lib/units/index.ts';
import type { UnitSystem } from '../../../../lib/units/index.ts';
import type { RuleAction } from '../../../../lib/schedule/index.ts';
import type { Wording } from '../../../words/index.ts';
import type { FigureTable } from '../../parts/figure/table.ts';
import { actionText } from '../words.ts';
import type { BlindPose } from './blindDrawing.ts';
import type { CutHandle } from './handles.ts';
import type { SunOnPlane } from './rays.ts';
import type { CutSubject } from './shapes.ts';

export interface CutFacts {
  subject: CutSubject;
  units: UnitSystem;
  /** Date and clock of the chosen hour, and where the sun stands. */
  when: string;
  sunText: string;
  sun?: SunOnPlane;
  share?: number;
  /** The blind as it stands; absent where there is none. */
  pose?: BlindPose;
  action: RuleAction;
  /** The insect screen is in place. */
  screened: boolean;
}

/** What the sections show, in a few sentences. */
export function describeCut(words: Wording, facts: CutFacts): string {
  const t = words.of('openings');
  const { subject, units } = facts;
  const { opening, panes, thickness } = subject;
  const { finLeft, finRight, overhang } = opening;
  const length = (metres: number) => words.quantity('length', metres, units);
  const parts = [
    t('cut.about.panes', { count: panes, setBack: length(opening.setBack) }),
    overhang && t('cut.about.overhang', { projection: length(overhang.projection) }),
    (finLeft ?? finRight) &&
      t(`cut.about.${finLeft && finRight ? 'fins' : finLeft ? 'finLeft' : 'finRight'}`),
  ];
  const about = t('cut.about.opening', {
    name: opening.name,
    width: length(opening.width),
    height: length(opening.height),
    thickness: length(thickness),
    parts: parts.filter(Boolean).join(', '),
  });
  return `${about} ${sunSentence(words, facts)}`;
}

/** The sun and the blind at the chosen hour. */
export function sunSentence(words: Wording, facts: CutFacts): string {
  const t = words.of('openings');
  const { pose, action, screened } = facts;
  return [
    onPlane(words, facts),
    ...(pose ? [t('cut.blind', { state: poseText(words, pose, action) })] : []),
    ...(screened ? [t('cut.screen')] : []),
  ].join(' ');
}

function onPlane(words: Wording, { when, sunText, sun: onPlane, share }: CutFacts): string {
  const t = words.of('openings');
  const now = { when, sun: sunText };
  if (!onPlane || share === undefined) return t('cut.sun.none', now);
  const { sideways, profile } = onPlane;
  const from = Math.abs(sideways) < 0.5 ? 'square' : sideways > 0 ? 'right' : 'left';
  return t(`cut.sun.${from}`, {
    ...now,
    profile: words.figure(profile),
    sideways: words.figure(Math.abs(sideways)),
    share: words.share(share),
  });
}

/** How the blind stands: what it was told, and the angle of slats that is not told with it. */
function poseText(words: Wording, { blind, share, angle }: BlindPose, action: RuleAction): string {
  const slats = blind.kind === 'slats';
  const state = actionText(words, action, slats);
  if (!slats || share === 0 || action.kind === 'tilt') return state;
  return words.of('openings')('cut.blindAt', { state, angle: words.figure(angle) });
}

/** The dimensions behind the sections. */
export function cutTable(
  words: Wording,
  handles: readonly CutHandle[],
  units: UnitSystem,
): FigureTable {
  const t = words.of('openings');
  const { symbol } = unitOf('length', units);
  const names = handles.map(({ id }) => t(`cut.handle.${id}`));
  return {
    columns: [
      { head: t('cut.table.dimension') },
      { head: t('cut.table.length', { unit: symbol }), digits: 3 },
    ],
    rowCount: handles.length,
    cell: (row, column) =>
      column === 0 ? names[row] : fromSI('length', units, handles[row].value),
  };
}
