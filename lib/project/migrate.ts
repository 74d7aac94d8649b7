import { verbatim, type Problem } from '../problem/index.ts';
import { FORMAT, VERSION } from './format.ts';
import { say, told } from './say.ts';
import { isRecord } from './walk.ts';

type Json = Record<string, unknown>;

/** One step for each version: turns a file of version n into one of version n + 1. */
const steps: Record<number, (file: Json) => Json> = { 0: fromDraft };

/** A file brought to the present version, or why that cannot be done. */
export interface Migration {
  /** The data in the present layout; absent where there are problems. */
  data?: Json;
  /** Version the file was written in. */
  from?: number;
  problems: Problem[];
}

/** Brings the data of a project file from its own version to the present one. */
export function migrate(json: unknown): Migration {
  if (!isRecord(json)) {
    return {
      problems: [
        told(
          'project',
          {
            message: say('file.noObject'),
            allowed: say('file.object', { format: FORMAT }),
            fix: say('file.open'),
          },
          json,
        ),
      ],
    };
  }
  const problems = [...formatProblems(json), ...versionProblems(json)];
  if (problems.length) return { problems };
  const from = json.version as number;
  let data = json;
  for (let version = from; version < VERSION; version++) data = steps[version](data);
  return { data, from, problems };
}

function formatProblems(json: Json): Problem[] {
  if (json.format === FORMAT) return [];
  return [
    told(
      'format',
      {
        message: say(json.format === undefined ? 'missing' : 'file.otherFormat'),
        allowed: verbatim(`"${FORMAT}"`),
        fix: say('file.open'),
      },
      json.format,
    ),
  ];
}

function versionProblems(json: Json): Problem[] {
  const { version } = json;
  if (Number.isInteger(version) && (version as number) >= 0 && (version as number) <= VERSION) {
    return [];
  }
  const future = typeof version === 'number' && version > VERSION;
  return [
    told(
      'version',
      {
        message: say(future ? 'version.later' : version === undefined ? 'missing' : 'version.none'),
        allowed: say('version.allowed', { version: VERSION }),
        fix: future ? say('version.newer') : say('version.set', { version: VERSION }),
      },
      version,
    ),
  ];
}

/**
 * Version 0, the draft layout: `facades` for `walls`, a title, one `revealDepth` for the set-back and
 * all four reveal faces, one `frameWidth`, and no groups.
 */
function fromDraft(file: Json): Json {
  const { title, facades, ...rest } = file;
  return {
    ...rest,
    version: 1,
    ...(title === undefined ? {} : { name: title }),
    ...(facades === undefined ? {} : { walls: facades }),
    ...('openings' in file ? { openings: eachRecord(file.openings, openingFromDraft) } : {}),
    groups: file.groups ?? [],
  };
}

function openingFromDraft(opening: Json): Json {
  const { facade, revealDepth, frame, ...rest } = opening;
  return {
    ...rest,
    ...(facade === undefined ? {} : { wall: facade }),
    ...(revealDepth === undefined ? {} : { setBack: revealDepth }),
    ...(frame === undefined ? {} : { frame: isRecord(frame) ? frameFromDraft(frame) : frame }),
  };
}

function frameFromDraft(frame: Json): Json {
  const { width, ...rest } = frame;
  if (width === undefined) return frame;
  return { widths: { head: width, sill: width, left: width, right: width }, ...rest };
}

/** Changes the objects of a list and leaves anything else for the checks to report. */
function eachRecord(list: unknown, change: (item: Json) => Json): unknown {
  if (!Array.isArray(list)) return list;
  return list.map((item) => (isRecord(item) ? change(item) : item));
}
