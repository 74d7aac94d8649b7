import { EXAMPLES, exampleText } from './library.ts';
import { at, changed, pathPattern, pathsTo, seeded, shape } from './paths.ts';
import type { Fields, Json, Key } from './paths.ts';

/** A project file with one fault, and where a problem must point. */
export interface BrokenProject {
  name: string;
  text: string;
  expectPath: RegExp;
}

interface Source {
  example: string;
  root: Json;
}
type Random = ReturnType<typeof seeded>;
/** Makes one fault; undefined where this example has no place for it. */
type Fault = (source: Source, random: Random) => BrokenProject | undefined;

/** Fields that may be absent, by shape: their loss is no fault. */
const OPTIONAL = [
  /^(notes|units|year|glazings|blinds|schedules|groups|settings|page)$/,
  /^site\.(albedo|horizon|windExposure)$/,
  /^settings\./,
  /^page\./,
  /^walls\[\]\.(tilt|area)$/,
  /^openings\[\]\.(count|reveal|overhang|finLeft|finRight|insectScreen|blind|airing|escapeRoute)$/,
  /^openings\[\]\.frame\.(overInsulated|hidden)$/,
  /^openings\[\]\.blind\.(standingAngle|windLimit|schedule|group|flowFactor)$/,
  /^schedules\[\]\.rules\[\]\.(name|when\.\w+|then\.share)$/,
  /^rooms\[\]\.(heating|cooling|heating\.maxPower|ventilation\.bypassAbove)$/,
  /^rooms\[\]\.envelope\.parts\[\]\.(temperature|solarAbsorptance)$/,
  /^rooms\[\]\.airing\[\]\.(name|openings|months|clock|windLimit)$/,
  /\[\]$/,
];

const isObject = (v: Json): v is Fields => typeof v === 'object' && v !== null && !Array.isArray(v);
const isNumber = (v: Json) => typeof v === 'number';
/** Fields the reader looks at first; they have faults of their own below. */
const isHead = (path: readonly Key[]) => path[0] === 'format' || path[0] === 'version';

function fault(
  what: string,
  wanted: (value: Json, path: Key[]) => boolean,
  change: (value: Json, random: Random) => Json | undefined,
): Fault {
  return ({ example, root }, random) => {
    const places = pathsTo(root, (value, path) => !isHead(path) && wanted(value, path));
    if (!places.length) return undefined;
    const path = random.pick(places);
    const value = change(at(root, path), random);
    return {
      name: `${what}: ${example} ${path.join('.')} = ${JSON.stringify(value)?.slice(0, 60)}`,
      text: JSON.stringify(changed(root, path, value)),
      expectPath: pathPattern(path),
    };
  };
}

const oneOf =
  (...values: Json[]) =>
  (_: Json, random: Random) =>
    random.pick(values);

/** Swaps two letters of a field's name. */
const typo: Fault = ({ example, root }, random) => {
  const path = random.pick(
    pathsTo(root, (_, p) => !isHead(p) && /^\w{4,}$/.test(String(p.at(-1)))),
  );
  const key = String(path.at(-1));
  const i = 1 + Math.floor(random.next() * (key.length - 2));
  const wrong = key.slice(0, i) + key[i + 1] + key[i] + key.slice(i + 2);
  if (wrong === key) return undefined;
  const parent = path.slice(0, -1);
  const moved = changed(changed(root, path, undefined), [...parent, wrong], at(root, path));
  return {
    name: `typing slip: ${example} ${path.join('.')} as ${wrong}`,
    text: JSON.stringify(moved),
    expectPath: pathPattern([...parent, wrong]),
  };
};

const unknownKey: Fault = ({ example, root }, random) => {
  const parent = random.pick(pathsTo(root, isObject));
  const key = random.pick(['colour', 'x', 'comment', 'price', 'constructor', 'the width']);
  return {
    name: `unknown field: ${example} ${parent.join('.')}.${key}`,
    text: JSON.stringify(changed(root, [...parent, key], 1)),
    expectPath: new RegExp(pathPattern(parent).source.slice(0, -1) + `\\.(${key}|"${key}")$`),
  };
};

