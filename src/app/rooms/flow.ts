import { screenAirFlowFactor } from '../../../lib/blind/index.ts';
import type { FabricBlind } from '../../../lib/blind/index.ts';
import { InputError } from '../../../lib/problem/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import { roomDefaults } from '../../../lib/room/index.ts';
import { blindById } from '../openings/parts.ts';
import { percent } from '../charts/words.ts';

/** What screens and lowered blinds leave of the airing flow through a room's sashes, in sentences. */
export function flowWords(project: Project, room: string): string {
  const own = project.openings.filter(
    (o) => o.room === room && (o.airing?.kind ?? 'none') !== 'none',
  );
  const screens = new Map<string, number>();
  for (const { insectScreen } of own) {
    const mesh = blindById(project, insectScreen?.blind);
    const left = mesh?.kind === 'fabric' ? airPast(mesh) : undefined;
    if (mesh && left !== undefined) screens.set(mesh.name, left);
  }
  const blinds = own.flatMap((o) =>
    blindById(project, o.blind?.blind)?.position === 'external'
      ? [o.blind?.flowFactor ?? roomDefaults.blindFlowFactor]
      : [],
  );
  return [
    ...[...screens].map(([name, left]) => `${name} leaves ${percent(left)} of the flow it covers.`),
    ...(blinds.length > 0 ? [`A lowered outer blind leaves ${span(blinds)} of it.`] : []),
  ].join(' ');
}

/** Undefined where the mesh is not one: the checks of the project say so. */
function airPast(mesh: FabricBlind): number | undefined {
  try {
    return screenAirFlowFactor(mesh);
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

function span(shares: readonly number[]): string {
  const least = Math.min(...shares);
  const most = Math.max(...shares);
  return least === most ? percent(least) : `${percent(least)} to ${percent(most)}`;
}
