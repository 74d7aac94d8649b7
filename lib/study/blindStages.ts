import { compileSchedule, groupSensors, runSchedule } from '../schedule/index.ts';
import type { CompiledSchedule, RunOptions, Sensors } from '../schedule/index.ts';
import { STEPS } from '../time/index.ts';
import type { Stage, StageCache } from './cache.ts';
import { topLight } from './glassLight.ts';
import type { LitOpening, SiteLight } from './lightStages.ts';
import { blindPose, settingOf, shareOf } from './poses.ts';
import type { House } from './resolve.ts';
import { blindYear } from './blindYear.ts';
import type { BlindYear } from './blindYear.ts';
import { profileIndex, shadedHourGain, shadedYear } from './shadedGain.ts';
import type { BlindPose, HourGain } from './shadedGain.ts';
import type { Controller } from './types.ts';

/** A controller ready to run. */
export interface ReadyController {
  controller: Controller;
  schedule: Stage<CompiledSchedule>;
  sensors: Stage<Sensors>;
  options: RunOptions;
}

/** An opening ready to turn its blind's positions into gain. */
export interface ReadyOpening extends LitOpening {
  /** The controller of its blind; absent where it has none. */
  ready?: ReadyController;
  hourGain: Stage<HourGain>;
}

/** One opening with its blind moved through the year. */
export interface MovedOpening extends ReadyOpening {
  /** Gain with shading, hourly mean W/m2 of glass; HOURS values. */
  gain: Stage<Float64Array>;
  blind?: Stage<BlindYear>;
}

/** Compiles every schedule and gathers its sensors; by controller id. */
export function readyControllers(
  cache: StageCache,
  site: SiteLight,
  house: House,
  lit: readonly LitOpening[],
): Map<string, ReadyController> {
  const openings = new Map(lit.map((l) => [l.opening.id, l]));
  const { calendar, year, wind } = site;
  return new Map(
    house.controllers.map((controller): [string, ReadyController] => {
      const schedule = cache.get('schedule', [controller.schedule, calendar.id], () =>
        compileSchedule(controller.schedule, calendar.value),
      );
      const { lead } = controller;
      const members = controller.members.map((id) => openings.get(id)!);
      const leads = members.some((m) => m.opening.id === lead);
      const places = members.map((m) => [m.opening.id, m.facade.id, m.opening.blind?.windLimit]);
      const inputs = [places, leads ? lead : 'any', cache.idOf(year), wind.id];
      const read = cache.get('sensors', inputs, () => {
        const group = members.map(({ opening, facade }) => ({
          opening: opening.id,
          sunOnFacade: facade.value.sunny,
          facadeIrradiance: facade.value.irradiance,
          windLimit: opening.blind?.windLimit,
        }));
        const { windLimit, ...sensors } = groupSensors(group, leads ? lead : 'any');
        return { windLimit, sensors: { ...sensors, outdoor: year.dryBulb, wind: wind.value } };
      });
      const sensors = { id: read.id, value: read.value.sensors };
      return [
        controller.id,
        { controller, schedule, sensors, options: { windLimit: read.value.windLimit } },
      ];
    }),
  );
}

/** Gives every opening the optics of all positions its schedule may ask for. */
export function readyOpening(
  cache: StageCache,
  site: SiteLight,
  lit: LitOpening,
  controllers: ReadonlyMap<string, ReadyController>,
): ReadyOpening {
  const { facade, shade, view, light, glass, bare, screened } = lit;
  const use = lit.opening.blind;
  const ready = use && controllers.get(use.controller);
  const poses = (ready?.schedule.value.actions ?? []).map((action) => {
    const setting = settingOf(action, use!);
    if (!setting) return undefined;
    const pose = cache.get('pose', [use!.blind, setting, glass.id, view.id], () =>
      blindPose(use!.blind, setting, glass.value, view.value),
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
  const profile = cache.get('profile', [facade.id], () => profileIndex(facade.value));
  const keys = poses.map((p) => p?.key);
  const hourGain = cache.get('poses', [screened.id, light.id, keys], () =>
    shadedHourGain({
      facade: facade.value,
      sky: site.sky.value,
      light: light.value,
      bare: bare.value,
      screened: screened.value,
      profile: profile.value,
      poses: poses.map((p): BlindPose | undefined => p?.pose),
    }),
  );
  return { ...lit, ready, hourGain };
}

/** Moves the blinds of one controller by its schedule alone. */
export function moveAlone(
  cache: StageCache,
  site: SiteLight,
  { controller, schedule, sensors, options }: ReadyController,
): Stage<BlindYear> {
  const inputs = [schedule.id, sensors.id, options, controller.id, site.sunUp.id];
  return cache.get('moves', inputs, () => {
    const state = new Uint8Array(STEPS);
    const counts = runSchedule(schedule.value, sensors.value, options, state);
    return blindYear(controller.id, schedule.value, state, counts, site.sunUp.value);
  });
}

/** The gain that is left at one opening with its blind where the year's positions have it. */
export function gainOf(
  cache: StageCache,
  opening: ReadyOpening,
  blind: Stage<BlindYear> | undefined,
): MovedOpening {
  const { screened, hourGain } = opening;
  const gain = blind
    ? cache.get('blind', [hourGain.id, blind.id], () =>
        shadedYear(hourGain.value, blind.value.state),
      )
    : cache.get('blind', [screened.id], () => screened.value.gain);
  return { ...opening, gain, blind };
}