const REFERENCE =
  /^(climate\.station|openings\[\]\.(wall|room|glazing|insectScreen\.blind|blind\.(blind|schedule|group))|groups\[\]\.(schedule|lead)|rooms\[\]\.airing\[\]\.openings\[\])$/;

const duplicateId: Fault = ({ example, root }, random) => {
  const places = pathsTo(
    root,
    (_, p) => p.at(-1) === 'id' && typeof p.at(-2) === 'number' && Number(p.at(-2)) > 0,
  );
  const path = random.pick(places);
  const list = path.slice(0, -2);
  const first = at(root, [...list, 0, 'id']);
  return {
    name: `id twice: ${example} ${path.join('.')} = ${String(first)}`,
    text: JSON.stringify(changed(root, path, first)),
    expectPath: pathPattern(path),
  };
};

/** Text that is no JSON. */
const noJson: Fault = ({ example }, random) => {
  const text = exampleText(example as (typeof EXAMPLES)[number]);
  const middle = Math.floor(text.length * (0.1 + 0.8 * random.next()));
  const [what, broken] = random.pick<[string, string]>([
    ['cut off', text.slice(0, middle)],
    ['NaN without quotes', text.replace(/: 0\.12\b/, ': NaN')],
    ['comma at the end', text.replace(/\n}\s*$/, ',\n}')],
    ['comment', text.replace('{', '{ // house\n')],
    ['single quotes', text.replace('"format"', "'format'")],
    ['plain words', `A house with ${middle} windows`],
    ['nothing', ' '.repeat(middle % 7)],
    ['stray bracket', text.slice(0, middle) + text.slice(middle).replace('\n', ']]\n')],
  ]);
  return {
    name: `no JSON: ${example} ${what} ${middle}`,
    text: broken,
    expectPath: /^(file|line \d+)/,
  };
};

const head = (path: string, values: (Json | undefined)[]): Fault => {
  return ({ example, root }, random) => {
    const value = random.pick(values);
    return {
      name: `${path}: ${example} = ${JSON.stringify(value)}`,
      text: JSON.stringify(changed(root, [path], value)),
      expectPath: pathPattern([path]),
    };
  };
};

const notAnObject: Fault = ({ example, root }, random) => {
  const value = random.pick<Json>([
    [root],
    [],
    null,
    true,
    17,
    'shadewright-project',
    exampleText('studio'),
  ]);
  return {
    name: `no object: ${example} as ${JSON.stringify(value).slice(0, 20)}`,
    text: JSON.stringify(value),
    expectPath: /^project$/,
  };
};

/** Parts that are each in range and do not fit together. */
const misfit: Fault = ({ example, root }, random) => {
  const i = random.pick(pathsTo(root, (_, p) => shape(p) === 'openings[]'))[1];
  const slats = 'external-slats-80-light';
  const [path, value] = random.pick<[Key[], Json]>([
    [['openings', i, 'frame', 'widths', 'left'], 0.5],
    [['openings', i, 'setBack'], 1.9],
    [['openings', i, 'airing'], { kind: 'turn', width: 9, height: 0.1, tiltAngle: 0 }],
    [['openings', i, 'insectScreen'], { blind: slats, share: 1, from: '05-01', to: '09-30' }],
    [['openings', i, 'blind'], { blind: slats, standingAngle: -80 }],
    [['walls', 0, 'area'], 0.2],
  ]);
  const last = String(path.at(-1));
  const below: Record<string, string> = {
    left: '.*frame\\.widths\\.left',
    airing: '.*airing\\.width',
    insectScreen: '.*insectScreen\\.blind',
    blind: '.*blind\\.standingAngle',
  };
  const narrow = last === 'left' ? changed(root, ['openings', i, 'width'], 0.5) : root;
  return {
    name: `misfit: ${example} ${path.join('.')} = ${JSON.stringify(value).slice(0, 30)}`,
    text: JSON.stringify(changed(narrow, path, value)),
    expectPath: below[last] ? new RegExp(`^openings\\[${i}\\]${below[last]}$`) : pathPattern(path),
  };
};

