import { z } from 'zod';
import { idText, nameText, quantity, sides, whole } from './fields.ts';
import { dateSpan } from './partsSchema.ts';

const TAPE = 'Measure it with a tape, or read it on the drawing; feet times 0.3048 gives metres.';
const FRAME_SHEET = "Read it on the window frame's data sheet.";

/** The walls and roof planes openings sit in. */
export const wallSchema = z.strictObject({
  id: idText('Give the wall an id of its own.'),
  name: nameText('Give the wall a name.'),
  azimuth: quantity(
    0,
    360,
    'degrees clockwise from north',
    'Stand with your back to the wall and read a compass corrected to true north: 90 is east, 180 south.',
  ),
  tilt: quantity(
    0,
    180,
    'degrees from the horizontal',
    'Take 90 for a wall, under 90 for a roof, over 90 for a pane leaning outward.',
  ).default(90),
  thickness: quantity(0.02, 2, 'm', TAPE),
  U: quantity(
    0.02,
    6,
    'W/m2K',
    'Take it from the wall build-up; 5.678 over R (ft2 F h/Btu) gives it.',
  ),
  area: quantity(0.1, 5000, 'm2', 'Gross area of the wall, openings included.').optional(),
});

const overhang = z.strictObject({
  projection: quantity(0, 10, 'm', `From the wall's outer face out. ${TAPE}`),
  aboveHead: quantity(0, 10, 'm', `From the head of the opening up to its underside. ${TAPE}`),
  left: quantity(0, 50, 'm', `Past the left jamb as seen from outside. ${TAPE}`),
  right: quantity(0, 50, 'm', `Past the right jamb as seen from outside. ${TAPE}`),
});

const fin = z.strictObject({
  projection: quantity(0, 10, 'm', `From the wall's outer face out. ${TAPE}`),
  offset: quantity(0, 10, 'm', `From the jamb sideways to the fin. ${TAPE}`),
  above: quantity(0, 50, 'm', `Above the head of the opening. ${TAPE}`),
  below: quantity(0, 50, 'm', `Below the sill of the opening. ${TAPE}`),
});

/** The frame of a window: seen widths and heat losses. */
const frame = z.strictObject({
  widths: sides(0, 0.5, `Width of frame seen from outside. ${FRAME_SHEET}`),
  Uf: quantity(0.3, 10, 'W/m2K', FRAME_SHEET),
  psiSpacer: quantity(0, 0.3, 'W/mK', `Heat loss along the edge of the glass. ${FRAME_SHEET}`),
  psiInstall: quantity(
    -0.2,
    0.5,
    'W/mK',
    'Heat loss along the joint of frame and wall, from the installation detail; 0.04 is usual.',
  ),
  overInsulated: z.boolean().optional(),
  hidden: sides(
    0,
    0.3,
    'Width of frame behind the insulation of the wall, beyond the seen width.',
  ).optional(),
});

const insectScreen = z.strictObject({
  blind: idText('Name a fabric of this file or of the library.'),
  /** Part of the opening it covers: all of it, or the half that opens. */
  share: z.literal([0.5, 1]),
  ...dateSpan,
});

/** Which blind hangs at an opening and what moves it. */
const blindUse = z.strictObject({
  blind: idText('Name a blind of this file or of the library.'),
  standingAngle: quantity(
    -90,
    90,
    'degrees',
    'Slat angle when the blind is simply lowered: 0 flat, 90 closed.',
  ).optional(),
  windLimit: quantity(
    1,
    40,
    'm/s',
    "Take the maker's wind limit; it replaces the one of the blind.",
  ).optional(),
  schedule: idText('Name a schedule of this file.').optional(),
  group: idText('Name a group of this file.').optional(),
  flowFactor: quantity(
    0,
    1,
    '',
    'What the lowered blind leaves of the airing flow, as a share; left out: by the kind of blind.',
  ).optional(),
});

/** How the sash opens. */
const sash = z.strictObject({
  kind: z.enum(['none', 'tilt', 'turn']),
  width: quantity(0, 10, 'm', `Clear width of the sash's hole. ${TAPE}`),
  height: quantity(0, 10, 'm', `Clear height of the sash's hole. ${TAPE}`),
  tiltAngle: quantity(
    0,
    90,
    'degrees',
    'How far it tilts from shut (4 to 10 is usual); 0 where it cannot tilt.',
  ),
});

/** A window, door, roof-light or fixed pane; the reveal is a plain hole where none is given. */
export const openingSchema = z
  .strictObject({
    id: idText('Give the opening an id of its own.').refine((id) => id !== 'any', {
      error: 'is kept for the lead of a group',
    }),
    name: nameText('Give the opening a name.'),
    wall: idText('Name a wall of this file.'),
    room: idText('Name a room of this file.'),
    kind: z.enum(['window', 'door', 'rooflight', 'fixed']),
    width: quantity(0.1, 10, 'm', `Clear width of the hole in the wall. ${TAPE}`),
    height: quantity(0.1, 10, 'm', `Clear height of the hole in the wall. ${TAPE}`),
    sillHeight: quantity(0, 30, 'm', `From the floor up to the sill. ${TAPE}`),
    count: whole(1, 200, 'Count the identical units side by side.').default(1),
    frame,
    setBack: quantity(0, 2, 'm', `From the wall's outer face in to the glass. ${TAPE}`),
    reveal: sides(
      0,
      2,
      `Depth of the reveal face, measured out from the glass. ${TAPE}`,
    ).optional(),
    revealReflectance: quantity(
      0,
      1,
      '',
      'Take 0.2 for dark wood, 0.5 for light render, 0.7 for white paint.',
    ),
    overhang: overhang.optional(),
    finLeft: fin.optional(),
    finRight: fin.optional(),
    glazing: idText('Name a glazing of this file or of the library.'),
    insectScreen: insectScreen.optional(),
    blind: blindUse.optional(),
    airing: sash.optional(),
    escapeRoute: z.boolean().optional(),
  })
  .transform((opening) => ({ ...opening, reveal: opening.reveal ?? plainHole(opening.setBack) }));

function plainHole(depth: number): { head: number; sill: number; left: number; right: number } {
  return { head: depth, sill: depth, left: depth, right: depth };
}
