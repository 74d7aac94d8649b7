import type { Table } from '../../lib/findings/index.ts';
import type { AiringRule, DayProfiles, Room } from '../../lib/room/index.ts';
import { DefaultMarks, usualProject, usualRoom } from './defaultMarks.ts';
import type { PageFacts } from './facts.ts';
import { column, keyTable } from './tables.ts';
import type { Teller } from './teller.ts';

/** Every figure of the rooms. */
export function roomTables(facts: PageFacts, teller: Teller, marks: DefaultMarks): Table[] {
  return facts.project.rooms.flatMap((room) => [
    roomTable(room, teller, marks),
    ...envelopeTable(room, teller, marks),
    ...massTable(room, teller),
    profileTable(room, teller, marks),
    ...airingTable(room, facts, teller),
  ]);
}

function roomTable(room: Room, teller: Teller, marks: DefaultMarks): Table {
  const { t } = teller;
  const usual = usualRoom(room);
  const { infiltration, ventilation, heating, cooling, mass } = room;
  const perKelvin = (value: number) => `${teller.number(value, 2)} W/K`;
  const massText =
    mass.kind === 'class'
      ? t(`mass.${mass.class}`)
      : mass.kind === 'value'
        ? t('in.massValue', {
            capacity: teller.number(mass.heatCapacity / 1e6, 2),
            area: teller.quantity('area', mass.massArea, 1),
          })
        : t('in.massLayers');
  const leak =
    infiltration.kind === 'n50'
      ? t('in.n50', {
          n50: teller.number(infiltration.n50, 2),
          shielding: teller.number(infiltration.shielding, 2),
        })
      : t('in.ach', { ach: teller.number(infiltration.ach, 2) });
  const flow =
    ventilation.flow.kind === 'ach'
      ? t('in.ach', { ach: teller.number(ventilation.flow.ach, 2) })
      : teller.quantity('airFlow', ventilation.flow.m3PerHour);
  const bypass =
    ventilation.bypassAbove === undefined
      ? t('in.noBypass')
      : t('in.bypass', { temperature: teller.quantity('temperature', ventilation.bypassAbove) });
  const held = (what: NonNullable<Room['heating']>) =>
    t('in.held', {
      temperature: teller.quantity('temperature', what.setPoint),
      power:
        what.maxPower === undefined ? t('in.asNeeded') : teller.quantity('power', what.maxPower),
    });
  return keyTable(t('in.roomTitle', { room: room.name }), [
    [t('in.use'), t(`use.${room.use}`)],
    [t('in.floorArea'), teller.quantity('area', room.floorArea, 1)],
    [
      t('in.volume'),
      marks.of(`${teller.number(room.volume, 1)} m³`, 'volume', room.volume, usual.volume),
    ],
    [t('in.mass'), marks.of(massText, 'mass', mass, usual.mass)],
    [
      t('in.thermalBridges'),
      marks.of(
        perKelvin(room.thermalBridges),
        'thermalBridges',
        room.thermalBridges,
        usual.thermalBridges,
      ),
    ],
    [t('in.infiltration'), marks.of(leak, 'infiltration', infiltration, usual.infiltration)],
    [
      t('in.ventilation'),
      marks.of(
        `${flow}; ${t('in.recovery', { share: teller.words.percent(ventilation.heatRecovery) })}; ${bypass}`,
        'ventilation',
        ventilation,
        usual.ventilation,
      ),
    ],
    [t('in.heating'), heating ? marks.of(held(heating), 'heating', heating, usual.heating) : '–'],
    [t('in.cooling'), cooling ? held(cooling) : '–'],
    [
      t('in.occupied'),
      marks.of(occupiedText(room, teller), 'occupied', room.occupied, usual.occupied),
    ],
  ]);
}

function occupiedText({ occupied }: Room, { t }: Teller): string {
  const spans = (list: Room['occupied']['weekday']) =>
    list.map(({ from, to }) => `${clock(from)}–${clock(to)}`).join(', ') || '–';
  return `${t('in.weekdays')} ${spans(occupied.weekday)}; ${t('in.weekends')} ${spans(occupied.weekend)}`;
}

function clock(minutes: number): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
}

function envelopeTable(room: Room, teller: Teller, marks: DefaultMarks): Table[] {
  const { t } = teller;
  const title = t('in.envelope', { room: room.name });
  const { envelope } = room;
  if (envelope.kind === 'total') {
    const figure = `${teller.number(envelope.UA, 2)} W/K; ${teller.number(envelope.groundUA ?? 0, 2)} W/K`;
    return [keyTable(title, [[t('in.UA'), figure]])];
  }
  const usual = usualRoom(room).envelope;
  return [
    {
      title: marks.of(title, 'envelope', envelope, usual),
      columns: [
        column(t('in.part')),
        column(`${t('in.area')} (${teller.unit('area')})`, 'right'),
        column(`U (${teller.unit('uValue')})`, 'right'),
        column(t('in.boundary')),
        column(t('in.absorptance'), 'right'),
      ],
      rows: envelope.parts.map((p) => [
        p.name,
        teller.bare('area', p.area, 1),
        teller.bare('uValue', p.U),
        `${t(`boundary.${p.boundary}`)}${p.temperature === undefined ? '' : ` ${teller.quantity('temperature', p.temperature)}`}`,
        p.solarAbsorptance === undefined ? '–' : teller.number(p.solarAbsorptance, 2),
      ]),
    },
  ];
}

