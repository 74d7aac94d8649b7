import type { Table } from '../../lib/findings/index.ts';
import type { ProjectOpening } from '../../lib/project/index.ts';
import type { QuantityName } from '../../lib/units/index.ts';
import { DefaultMarks, usualOpening, usualProject } from './defaultMarks.ts';
import { blindOf, glazingOf } from './facts.ts';
import type { PageFacts } from './facts.ts';
import { scheduleName } from '../words/rules.ts';
import { blindName } from './orderList.ts';
import { column, keyTable } from './tables.ts';
import type { Teller } from './teller.ts';

/** Site, horizon and the months the weather is built from. */
export function siteTables(facts: PageFacts, teller: Teller, marks: DefaultMarks): Table[] {
  const { site, year } = facts.project;
  const { t } = teller;
  const usual = usualProject.site;
  const albedo = Array.isArray(site.albedo)
    ? site.albedo.map((a) => teller.number(a, 2)).join(' · ')
    : teller.number(site.albedo, 2);
  const tables = [
    keyTable(t('in.site'), [
      [t('in.place'), site.name],
      [t('in.latitude'), `${teller.number(site.latitude, 3)}°`],
      [t('in.longitude'), `${teller.number(site.longitude, 3)}°`],
      [t('in.elevation'), teller.elevation(site.elevation)],
      [t('in.timeZone'), site.timeZone],
      [t('in.calendarYear'), String(year)],
      [t('in.albedo'), marks.of(albedo, 'albedo', site.albedo, usual.albedo)],
      [
        t('in.windExposure'),
        marks.of(
          teller.number(site.windExposure, 2),
          'windExposure',
          site.windExposure,
          usual.windExposure,
        ),
      ],
    ]),
  ];
  if (site.horizon.length > 0) {
    tables.push(
      keyTable(t('in.horizon'), [
        [
          t('in.horizonPoints'),
          site.horizon
            .map((p) => `${teller.number(p.azimuth)}°: ${teller.number(p.altitude, 1)}°`)
            .join(' · '),
        ],
      ]),
    );
  }
  return [...tables, ...normalsTable(facts, teller)];
}

function normalsTable({ project, normals, study }: PageFacts, teller: Teller): Table[] {
  const given = project.climate.kind === 'monthly' ? project.climate.normals : normals;
  if (!given || study.weather.kind !== 'normals') return [];
  const { t, words } = teller;
  const row = (head: string, values: readonly number[] | undefined, digits: number) =>
    values ? [[head, ...values.map((v) => teller.number(v, digits))]] : [];
  return [
    {
      title: t('in.normals'),
      columns: [column(t('in.monthly')), ...words.months().map((m) => column(m, 'right'))],
      rows: [
        ...row(t('in.ghi'), given.ghiKWhPerM2Day, 2),
        ...row(t('in.dhi'), given.dhiKWhPerM2Day, 2),
        ...row(t('in.dni'), given.dniKWhPerM2Day, 2),
        ...row(t('in.meanTemperature'), given.dryBulbMean, 1),
        ...row(t('in.minTemperature'), given.dryBulbDailyMin, 1),
        ...row(t('in.maxTemperature'), given.dryBulbDailyMax, 1),
        ...row(t('in.wind'), given.wind, 1),
      ],
    },
  ];
}

export function wallTable({ project }: PageFacts, teller: Teller, marks: DefaultMarks): Table {
  const { t } = teller;
  const usual = usualProject.walls[0]!;
  return {
    title: t('in.walls'),
    columns: [
      column(t('in.wall')),
      column(t('in.azimuth'), 'right'),
      column(t('in.tilt'), 'right'),
      column(headOf(teller, 'in.thickness', 'length'), 'right'),
      column(headOf(teller, 'in.U', 'uValue'), 'right'),
      column(headOf(teller, 'in.area', 'area'), 'right'),
    ],
    rows: project.walls.map((w) => [
      w.name,
      `${teller.number(w.azimuth)}°`,
      `${teller.number(w.tilt)}°`,
      marks.of(teller.bare('length', w.thickness), 'thickness', w.thickness, usual.thickness),
      marks.of(teller.bare('uValue', w.U), 'wallU', w.U, usual.U),
      w.area === undefined ? '–' : teller.bare('area', w.area, 1),
    ]),
  };
}

type Head =
  | 'in.thickness'
  | 'in.U'
  | 'in.area'
  | 'in.setBack'
  | 'in.sill'
  | 'in.Uf'
  | 'in.psiSpacer'
  | 'in.psiInstall';

function headOf(teller: Teller, key: Head, quantity: QuantityName): string {
  return `${teller.t(key)} (${teller.unit(quantity)})`;
}

