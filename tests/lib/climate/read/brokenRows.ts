import { withRows, rowOf } from './brokenParts.ts';
import type { BrokenText } from './brokenParts.ts';
import {
  calendar,
  lines,
  pvgisHeading,
  pvgisLegend,
  pvgisRows,
  tmy3Text,
  two,
} from './synthetic.ts';

export function rowsWrong(): BrokenText[] {
  const april = rowOf(4, 1);
  const leapRows = (rows: string[]) => {
    const at = rowOf(2, 28);
    return [...rows.slice(0, at + 24), ...rows.slice(at, at + 24), ...rows.slice(at + 24)];
  };
  const withLeapDay = (rows: string[]) => {
    const at = rowOf(3, 1);
    const leapDay = rows.slice(at, at + 24).map((r) => r.replace(/^3\/1\//, '2/29/'));
    return [...rows.slice(0, at), ...leapDay, ...rows.slice(at + 24)];
  };
  const summerTime = (rows: string[]) => {
    const from = rowOf(3, 12);
    const to = rowOf(11, 5);
    const ahead = rows.map((row, i) => {
      if (i < from + 2 || i >= to + 2) return row;
      const next = rows[i + 1].split(',');
      return [...next.slice(0, 2), ...row.split(',').slice(2)].join(',');
    });
    return ahead;
  };
  const finer = (minutes: number) =>
    withRows((rows) =>
      rows.map((row, i) => {
        const clock = (i + 1) * minutes;
        const day = Math.floor((clock - 1) / 1440);
        const c = calendar[day * 24];
        const left = clock - day * 1440;
        const stamp = `${c.month}/${c.day}/2001,${Math.floor(left / 60)}:${two(left % 60)}`;
        return [stamp, ...row.split(',').slice(2)].join(',');
      }),
    );
  return [
    {
      name: 'a day missing',
      text: withRows((rows) => rows.filter((_, i) => i < april || i >= april + 24)),
      expect: /line \d+: 24 hours are missing between line 2162.*Complete/,
    },
    {
      name: 'five rows missing',
      text: withRows((rows) => rows.filter((_, i) => i < 4000 || i >= 4005)),
      expect: /line 4003: 5 hours are missing.*at most 3/,
    },
    {
      name: 'ends in October',
      text: withRows((rows) => rows.slice(0, rowOf(10, 9))),
      expect: /line 6746: the file ends here, 2,016 hours short/,
    },
    {
      name: 'cut inside a line',
      text: tmy3Text().slice(0, 200_000),
      expect: /line \d+: has too few columns.*Complete the row/,
    },
    {
      name: 'an hour twice',
      text: withRows((rows) => [...rows.slice(0, 700), ...rows.slice(699)]),
      expect: /line 703: has the same hour as line 702.*Remove one/,
    },
    {
      name: 'two rows exchanged',
      text: withRows((rows) => [...rows.slice(0, 10), rows[11], rows[10], ...rows.slice(12)]),
      expect: /line 14: is not the hour after line 13.*Sort/,
    },
    {
      name: 'months out of order',
      text: withRows((rows) => [
        ...rows.slice(0, 744),
        ...rows.slice(1416, 2160),
        ...rows.slice(744, 1416),
        ...rows.slice(2160),
      ]),
      expect: /line 747: is not the hour after line 746.*line 1491.*Sort/,
    },
    {
      name: 'rows every 5 minutes',
      text: finer(5),
      expect: /rows are not an hour apart \(is 5 minutes.*Give hourly means/,
    },
    {
      name: 'rows every 3 hours',
      text: withRows((rows) => rows.filter((_, i) => i % 3 === 2)),
      expect: /rows are not an hour apart \(is 3 hours/,
    },
    {
      name: 'two years',
      text: withRows((rows) => [...rows, ...rows]),
      expect: /17,520 rows, more than one year.*Give one year/,
    },
    {
      name: '8,784 rows with 28 February twice',
      text: withRows(leapRows),
      expect: /line 1419: has the same hour as line 1395.*Remove one/,
    },
    {
      name: '29 February in the place of 1 March',
      text: withRows(withLeapDay),
      expect: /24 hours are missing/,
    },
    {
      name: '30 February',
      text: withRows((rows) => rows.map((r) => r.replace(/^2\/28\//, '2/30/'))),
      expect: /line 1395, column "Date.*2\/30\/1992.*month\/day\/year/,
    },
    {
      name: 'day before month',
      text: withRows((rows) => rows.map((r) => r.replace(/^(\d+)\/(\d+)\//, '$2/$1/'))),
      expect: /line 291, column "Date.*"13\/1\/1991".*month\/day\/year/,
    },
    {
      name: 'hour 25',
      text: withRows((rows) => rows.map((r, i) => (i === 23 ? r.replace('24:00', '25:00') : r))),
      expect: /line 26, column "Time.*"25:00".*1:00 to 24:00/,
    },
    {
      name: 'clock with summer time',
      text: withRows(summerTime),
      expect: /same hour as line \d+.*standard time/,
    },
    {
      name: 'garbled stamp in a PVGIS file',
      text: lines(
        pvgisHeading,
        pvgisRows().map((r, i) => (i === 30 ? r.replace(/^\d+:/, '2005-1-') : r)),
      ),
      expect: /line 49, column "time\(UTC\)"/,
    },
    {
      name: 'PVGIS file that ends in May',
      text: lines(pvgisHeading, pvgisRows().slice(0, rowOf(5, 20)), pvgisLegend),
      expect: /the file ends here, 5,424 hours short/,
    },
  ];
}