const named = (pattern: RegExp) => (_: Json, path: Key[]) => pattern.test(shape(path));
const SIZES = /\.(width|height|thickness|floorArea|volume|projection|setBack)$/;
const PLAIN_TEXT = /\.(id|name|wall|room|glazing)$/;

/** Kinds of fault with how many of each. */
const FAULTS: [number, Fault][] = [
  [
    20,
    fault(
      'missing',
      (_, p) => !OPTIONAL.some((o) => o.test(shape(p))),
      () => undefined,
    ),
  ],
  [14, fault('wrong type', isNumber, oneOf(true, null, [1], {}, 'wide', ''))],
  [8, fault('wrong type', named(PLAIN_TEXT), oneOf(7, null, ['a'], { id: 'a' }, false))],
  [16, fault('out of range', isNumber, oneOf(-1e6, 1e12, 123456789.5))],
  [6, fault('huge', isNumber, oneOf(1e300, -1e300, Number.MAX_VALUE))],
  [8, fault('no number', isNumber, oneOf('NaN', 'Infinity', '-', 'n/a'))],
  [5, fault('number in quotes', isNumber, (v) => String(v))],
  [9, fault('negative size', named(SIZES), oneOf(-0.5, -2, -1e-3))],
  [14, typo],
  [8, unknownKey],
  [16, fault('dangling', named(REFERENCE), (v, r) => `${String(v)}${r.pick(['x', '-2', '9'])}`)],
  [8, duplicateId],
  [
    8,
    fault(
      'bad date',
      named(/(dates|insectScreen)\.(from|to)$/),
      oneOf('02-30', '13-01', '6-1', '00-10', '2026-06-01', '04-31', '1 May', ''),
    ),
  ],
  [
    6,
    fault(
      'bad zone',
      named(/^site\.timeZone$/),
      oneOf('America/Burlingtn', 'Mars/Olympus', '', 'UTC+25:00', 'Eastern', 5),
    ),
  ],
  [4, fault('off the quarter hour', named(/clock\.(from|to)$/), oneOf(7, 1441, 30.5, -15))],
  [
    4,
    fault('unknown choice', named(/(\.kind|\.use|skyModel|units|whenVacant)$/), oneOf('both', 3)),
  ],
  [7, fault('list for object', isObject, oneOf([], [1, 2]))],
  [5, fault('object for list', (v) => Array.isArray(v), oneOf({}, { 0: 1 }, 'list'))],
  [
    6,
    fault('wrong count', named(/\.(months|weekdays|albedo)$|(people|appliances)\.\w+$/), (v, r) =>
      r.pick<Json>([[], Array.isArray(v) && v.length > 7 ? v.slice(1) : []]),
    ),
  ],
  [4, notAnObject],
  [8, misfit],
  [8, noJson],
  [3, head('format', ['shadewright', undefined, 1])],
  [5, head('version', [2, 99, '1', 0.5, -1, null, undefined])],
];

/**
 * Two hundred project files with one fault each, always the same ones.
 */
export function brokenProjects(): BrokenProject[] {
  const random = seeded(20260621);
  const sources = EXAMPLES.map((example) => ({
    example,
    root: JSON.parse(exampleText(example)) as Json,
  }));
  const seen = new Set<string>();
  const files: BrokenProject[] = [];
  for (const [count, make] of FAULTS) {
    for (let made = 0, tries = 0; made < count && tries < 400; tries++) {
      const file = make(random.pick(sources), random);
      if (!file || seen.has(file.text)) continue;
      seen.add(file.text);
      files.push(file);
      made++;
    }
  }
  return files;
}
