import type { Blind } from '../../lib/blind/index.ts';
import type { Table } from '../../lib/findings/index.ts';
import type { Glazing } from '../../lib/glazing/index.ts';
import { describeSchedule } from '../../lib/schedule/index.ts';
import { answerHouse } from './answer.ts';
import { blindOf, glazingOf } from './facts.ts';
import type { PageFacts } from './facts.ts';
import { blindName } from './orderList.ts';
import { scheduleName, scheduleWords } from '../words/rules.ts';
import { column } from './tables.ts';
import type { Teller } from './teller.ts';

/** Glazings and blinds in use with their source or mark. */
export function partTables(facts: PageFacts, teller: Teller): Table[] {
  const { t } = teller;
  const { openings } = answerHouse(facts);
  const ids = (list: (string | undefined)[]) => [...new Set(list.filter((id) => id !== undefined))];
  const glazings = ids(openings.map((o) => o.glazing)).flatMap((id) => glazingOf(facts, id) ?? []);
  const blinds = ids(openings.flatMap((o) => [o.blind?.blind, o.insectScreen?.blind])).flatMap(
    (id) => blindOf(facts, id) ?? [],
  );
  return [
    {
      title: t('in.glazings'),
      columns: [
        column(t('in.glazing')),
        column(t('in.panes'), 'right'),
        column(t('in.g'), 'right'),
        column(t('in.tauSolar'), 'right'),
        column(t('in.tauVisible'), 'right'),
        column(`Ug (${teller.unit('uValue')})`, 'right'),
        column(t('in.angular')),
        column(t('in.source')),
      ],
      rows: glazings.map((g) => glazingRow(g, teller)),
    },
    ...(blinds.length > 0
      ? [
          {
            title: t('in.blinds'),
            columns: [
              column(t('in.blind')),
              column(t('in.position')),
              column(t('in.optics')),
              column(t('in.wind10'), 'right'),
              column(t('in.source')),
            ],
            rows: blinds.map((b) => blindRow(b, teller)),
          },
        ]
      : []),
  ];
}

function glazingRow(g: Glazing, teller: Teller): string[] {
  const { angular } = g;
  const panes =
    angular.kind === 'clear'
      ? teller.t('in.clear', {
          panes: angular.panes
            .map(
              (p) =>
                `${teller.number(p.thickness * 1000, 1)} mm, K ${teller.number(p.extinction)}/m, n ${teller.number(p.refractiveIndex, 3)}`,
            )
            .join(' + '),
        })
      : teller.t('in.coated');
  return [
    teller.named('glazing', g.id, g.name),
    teller.number(g.panes),
    teller.number(g.g, 2),
    teller.number(g.solarTransmittance, 2),
    g.visibleTransmittance === undefined ? '–' : teller.number(g.visibleTransmittance, 2),
    teller.bare('uValue', g.Ug),
    panes,
    teller.named('glazingSource', g.id, g.source),
  ];
}

function blindRow(b: Blind, teller: Teller): string[] {
  const { t } = teller;
  const two = (value: number) => teller.number(value, 2);
  const millimetres = (value: number) => `${teller.number(value * 1000)} mm`;
  const optics =
    b.kind === 'slats'
      ? t('in.slats', {
          width: millimetres(b.slatWidth),
          spacing: millimetres(b.slatSpacing),
          upper: two(b.reflectanceUpper),
          lower: two(b.reflectanceLower),
          through: two(b.slatTransmittance),
          from: teller.number(b.angleMin),
          to: teller.number(b.angleMax),
        })
      : b.kind === 'fabric'
        ? t('in.fabric', {
            open: two(b.openness),
            diffuse: two(b.diffuseTransmittance),
            reflectance: two(b.reflectance),
          })
        : t('in.shutter', { through: two(b.transmittance), reflectance: two(b.reflectance) });
  return [
    blindName(b, teller),
    `${t(`position.${b.position}`)}${b.position === 'between' ? ` (${two(b.ventFactor ?? 0)})` : ''}`,
    optics,
    b.windLimit === undefined ? '–' : teller.quantity('windSpeed', b.windLimit),
    teller.named('blindSource', b.id, b.source),
  ];
}

/** Every schedule in sentences, with the groups and openings it moves. */
export function scheduleTable(facts: PageFacts, teller: Teller): Table[] {
  const house = answerHouse(facts);
  const { t, words } = teller;
  if (house.schedules.length === 0) return [];
  const users = (id: string) => [
    ...house.groups
      .filter((g) => g.schedule === id)
      .map((g) =>
        t('in.groupOf', {
          name: g.name,
          channel: g.channel,
          lead: leadName(facts, g.lead, teller),
        }),
      ),
    ...house.openings.filter((o) => o.blind?.schedule === id).map((o) => o.name),
  ];
  return [
    {
      title: t('in.schedules'),
      columns: [column(t('in.schedule')), column(t('in.rules')), column(t('in.movesWhat'))],
      rows: house.schedules.map((s) => [
        scheduleName(words, s.name),
        describeSchedule(s, teller.system, scheduleWords(words)).join(' '),
        users(s.id).join('; ') || '–',
      ]),
    },
  ];
}

function leadName({ project }: PageFacts, lead: string, { t }: Teller): string {
  return lead === 'any'
    ? t('in.leadAny')
    : (project.openings.find((o) => o.id === lead)?.name ?? lead);
}
