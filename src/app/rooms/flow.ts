import { screenAirFlowFactor } from '../../../lib/blind/index.ts';
import type { FabricBlind } from '../../../lib/blind/index.ts';
import { InputError } from '../../../lib/problem/index.ts';
import type { Project } from '../../../lib/project/index.ts';
import { roomDefaults } from '../../../lib/room/index.ts';
import type { Wording } from '../../words/index.ts';
import { blindById } from '../openings/parts.ts';

/** What screens and lowered blinds leave of the airing flow through a room's sashes, in sentences. */
export function flowWords(words: Wording, project: Project, room: string): string {
  const t = words.of('rooms');
  const own = project.openings.filter(
    (o) => o.room === room && (o.airing?.kind ?? 'none') !== 'none',
  );
  const screens = new Map<string, number>();
  for (const { insectScreen } of own) {
    const mesh = blindById(project, insectScreen?.blind);
    const left = mesh?.kind === 'fabric' ? airPast(mesh) : undefined;
    if (mesh && left !== undefined) screens.set(words.named('blind', mesh.id, mesh.name), left);
  }
  const blinds = own.flatMap((o) =>
    blindById(project, o.blind?.blind)?.position === 'external'
      ? [o.blind?.flowFactor ?? roomDefaults.blindFlowFactor]
      : [],
  );
  return [
    ...[...screens].map(([screen, left]) =>
      t('airing.screen', { screen, share: words.share(left) }),
    ),
    ...(blinds.length > 0 ? [blindWords(words, blinds)] : []),
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

function blindWords(words: Wording, shares: readonly number[]): string {
  const t = words.of('rooms');
  const least = words.share(Math.min(...shares));
  const most = words.share(Math.max(...shares));
  return least === most ? t('airing.blind', { share: least }) : t('airing.blinds', { least, most });
}
