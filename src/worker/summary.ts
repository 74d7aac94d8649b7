import type { StudyResult } from '../../lib/study/index.ts';
import type { OpeningSummary, StudySummary } from './api.ts';

/** A result without its hourly series: small enough to send on every move of the hand. */
export function summaryOf(result: StudyResult): StudySummary {
  const { calendar: _calendar, sunny: _sunny, openings, rooms, ...rest } = result;
  return {
    ...rest,
    rooms: rooms.map(({ runs: _runs, ...room }) => room),
    openings: openings.map(({ hourly: _hourly, blind, ...opening }): OpeningSummary => {
      if (!blind) return opening;
      const { state: _state, ...moves } = blind;
      return { ...opening, blind: moves };
    }),
  };
}
