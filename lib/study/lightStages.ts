import { insectScreenFactor } from '../blind/index.ts';
import type { TypicalYear } from '../climate/index.ts';
import { glassAngular } from '../glazing/index.ts';
import type { GlassAngular } from '../glazing/index.ts';
import { compileOpening, diffuseView } from '../opening/index.ts';
import type { DiffuseView, HorizonPoint, OpeningShade } from '../opening/index.ts';
import type { Project } from '../project/index.ts';
import { buildFacadeYear, buildSkyYear } from '../sky/index.ts';
import type { FacadeYear, SkyYear } from '../sky/index.ts';
import { buildSunYear } from '../sun/index.ts';
import { STEPS, STEPS_PER_HOUR, buildCalendar } from '../time/index.ts';
import type { YearCalendar } from '../time/index.ts';
import { bareGain } from './bareGain.ts';
import type { BareGain } from './bareGain.ts';
import type { Stage, StageCache } from './cache.ts';
import { glassLight } from './glassLight.ts';
import type { GlassLight } from './glassLight.ts';
import type { StudyPlace } from './place.ts';
import { openPlaneView } from './planeView.ts';
import type { House } from './resolve.ts';
import { daysInSeason, withScreen, withoutScreen } from './screen.ts';
import type { ScreenedGain } from './screen.ts';
import type { HouseOpening } from './types.ts';

/** The stages all openings share. */
export interface SiteLight {
  calendar: Stage<YearCalendar>;
  sky: Stage<SkyYear>;
  /** By wall id. */
  facades: Map<string, Stage<FacadeYear>>;
  year: TypicalYear;
  /** Outdoor wind at the facades, m/s; HOURS values. */
  wind: Stage<Float64Array>;
  /** 1 at the steps with the sun up; STEPS values. */
  sunUp: Stage<Uint8Array>;
}

/** Stages 1 and 2: sun, sky and the light on each facade. */
export function lightSite(
  cache: StageCache,
  project: Project,
  place: StudyPlace,
  year: TypicalYear,
  house: House,
): SiteLight {
  const { site, settings } = project;
  const { latitude, longitude, timeZone } = place;
  const calendar = cache.get('calendar', [timeZone, project.year, year.startUtc], () =>
    buildCalendar(timeZone, project.year, year.startUtc),
  );
  const sun = cache.get('sun', [latitude, longitude, project.year, year.startUtc], () =>
    buildSunYear({ latitude, longitude }, project.year, year.startUtc),
  );
  const { albedo, horizon } = site;
  const model = settings.skyModel;
  const weather = cache.idOf(year);
  const sky = cache.get('sky', [sun.id, weather, calendar.id, albedo, horizon, model], () =>
    buildSkyYear(sun.value, year, { albedo, horizon, model, month: calendar.value.month }),
  );
  const facades = new Map(
    house.walls.map(({ id, plane }) => {
      const view = cache.get('plane view', [plane, horizon], () => openPlaneView(plane, horizon));
      const facade = cache.get('facade', [sky.id, plane, view.id], () =>
        buildFacadeYear(sun.value, sky.value, plane, view.value),
      );
      return [id, facade];
    }),
  );
  const wind = cache.get('wind', [weather, site.windExposure], () =>
    year.wind.map((speed) => speed * site.windExposure),
  );
  const sunUp = cache.get('sun up', [sun.id], () => {
    const up = new Uint8Array(STEPS);
    for (const step of sun.value.step) up[step] = 1;
    return up;
  });
  return { calendar, sky, facades, year, wind, sunUp };
}

/** One opening up to its bare and screened gain. */
export interface LitOpening {
  opening: HouseOpening;
  facade: Stage<FacadeYear>;
  shade: Stage<OpeningShade>;
  view: Stage<DiffuseView>;
  light: Stage<GlassLight>;
  glass: Stage<GlassAngular>;
  bare: Stage<BareGain>;
  screened: Stage<ScreenedGain>;
}

/** Stages 3 and 4: light on the glass in its reveal, gain of the bare and the screened glass. */
export function lightOpening(
  cache: StageCache,
  site: SiteLight,
  opening: HouseOpening,
  horizon: readonly HorizonPoint[],
): LitOpening {
  const { geometry, plane, glazing, screen } = opening;
  const facade = site.facades.get(opening.wall)!;
  const sky = site.sky.value;
  const shade = cache.get('shade', [geometry], () => compileOpening(geometry));
  // Without a horizon profile the sky is the same all round, so turning the wall keeps the view.
  const facing = horizon.length > 0 ? plane.azimuth : 0;
  const view = cache.get('view', [geometry, plane.tilt, facing, horizon], () =>
    diffuseView(geometry, plane, horizon),
  );
  const light = cache.get('opening', [facade.id, shade.id, view.id], () =>
    glassLight(facade.value, shade.value, view.value),
  );
  const glass = cache.get('glazing', [glazing], () => glassAngular(glazing));
  const bare = cache.get('glass', [light.id, glass.id], () =>
    bareGain(facade.value, sky, light.value, glass.value),
  );
  const screened = cache.get('screen', [bare.id, screen, site.calendar.id], () => {
    if (!screen) return withoutScreen(facade.value, bare.value);
    const { day } = site.calendar.value;
    return withScreen(
      facade.value,
      sky,
      light.value,
      bare.value,
      insectScreenFactor(screen.fabric, screen.share),
      daysInSeason(screen.from, screen.to),
      (hour) => day[hour * STEPS_PER_HOUR],
    );
  });
  return { opening, facade, shade, view, light, glass, bare, screened };
}
