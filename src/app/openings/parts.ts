import type { Blind, FabricBlind, ShutterBlind, SlatBlind } from '../../../lib/blind/index.ts';
import type { Glazing } from '../../../lib/glazing/index.ts';
import { freeId } from '../../../lib/project/index.ts';
import type { Project, ProjectOpening } from '../../../lib/project/index.ts';
import { blinds, frames, glazings } from '../../library/index.ts';
import type { Wording } from '../../words/index.ts';
import { freeName, openingOf, setOrDelete } from './edits.ts';

/** What an opening is made of: frames, glazings, blinds and screens, and what moves a blind. */

/** Glazing of an opening, of the project's own or of the library. */
export function glazingOf(project: Project, id: string): Glazing | undefined {
  return [...project.glazings, ...glazings].find((g) => g.id === id);
}

export function blindById(project: Project, id: string | undefined): Blind | undefined {
  return [...project.blinds, ...blinds].find((b) => b.id === id);
}

/** A blind or glazing of the project's own, which may be changed. */
export function isOwn(project: Project, list: 'blinds' | 'glazings', id: string): boolean {
  return project[list].some((item) => item.id === id);
}

/** Least openness of a fabric that counts as an insect screen: it must let air through. */
const LEAST_MESH = 0.05;

/** Fabrics that can serve as insect screens, meshes first. */
export function screensOf(project: Project): Blind[] {
  return [...project.blinds, ...blinds]
    .filter((b) => b.kind === 'fabric' && b.openness >= LEAST_MESH)
    .sort((a, b) => openness(b) - openness(a));
}

/** Blinds for shading: everything but the meshes. */
export function shadesOf(project: Project): Blind[] {
  return [...project.blinds, ...blinds].filter((b) => openness(b) < 0.5);
}

const openness = (b: Blind) => (b.kind === 'fabric' ? b.openness : 0);

/** The library's frame an opening has, or undefined where its figures are its own. */
export function frameOf(opening: ProjectOpening): string | undefined {
  return frames.find((f) => {
    const { widths, hidden = NONE, Uf, psiSpacer, psiInstall } = f;
    const own = opening.frame;
    return (
      sameSides(widths, own.widths) &&
      sameSides(hidden, own.hidden ?? NONE) &&
      Uf === own.Uf &&
      psiSpacer === own.psiSpacer &&
      psiInstall === own.psiInstall
    );
  })?.id;
}

const NONE = { head: 0, sill: 0, left: 0, right: 0 };

function sameSides(a: typeof NONE, b: typeof NONE): boolean {
  return (['head', 'sill', 'left', 'right'] as const).every((k) => Math.abs(a[k] - b[k]) < 1e-6);
}

/** Copies a library frame's widths and losses into an opening. */
export function takeFrame(opening: ProjectOpening, id: string): void {
  const found = frames.find((f) => f.id === id);
  if (!found) return;
  const { widths, Uf, psiSpacer, psiInstall } = found;
  opening.frame = { widths: { ...widths }, Uf, psiSpacer, psiInstall };
  if (found.overInsulated) opening.frame.overInsulated = true;
  if (found.hidden) opening.frame.hidden = { ...found.hidden };
}

/** Whether a frame leaves glass in an opening of this size. */
export function leavesGlass(opening: ProjectOpening): boolean {
  const { left, right, head, sill } = opening.frame.widths;
  return opening.width - left - right >= 0.01 && opening.height - head - sill >= 0.01;
}

/** Average by Karlsson & Roos (2000) for coated glass. */
const COATED = { kind: 'coated', q: 4 } as const;

/** Gives an opening a glazing of its own to change, made from the one it has; gives its id. */
export function ownGlazing(words: Wording, draft: Project, openingId: string): string | undefined {
  const opening = openingOf(draft, openingId);
  const base = opening && glazingOf(draft, opening.glazing);
  if (!opening || !base) return undefined;
  const id = freeId(
    'own-glazing',
    [...draft.glazings, ...glazings].map((g) => g.id),
  );
  draft.glazings.push({ ...structuredClone(base), id, ...ownWords(words, draft, 'glazing', base) });
  opening.glazing = id;
  return id;
}

/** Letters of a name that leave room for the number which makes it free. */
const NAME_LENGTH = 110;

/** Name and source of what is made from a thing of the library, or from another of one's own. */
function ownWords(
  words: Wording,
  draft: Project,
  part: 'glazing' | 'blind',
  { id, name }: Glazing | Blind,
): { name: string; source: string } {
  const t = words.of('openings');
  const list = `${part}s` as const;
  const own = isOwn(draft, list, id) ? name : t('new.own', { name: words.named(part, id, name) });
  return { name: freeName(own.slice(0, NAME_LENGTH), draft[list]), source: t('new.source') };
}

type OwnField = 'panes' | 'g' | 'solarTransmittance' | 'visibleTransmittance' | 'Ug';

/**
 * Changes a figure of a glazing of the project's own. Figures from a data sheet no longer follow
 * from listed panes, so it falls with the angle as coated glass does; what passes straight through
 * stays at most g.
 */