/** Every figure of the openings, a row each. */
export function openingTables(facts: PageFacts, teller: Teller, marks: DefaultMarks): Table[] {
  const { t } = teller;
  const { openings, walls, rooms } = facts.project;
  const nameOf = (list: readonly { id: string; name: string }[], id: string) =>
    list.find((x) => x.id === id)?.name ?? id;
  const length = (value: number) => teller.bare('length', value);
  const sides = (s: ProjectOpening['reveal']) =>
    [s.head, s.sill, s.left, s.right].map(length).join(' / ');
  const first: Table = {
    title: t('in.openings'),
    columns: [
      column(t('in.opening')),
      column(t('in.wall')),
      column(t('in.room')),
      column(t('in.kind')),
      column(t('in.size')),
      column(headOf(teller, 'in.sill', 'length'), 'right'),
      column(t('in.count'), 'right'),
      column(t('in.escape')),
    ],
    rows: openings.map((o) => [
      o.name,
      nameOf(walls, o.wall),
      nameOf(rooms, o.room),
      t(`kind.${o.kind}`),
      teller.size(o.width, o.height),
      length(o.sillHeight),
      teller.number(o.count),
      o.escapeRoute ? t('in.yes') : '–',
    ]),
  };
  const frame: Table = {
    title: t('in.frames'),
    columns: [
      column(t('in.opening')),
      column(`${t('in.widths')} (${teller.unit('length')})`),
      column(headOf(teller, 'in.Uf', 'uValue'), 'right'),
      column(headOf(teller, 'in.psiSpacer', 'psi'), 'right'),
      column(headOf(teller, 'in.psiInstall', 'psi'), 'right'),
      column(t('in.hidden')),
    ],
    rows: openings.map((o) => {
      const usual = usualOpening(o).frame;
      const { widths, Uf, psiSpacer, psiInstall, hidden } = o.frame;
      return [
        o.name,
        marks.of(sides(widths), 'widths', widths, usual.widths),
        marks.of(teller.bare('uValue', Uf), 'Uf', Uf, usual.Uf),
        marks.of(teller.bare('psi', psiSpacer), 'psiSpacer', psiSpacer, usual.psiSpacer),
        marks.of(teller.bare('psi', psiInstall), 'psiInstall', psiInstall, usual.psiInstall),
        hidden ? sides(hidden) : '–',
      ];
    }),
  };
  const shade: Table = {
    title: t('in.shade'),
    columns: [
      column(t('in.opening')),
      column(headOf(teller, 'in.setBack', 'length'), 'right'),
      column(`${t('in.reveal')} (${teller.unit('length')})`),
      column(t('in.reflectance'), 'right'),
      column(t('in.overhangFins')),
      column(t('in.sash')),
    ],
    rows: openings.map((o) => {
      const usual = usualOpening(o);
      return [
        o.name,
        marks.of(length(o.setBack), 'setBack', o.setBack, usual.setBack),
        marks.of(sides(o.reveal), 'reveal', o.reveal, usual.reveal),
        marks.of(
          teller.number(o.revealReflectance, 2),
          'revealReflectance',
          o.revealReflectance,
          usual.revealReflectance,
        ),
        projections(o, teller),
        o.airing && o.airing.kind !== 'none'
          ? marks.of(
              t(o.airing.kind === 'tilt' ? 'in.sashTilt' : 'in.sashTurn', {
                size: teller.size(o.airing.width, o.airing.height),
                angle: teller.number(o.airing.tiltAngle),
              }),
              'sash',
              o.airing,
              usual.airing,
            )
          : '–',
      ];
    }),
  };
  return [first, frame, shade, fillTable(facts, teller)];
}

/** Overhang and fins with all their measures, from the wall's outer face. */
function projections(o: ProjectOpening, teller: Teller): string {
  const { t } = teller;
  const length = (value: number) => teller.bare('length', value);
  const finOf = (fin: NonNullable<ProjectOpening['finLeft']>) => ({
    out: length(fin.projection),
    offset: length(fin.offset),
    above: length(fin.above),
    below: length(fin.below),
  });
  const { overhang, finLeft, finRight } = o;
  const parts = [
    overhang
      ? t('in.overhang', {
          out: length(overhang.projection),
          above: length(overhang.aboveHead),
          left: length(overhang.left),
          right: length(overhang.right),
        })
      : '',
    finLeft ? t('in.finLeft', finOf(finLeft)) : '',
    finRight ? t('in.finRight', finOf(finRight)) : '',
  ];
  return parts.filter(Boolean).join('; ') || '–';
}

/** Glass, screen and blind of each opening. */
function fillTable(facts: PageFacts, teller: Teller): Table {
  const { t, words } = teller;
  const { openings, groups, schedules } = facts.project;
  return {
    title: t('in.fill'),
    columns: [
      column(t('in.opening')),
      column(t('in.glazing')),
      column(t('in.blind')),
      column(t('in.setting')),
      column(t('in.moves')),
      column(t('in.screen')),
    ],
    rows: openings.map((o) => {
      const glazing = glazingOf(facts, o.glazing);
      const blind = o.blind && blindOf(facts, o.blind.blind);
      const screen = o.insectScreen && blindOf(facts, o.insectScreen.blind);
      const group = groups.find((g) => g.id === o.blind?.group);
      const schedule = schedules.find((s) => s.id === o.blind?.schedule);
      const settings = [
        o.blind?.standingAngle === undefined
          ? ''
          : t('in.standing', { angle: teller.number(o.blind.standingAngle) }),
        o.blind?.windLimit === undefined
          ? ''
          : t('in.windLimit', { speed: teller.quantity('windSpeed', o.blind.windLimit) }),
        o.blind?.flowFactor === undefined
          ? ''
          : t('in.flow', { share: words.percent(o.blind.flowFactor) }),
      ];
      return [
        o.name,
        glazing ? teller.named('glazing', glazing.id, glazing.name) : o.glazing,
        blind ? blindName(blind, teller) : '–',
        settings.filter(Boolean).join('; ') || '–',
        group?.name ?? (schedule ? scheduleName(words, schedule.name) : '–'),
        screen && o.insectScreen
          ? `${blindName(screen, teller)}; ${words.percent(o.insectScreen.share)}; ${t(
              'order.fromTo',
              {
                from: words.day(o.insectScreen.from),
                to: words.day(o.insectScreen.to),
              },
            )}`
          : '–',
      ];
    }),
  };
}
