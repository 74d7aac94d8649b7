import { withColumn, withRows, withHeading, swapColumns, rowOf } from './brokenParts.ts';
import type { BrokenText } from './brokenParts.ts';
import { lines, tmy3Heading, tmy3Rows } from './synthetic.ts';

export function cellsWrong(): BrokenText[] {
  const commas = tmy3Rows().map((row) => row.replaceAll('.', ','));
  return [
    {
      name: 'a word among the numbers',
      text: withColumn('ghi', (_, i) => (i === 900 ? 'cloudy' : undefined)),
      expect: /line 903, column "GHI.*"cloudy".*Correct it/,
    },
    {
      name: 'many words among the temperatures',
      text: withColumn('dryBulb', (v, i) => (i % 10 === 0 ? `${v} C` : undefined)),
      expect: /line 3, column "Dry-bulb.*so are 875 more/,
    },
    {
      name: 'decimal commas between commas',
      text: lines(tmy3Heading, commas),
      expect: /line 3: has too many columns.*semicolon/,
    },
    {
      name: 'bars in the rows and commas in the heading',
      text: lines(
        tmy3Heading,
        tmy3Rows().map((r) => r.replaceAll(',', '|')),
      ),
      expect: /line 3: has too few columns.*same delimiter/,
    },
    {
      name: 'semicolons from July on',
      text: withRows((rows) => rows.map((r, i) => (i < rowOf(7, 1) ? r : r.replaceAll(',', ';')))),
      expect: /line 4347: has too few columns.*same delimiter/,
    },
    {
      name: 'quotation mark not closed',
      text: withColumn('time', (v, i) => (i === 50 ? `"${v}` : undefined)),
      expect: /line 53: .*quotation mark.*not closed/,
    },
    {
      name: 'irradiance in kWh/m2',
      text: withColumn('ghi', (v) => String(Number(v) / 1000)),
      expect: /column "GHI.*too weak.*looks like kWh\/m2/,
    },
    {
      name: 'irradiance in kJ/m2',
      text: withColumn('ghi', (v) => String(Number(v) * 3.6)),
      expect: /column "GHI.*looks like kJ\/m2/,
    },
    {
      name: 'temperature in Fahrenheit',
      text: withColumn('dryBulb', (v) => String(Number(v) * 1.8 + 32)),
      expect: /column "Dry-bulb.*Fahrenheit/,
    },
    {
      name: 'temperature in kelvin',
      text: withColumn('dryBulb', (v) => String(Number(v) + 273.15)),
      expect: /column "Dry-bulb.*kelvin/,
    },
    {
      name: 'no sun at all',
      text: withColumn('ghi', () => '0'),
      expect: /column "GHI.*zero all year/,
    },
    {
      name: 'one temperature all year',
      text: withColumn('dryBulb', () => '20'),
      expect: /column "Dry-bulb.*same all year/,
    },
    {
      name: 'sun at night',
      text: withColumn('ghi', (v) => (v === '0' ? '150' : v)),
      expect: /sun in the file while it is below the horizon.*right column/,
    },
    {
      name: 'negative irradiance',
      text: withColumn('dhi', (v, i) => (i % 100 === 12 ? '-150' : v)),
      expect: /line 15, column "DHI.*-150 W\/m2.*0 to 900/,
    },
    {
      name: 'one impossible irradiance',
      text: withColumn('ghi', (v, i) => (i === 4500 ? '5000' : v)),
      expect: /line 4503, column "GHI.*5000 W\/m2.*0 to 1500.*blank/,
    },
    {
      name: 'direct and diffuse exchanged',
      text: swapColumns('dni', 'dhi'),
      expect: /do not add up.*swapped/,
    },
    {
      name: 'global and direct exchanged',
      text: swapColumns('ghi', 'dni'),
      expect: /do not add up.*swapped/,
    },
    {
      name: 'temperature and irradiance exchanged',
      text: swapColumns('ghi', 'dryBulb'),
      expect: /column "GHI.*too weak for sunlight.*Choose the column/,
    },
    {
      name: 'wind direction for wind speed',
      text: withColumn('wind', (_, i) => String((i * 7) % 360)),
      expect: /column "Wspd.*wind speed.*another column/,
    },
    {
      name: 'four hours without irradiance',
      text: withColumn('ghi', (v, i) => (i >= 4000 && i < 4004 ? '-9900' : v)),
      expect: /lines 4003 to 4006, column "GHI.*4 hours in a row.*up to 3/,
    },
    {
      name: 'seven hours without temperature',
      text: withColumn('dryBulb', (v, i) => (i >= 100 && i < 107 ? '' : v)),
      expect: /lines 103 to 109, column "Dry-bulb.*7 hours in a row.*up to 6/,
    },
    {
      name: 'column of missing codes',
      text: withColumn('dhi', () => '-9900'),
      expect: /column "DHI.*has no values/,
    },
    {
      name: 'seasons of the other hemisphere',
      text: withHeading(',44,', ',-44,'),
      expect: /below the horizon.*sign of the latitude/,
    },
  ];
}