export function setGlazing(draft: Project, id: string, field: OwnField, value: number): void {
  const glazing = draft.glazings.find((g) => g.id === id);
  if (!glazing) return;
  glazing[field] = value;
  if (field !== 'visibleTransmittance') glazing.angular = { ...COATED };
  if (glazing.solarTransmittance > glazing.g) {
    if (field === 'solarTransmittance') glazing.g = value;
    else glazing.solarTransmittance = glazing.g;
  }
}

/** Names of the openings that have a glazing or a blind. */
export function usersOf(project: Project, id: string): string[] {
  return project.openings
    .filter((o) => o.glazing === id || o.blind?.blind === id || o.insectScreen?.blind === id)
    .map((o) => o.name);
}

/** Hangs a blind at an opening, or takes it down; what moves it stays. */
export function setBlind(draft: Project, openingId: string, blindId: string | undefined): void {
  const opening = openingOf(draft, openingId);
  if (!opening) return;
  if (blindId === undefined) {
    leaveGroup(draft, opening);
    setOrDelete(opening, 'blind', undefined);
    return;
  }
  const blind = blindById(draft, blindId);
  const use = { ...opening.blind, blind: blindId };
  if (blind?.kind !== 'slats') setOrDelete(use, 'standingAngle', undefined);
  else if (use.standingAngle !== undefined) {
    use.standingAngle = Math.min(blind.angleMax, Math.max(blind.angleMin, use.standingAngle));
  }
  opening.blind = use;
}

/** Gives an opening a blind of its own to change, made from the one it has; gives its id. */
export function ownBlind(words: Wording, draft: Project, openingId: string): string | undefined {
  const opening = openingOf(draft, openingId);
  const base = blindById(draft, opening?.blind?.blind);
  if (!opening?.blind || !base) return undefined;
  const id = freeId(
    'own-blind',
    [...draft.blinds, ...blinds].map((b) => b.id),
  );
  draft.blinds.push({ ...structuredClone(base), id, ...ownWords(words, draft, 'blind', base) });
  opening.blind.blind = id;
  return id;
}

type Figures<T> = { [K in keyof T]-?: T[K] extends number | undefined ? K : never }[keyof T];
export type BlindFigure = Figures<SlatBlind> | Figures<FabricBlind> | Figures<ShutterBlind>;

/** Figures of which the last entered counts where together they would be over the whole. */
const SHARES = {
  slats: [
    ['reflectanceUpper', 'slatTransmittance'],
    ['reflectanceLower', 'slatTransmittance'],
  ],
  fabric: [['openness', 'diffuseTransmittance', 'reflectance']],
  shutter: [['transmittance', 'reflectance']],
} as const;

/**
 * Changes a figure of a blind of the project's own. What is reflected and what passes stay within
 * the whole, and the drive's smallest angle below its largest: the other figures give way. Openings
 * keep a standing angle the drive reaches.
 */
export function setBlindFigure(
  draft: Project,
  id: string,
  field: BlindFigure,
  value: number,
): void {
  const blind = draft.blinds.find((b) => b.id === id);
  if (!blind) return;
  const figures = blind as unknown as Record<string, number>;
  figures[field] = value;
  for (const shares of SHARES[blind.kind]) giveWay(figures, shares, field);
  if (blind.kind !== 'slats') return;
  if (field === 'angleMin') blind.angleMax = Math.max(blind.angleMax, value);
  if (field === 'angleMax') blind.angleMin = Math.min(blind.angleMin, value);
  for (const { blind: use } of draft.openings) {
    if (use?.blind !== id || use.standingAngle === undefined) continue;
    use.standingAngle = Math.min(blind.angleMax, Math.max(blind.angleMin, use.standingAngle));
  }
}

/** Scales the other shares down where the one entered leaves them too little room. */
function giveWay(figures: Record<string, number>, shares: readonly string[], field: string): void {
  if (!shares.includes(field)) return;
  const others = shares.filter((share) => share !== field);
  const sum = others.reduce((total, share) => total + figures[share], 0);
  const room = 1 - figures[field];
  if (sum <= room) return;
  // Rounded down, so that the sum is not over the whole by a hair.
  for (const share of others)
    figures[share] = Math.floor((figures[share] / sum) * room * 1e4) / 1e4;
}

/** A group led by an opening that leaves it follows the strongest reading of those left. */
function leaveGroup(draft: Project, opening: ProjectOpening): void {
  const group = draft.groups.find((g) => g.id === opening.blind?.group);
  if (group?.lead === opening.id) group.lead = 'any';
}

/** What moves a blind: nothing, a schedule of its own, or a group. */
export type Mover = { kind: 'none' } | { kind: 'schedule' | 'group'; id: string };

export function moverOf(opening: ProjectOpening): Mover {
  const { schedule, group } = opening.blind ?? {};
  if (group) return { kind: 'group', id: group };
  return schedule ? { kind: 'schedule', id: schedule } : { kind: 'none' };
}

export function setMover(draft: Project, openingId: string, mover: Mover): void {
  const opening = openingOf(draft, openingId);
  if (!opening?.blind) return;
  if (!(mover.kind === 'group' && mover.id === opening.blind.group)) leaveGroup(draft, opening);
  setOrDelete(opening.blind, 'schedule', mover.kind === 'schedule' ? mover.id : undefined);
  setOrDelete(opening.blind, 'group', mover.kind === 'group' ? mover.id : undefined);
}
