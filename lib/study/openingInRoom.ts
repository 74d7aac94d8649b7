import { screenAirFlowFactor } from '../blind/index.ts';
import { windowU } from '../glazing/index.ts';
import type { Glazing } from '../glazing/index.ts';
import type { Project } from '../project/index.ts';
import { roomDefaults } from '../room/index.ts';
import type { RoomOpening } from '../room/index.ts';
import type { ScreenInPlace } from './types.ts';

/** What the room must know of an opening: heat loss and sash of all its units together. */
export function openingInRoom(
  opening: Project['openings'][number],
  glazing: Glazing,
  screen: ScreenInPlace | undefined,
): RoomOpening {
  const { count, frame, width, height } = opening;
  const { widths, hidden, Uf, psiSpacer, psiInstall } = frame;
  const { Ug } = glazing;
  const sizes = { width, height, frame: widths, hidden };
  const window = windowU({ ...sizes, Ug, Uf, psiSpacer, psiInstall });
  const sash = opening.airing ?? { kind: 'none' as const, width: 0, height: 0, tiltAngle: 0 };
  return {
    id: opening.id,
    area: window.area * count,
    U: window.UwInstalled,
    airing: { ...sash, width: sash.width * count },
    screenFlowFactor: screen ? 1 - screen.share * (1 - screenAirFlowFactor(screen.fabric)) : 1,
    blindFlowFactor: opening.blind?.flowFactor ?? roomDefaults.blindFlowFactor,
  };
}
