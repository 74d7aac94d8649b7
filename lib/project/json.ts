import type { Problem } from '../problem/index.ts';
import { say, told } from './say.ts';

/** Reads JSON text; a fault is told with its line and column where the engine gives them. */
export function readJson(text: string): { data?: unknown; problems: Problem[] } {
  try {
    return { data: JSON.parse(text.replace(/^\uFEFF/, '')), problems: [] };
  } catch (error) {
    const message = error instanceof Error ? error.message : '';
    const place = jsonPlace(text, message);
    return {
      problems: [
        told(
          place ? say('file.place', { line: place.line, column: place.column }) : say('file.whole'),
          { message: say('file.noJson'), allowed: say('file.json'), fix: say('file.mend') },
          place ? text.slice(place.at, place.at + 40) : text.slice(0, 40),
        ),
      ],
    };
  }
}

function jsonPlace(text: string, message: string) {
  const at = stop(text, message);
  if (at === undefined) return undefined;
  const before = text.slice(0, at).split('\n');
  return { at, line: before.length, column: before[before.length - 1].length + 1 };
}

/** Where the reader stopped, as far as its message tells; engines word it differently. */
function stop(text: string, message: string): number | undefined {
  const position = /position (\d+)/.exec(message);
  if (position) return Number(position[1]);
  const place = /line (\d+) column (\d+)/.exec(message);
  if (place) {
    const above = text.split('\n').slice(0, Number(place[1]) - 1);
    return above.reduce((sum, line) => sum + line.length + 1, Number(place[2]) - 1);
  }
  if (/end of (JSON|data|input)/i.test(message)) return text.length;
  // Some quote the text around the fault: ten characters before it, ten after.
  const around = /\.\.\."([\s\S]+)"\.\.\. is not valid JSON$/.exec(message)?.[1];
  const start = around === undefined ? -1 : text.indexOf(around);
  return start < 0 || text.indexOf(around!, start + 1) >= 0 ? undefined : start + 10;
}
