import { compileSchedule, runSchedule } from '../schedule/index.ts';
import type { CompiledSchedule, RunCounts } from '../schedule/index.ts';
import { STEPS, STEPS_PER_HOUR } from '../time/index.ts';
import type { Stage, StageCache } from './cache.ts';
import { sensorsOf } from './controllers.ts';
import { topLight } from './glassLight.ts';
import type { LitOpening, SiteLight } from './lightStages.ts';
import { blindPose, settingOf, shareOf } from './poses.ts';
import type { House } from './resolve.ts';
import type { BlindYear } from './results.ts';
import { profileIndex, shadedHourGain, shadedYear } from './shadedGain.ts';
import type { BlindPose } from './shadedGain.ts';
import type { BlindInPlace, Controller } from './types.ts';

/** One opening with its blind moved through the year. */
export interface MovedOpening extends LitOpening {
  /** Gain with shading, hourly mean W/m2 of glass; HOURS values. */
  gain: Stage<Float64Array>;
  blind?: BlindYear;
}

/** A controller's year: its schedule ready to run and the blinds' positions. */
interface ControllerYear {
  schedule: Stage<CompiledSchedule>;
  year: Stage<BlindYear>;
}

/** Stage 5: blinds moved by their schedules, and the gain that is left. */
export function moveBlinds(
  cache: StageCache,
  site: SiteLight,
  house: House,
  lit: readonly LitOpening[],
): MovedOpening[] {
  const byId = new Map(lit.map((l) => [l.opening.id, l]));
  const controllers = new Map(
    house.controllers.map((c) => [c.id, controllerYear(cache, site, c, byId)]),
  );
  return lit.map((opening): MovedOpening => {
    const use = opening.opening.blind;
    if (!use) return { ...opening, gain: screenedGain(cache, opening) };
    const { schedule, year } = controllers.get(use.controller)!;
    const gain = shadedGain(cache, site, opening, use, schedule.value, year);
    return { ...opening, gain, blind: year.value };
  });
}

function screenedGain(cache: StageCache, lit: LitOpening): Stage<Float64Array> {
  return cache.get('blind', [lit.screened.id], () => lit.screened.value.gain);
}

function controllerYear(
  cache: StageCache,
  site: SiteLight,
  controller: Controller,
  openings: ReadonlyMap<string, LitOpening>,
): ControllerYear {
  const { calendar, year, wind } = site;
  const schedule = cache.get('schedule', [controller.schedule, calendar.id], () =>
    compileSchedule(controller.schedule, calendar.value),
  );
  const members = controller.members.map((id) => openings.get(id)!);
  const led = members.filter((m) => controller.lead === 'any' || m.opening.id === controller.lead);
  const facades = [...new Set((led.length ? led : members).map((m) => m.facade))];
  const limits = members.flatMap((m) => m.opening.blind?.windLimit ?? []);
  const windLimit = limits.length ? Math.min(...limits) : undefined;
  const facadeIds = facades.map((f) => f.id);

  const moved = cache.get('moves', [schedule.id, facadeIds, wind.id, windLimit], () => {
    const sensors = sensorsOf(facades.map((f) => f.value));
    const state = new Uint8Array(STEPS);
    const counts = runSchedule(
      schedule.value,
      {
        sunOnFacade: sensors.sunny,
        facadeIrradiance: sensors.irradiance,
        outdoor: year.dryBulb,
        wind: wind.value,
      },
      { windLimit },
      state,
    );
    return blindYear(controller.id, schedule.value, state, counts, site.sunUp.value);
  });
  return { schedule, year: moved };
}

/** What the positions of a year come to. */
function blindYear(
  controller: string,
  schedule: CompiledSchedule,
  state: Uint8Array,
  counts: RunCounts,
  sunUp: Uint8Array,
): BlindYear {
  let lowered = 0;
  let inDaylight = 0;
  for (let step = 0; step < STEPS; step++) {
    if (state[step] === 0) continue;
    lowered++;
    inDaylight += sunUp[step];
  }
  return {
    controller,
    state,
    actions: schedule.actions,
    moves: counts.moves,
    hoursLowered: lowered / STEPS_PER_HOUR,
    daylightHoursLowered: inDaylight / STEPS_PER_HOUR,
    hoursRaisedByWind: counts.stepsRaisedByWind / STEPS_PER_HOUR,
  };
}

function shadedGain(
  cache: StageCache,
  site: SiteLight,
  lit: LitOpening,
  use: BlindInPlace,
  schedule: CompiledSchedule,
  year: Stage<BlindYear>,
): Stage<Float64Array> {
  const { facade, shade, view, light, glass, bare, screened } = lit;
  const profile = cache.get('profile', [facade.id], () => profileIndex(facade.value));
  const poses = schedule.actions.map((action) => {
    const setting = settingOf(action, use);
    if (!setting) return undefined;
    const pose = cache.get('pose', [use.blind, setting, glass.id, view.id], () =>
      blindPose(use.blind, setting, glass.value, view.value),
    );
    const share = shareOf(action);
    const top =
      share < 1
        ? cache.get('top', [facade.id, shade.id, share], () =>
            topLight(facade.value, shade.value, share),
          )
        : undefined;
    return { key: [pose.id, share, top?.id], pose: { ...pose.value, share, top: top?.value } };
  });
  const keys = poses.map((p) => p?.key);
  return cache.get('blind', [screened.id, light.id, year.id, keys], () => {
    const hourGain = shadedHourGain({
      facade: facade.value,
      sky: site.sky.value,
      light: light.value,
      bare: bare.value,
      screened: screened.value,
      profile: profile.value,
      poses: poses.map((p): BlindPose | undefined => p?.pose),
    });
    return shadedYear(hourGain, year.value.state);
  });
}