function massTable({ mass, name }: Room, teller: Teller): Table[] {
  if (mass.kind !== 'layers') return [];
  const { t } = teller;
  return [
    {
      title: t('in.layers', { room: name }),
      columns: [
        column(t('in.part')),
        column(`${t('in.area')} (${teller.unit('area')})`, 'right'),
        column(t('in.layersHead')),
      ],
      rows: mass.surfaces.map((s) => [
        s.name,
        teller.bare('area', s.area, 1),
        s.layers
          .map(
            (l) =>
              `${l.name ? `${l.name}: ` : ''}${teller.number(l.thickness * 1000, 1)} mm, ${teller.number(l.conductivity, 3)} W/mK, ${teller.number(l.density)} kg/m³, ${teller.number(l.specificHeat)} J/kgK`,
          )
          .join('; '),
      ]),
    },
  ];
}

function profileTable(room: Room, teller: Teller, marks: DefaultMarks): Table {
  const { t } = teller;
  const usual = usualRoom(room);
  const rows = (key: 'people' | 'appliances'): string[][] => {
    const profiles: DayProfiles = room[key];
    return (['weekday', 'weekend'] as const).map((days) => [
      `${marks.of(t(`in.${key}`), key, profiles, usual[key])}, ${t(`in.${days}s`)}`,
      ...profiles[days].map((w) => teller.number(w)),
    ]);
  };
  return {
    title: t('in.profiles', { room: room.name }),
    columns: [
      column(t('in.watts')),
      ...Array.from({ length: 24 }, (_, h) => column(String(h), 'right')),
    ],
    rows: [...rows('people'), ...rows('appliances')],
  };
}

function airingTable(room: Room, { project }: PageFacts, teller: Teller): Table[] {
  const { t, words } = teller;
  if (room.airing.length === 0) return [];
  const names = (rule: AiringRule) =>
    rule.openings
      ? rule.openings.map((id) => project.openings.find((o) => o.id === id)?.name ?? id).join(', ')
      : t('in.allSashes');
  const months = words.months();
  return [
    {
      title: t('in.airing', { room: room.name }),
      columns: [
        column(t('in.rule')),
        column(t('in.openings')),
        column(t('in.when')),
        column(t('in.conditions')),
      ],
      rows: room.airing.map((rule) => [
        rule.name ?? rule.id,
        `${names(rule)}; ${t(`position.${rule.position}`)}`,
        `${rule.months ? rule.months.map((m) => months[m - 1]).join(', ') : t('in.allYear')}; ${
          rule.clock ? `${clock(rule.clock.from)}–${clock(rule.clock.to)}` : t('in.allDay')
        }`,
        t('in.airingRule', {
          open: teller.quantity('temperature', rule.openAbove),
          close: teller.quantity('temperature', rule.closeBelow),
          margin: teller.quantity('temperatureDifference', rule.margin),
          vacant: t(`vacant.${rule.whenVacant}`),
          wind: rule.windLimit === undefined ? '–' : teller.quantity('windSpeed', rule.windLimit),
        }),
      ]),
    },
  ];
}

export function settingsTable({ project }: PageFacts, teller: Teller, marks: DefaultMarks): Table {
  const { settings } = project;
  const usual = usualProject.settings;
  const { t } = teller;
  return keyTable(t('in.settings'), [
    [
      t('in.skyModel'),
      marks.of(
        settings.skyModel === 'perez' ? 'Perez et al. (1990)' : 'Hay & Davies (1980)',
        'skyModel',
        settings.skyModel,
        usual.skyModel,
      ),
    ],
    [
      t('in.criterion'),
      marks.of(
        t(`criterionName.${settings.criterion}`),
        'criterion',
        settings.criterion,
        usual.criterion,
      ),
    ],
    [
      t('in.limit'),
      marks.of(
        teller.quantity('temperature', settings.overheatingLimit),
        'overheatingLimit',
        settings.overheatingLimit,
        usual.overheatingLimit,
      ),
    ],
    [
      t('in.share'),
      marks.of(
        teller.words.percent(settings.overheatingShare, 1),
        'overheatingShare',
        settings.overheatingShare,
        usual.overheatingShare,
      ),
    ],
    [
      t('in.category'),
      marks.of(
        settings.adaptiveCategory,
        'adaptiveCategory',
        settings.adaptiveCategory,
        usual.adaptiveCategory,
      ),
    ],
    [
      t('in.region'),
      marks.of(settings.dinRegion, 'dinRegion', settings.dinRegion, usual.dinRegion),
    ],
  ]);
}
