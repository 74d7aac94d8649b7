import { z } from 'zod';
import { because, idText, nameText, quantity, sides, whole } from './fields.ts';
import { dateSpan } from './partsSchema.ts';

/** The walls and roof planes openings sit in. */
export const wallSchema = z.strictObject({
  id: idText('wall.id'),
  name: nameText('wall.name'),
  azimuth: quantity(0, 360, 'clockwise', 'wall.azimuth'),
  tilt: quantity(0, 180, 'fromHorizontal', 'wall.tilt').default(90),
  thickness: quantity(0.02, 2, 'm', 'read.tape'),
  U: quantity(0.02, 6, 'W/m2K', 'wall.U'),
  area: quantity(0.1, 5000, 'm2', 'wall.area').optional(),
});

const overhang = z.strictObject({
  projection: quantity(0, 10, 'm', ['overhang.projection', 'read.tape']),
  aboveHead: quantity(0, 10, 'm', ['overhang.aboveHead', 'read.tape']),
  left: quantity(0, 50, 'm', ['overhang.left', 'read.tape']),
  right: quantity(0, 50, 'm', ['overhang.right', 'read.tape']),
});

const fin = z.strictObject({
  projection: quantity(0, 10, 'm', ['overhang.projection', 'read.tape']),
  offset: quantity(0, 10, 'm', ['fin.offset', 'read.tape']),
  above: quantity(0, 50, 'm', ['fin.above', 'read.tape']),
  below: quantity(0, 50, 'm', ['fin.below', 'read.tape']),
});

/** The frame of a window: seen widths and heat losses. */
const frame = z.strictObject({
  widths: sides(0, 0.5, ['frame.widths', 'read.frameSheet']),
  Uf: quantity(0.3, 10, 'W/m2K', 'read.frameSheet'),
  psiSpacer: quantity(0, 0.3, 'W/mK', ['frame.psiSpacer', 'read.frameSheet']),
  psiInstall: quantity(-0.2, 0.5, 'W/mK', 'frame.psiInstall'),
  overInsulated: z.boolean().optional(),
  hidden: sides(0, 0.3, 'frame.hidden').optional(),
});

const insectScreen = z.strictObject({
  blind: idText('screen.blind'),
  /** Part of the opening it covers: all of it, or the half that opens. */
  share: z.literal([0.5, 1]),
  ...dateSpan,
});

/** Which blind hangs at an opening and what moves it. */
const blindUse = z.strictObject({
  blind: idText('blindUse.blind'),
  standingAngle: quantity(-90, 90, 'degrees', 'blindUse.standingAngle').optional(),
  windLimit: quantity(1, 40, 'm/s', 'blindUse.windLimit').optional(),
  schedule: idText('blindUse.schedule').optional(),
  group: idText('blindUse.group').optional(),
  flowFactor: quantity(0, 1, '', 'blindUse.flowFactor').optional(),
});

/** How the sash opens. */
const sash = z.strictObject({
  kind: z.enum(['none', 'tilt', 'turn']),
  width: quantity(0, 10, 'm', ['sash.width', 'read.tape']),
  height: quantity(0, 10, 'm', ['sash.height', 'read.tape']),
  tiltAngle: quantity(0, 90, 'degrees', 'sash.tiltAngle'),
});

/** A window, door, roof-light or fixed pane; the reveal is a plain hole where none is given. */
export const openingSchema = z
  .strictObject({
    id: idText('opening.id').refine((id) => id !== 'any', because('keptForLead')),
    name: nameText('opening.name'),
    wall: idText('opening.wall'),
    room: idText('opening.room'),
    kind: z.enum(['window', 'door', 'rooflight', 'fixed']),
    width: quantity(0.1, 10, 'm', ['opening.width', 'read.tape']),
    height: quantity(0.1, 10, 'm', ['opening.height', 'read.tape']),
    sillHeight: quantity(0, 30, 'm', ['opening.sillHeight', 'read.tape']),
    count: whole(1, 200, 'opening.count').default(1),
    frame,
    setBack: quantity(0, 2, 'm', ['opening.setBack', 'read.tape']),
    reveal: sides(0, 2, ['opening.reveal', 'read.tape']).optional(),
    revealReflectance: quantity(0, 1, '', 'opening.revealReflectance'),
    overhang: overhang.optional(),
    finLeft: fin.optional(),
    finRight: fin.optional(),
    glazing: idText('opening.glazing'),
    insectScreen: insectScreen.optional(),
    blind: blindUse.optional(),
    blindPrice: quantity(0.01, 10_000_000, '', 'opening.blindPrice').optional(),
    airing: sash.optional(),
    escapeRoute: z.boolean().optional(),
  })
  .transform((opening) => ({ ...opening, reveal: opening.reveal ?? plainHole(opening.setBack) }));

function plainHole(depth: number): { head: number; sill: number; left: number; right: number } {
  return { head: depth, sill: depth, left: depth, right: depth };
}
