/** A grid of depths below a straight line: its spacing, then rows of figures. */

import {
  gridCount,
  gridDoubtful,
  gridFigure,
  gridRead,
  gridSpacing,
  gridTooDeep,
  gridUneven,
} from '../text/prep-problems-text.ts';
import { type Length, TICKS_PER_INCH, TICKS_PER_MM, ticks } from '../units/length.ts';
import { unitIn, unitsOf } from './length.ts';
import { numeralAt, roundedRatio, valued } from './length-number.ts';
import { UNIT_NAMES, UNITS } from './length-units.ts';
import { type Found, NOTHING_FOUND, screened } from './place-found.ts';
import { type Read, type Reading, read, type Units, unread } from './reading.ts';
import { readSide, SIDE, TIMES } from './rooms/room-side.ts';

/** Depths in ticks, row by row, `dx` apart in a row and `dy` from row to row; below zero is above the line. */
export interface ToldGrid {
  readonly dx: Length;
  readonly dy: Length;
  readonly rows: readonly (readonly number[])[];
}

/** A grid, the system its depths are in, and hazards told in its place. */
interface GridRead {
  readonly grid: ToldGrid;
  readonly units: Units;
  readonly found: Found;
}

const HEAD = new RegExp(
  `^grid(?: of| every| at)? ?(?<a>${SIDE})(?:${TIMES}(?<b>${SIDE}))?(?: apart| spacing)? ?[:,;] ?`,
);
const MOST = 60;
const DEEPEST = TICKS_PER_MM * 300;

/** `grid 2 ft: 0 1/8 1/4; 0 1/4 3/8`; a comma between figures allows `1 1/4`. Takes plain text. Never throws. */
export function readGrid(plain: string, reading: Reading): Read<GridRead> {
  const metric = reading.habits.units === 'metric';
  const got = { option: reading.option, got: plain };
  const head = HEAD.exec(plain);
  const a = head?.groups?.a;
  if (!head || a === undefined) return hazardOr(plain.replace(/^grid/, ''), reading, gridSpacing(got));
  const b = head.groups?.b ?? a;
  const bare = metric ? 'mm' : 'ft';
  const [dx, dy] = [readSide(a, unitIn(b) ?? bare, reading), readSide(b, unitIn(a) ?? bare, reading)];
  if (!dx.ok || !dy.ok) return unread(gridSpacing(got));
  // Depths are in the small unit of the system that the spacing is told in.
  const spacing = unitIn(a) ?? unitIn(b);
  const inMetric = spacing ? unitsOf(spacing) === 'metric' : metric;
  const rows: number[][] = [];
  for (const line of plain.slice(head[0].length).split(/[;|\n]/)) {
    if (line.trim() === '') continue;
    const tokens = tokensOf(line, reading.habits.decimal);
    const row: number[] = [];
    for (const [i, token] of tokens.entries()) {
      if (!line.includes(',') && /^-?[1-9]\d*$/.test(token) && /^\d+\/\d+$/.test(tokens[i + 1] ?? '')) {
        return unread(
          gridDoubtful(
            got,
            `${token} ${tokens[i + 1]}`,
            plain.replaceAll(`${token} ${tokens[i + 1]}`, `${token}-${tokens[i + 1]}`),
          ),
        );
      }
      const depth = depthOf(token, inMetric, reading);
      if (depth === undefined) return hazardOr(line, reading, gridFigure(got, token));
      if (Math.abs(depth) > DEEPEST) return unread(gridTooDeep(got, token));
      row.push(depth);
    }
    rows.push(row);
  }
  const [first] = rows;
  if (!first || rows.length < 2 || first.length < 2 || rows.length > MOST || first.length > MOST)
    return unread(gridCount(got, MOST));
  const uneven = rows.find((row) => row.length !== first.length);
  if (uneven) return unread(gridUneven(got, first.length, uneven.length));
  reading.note(gridRead(rows.length, first.length, inMetric ? 'mm' : 'inches'));
  return read({
    grid: { dx: dx.length, dy: dy.length, rows },
    units: inMetric ? 'metric' : 'imperial',
    found: NOTHING_FOUND,
  });
}

/** Figures with spaces between; or with commas, where those are no decimal marks. */
function tokensOf(line: string, decimal: '.' | ','): readonly string[] {
  const spaced = /,\s/.test(line);
  const commas = spaced || (line.includes(',') && decimal === '.');
  const tokens = line.split(spaced ? /,\s+/ : commas ? /,/ : /\s+/);
  return tokens.map((token) => token.trim()).filter((token) => token !== '');
}

/** A depth in ticks; a figure alone is in inches or millimetres. Undefined for what is none. */
function depthOf(token: string, metric: boolean, reading: Reading): number | undefined {
  const match =
    /^(?<minus>[-+] ?)?(?<figure>\d[\d.,]*(?:[ -]\d+\/\d+|\/\d+)?|\.\d+) ?(?<unit>"|in|inch|inches|mm|cm)?$/.exec(
      token,
    );
  const figure = match?.groups?.figure;
  if (figure === undefined) return undefined;
  const numeral = numeralAt(figure, 0, true);
  if (!numeral || numeral.end !== figure.length) return undefined;
  const typed = match?.groups?.unit;
  const unit = UNIT_NAMES.find((name) => name === typed) ?? (typed !== undefined ? 'in' : metric ? 'mm' : 'in');
  const value = valued(numeral, unit, reading.habits.decimal);
  if (!value || 'whole' in value) return undefined;
  const size = unit === 'in' ? BigInt(TICKS_PER_INCH) : UNITS[unit].ticks;
  // A figure beyond any floor counts as too deep, however long it is.
  const depth = Math.min(Number(roundedRatio({ top: value.top * size, bottom: value.bottom })), 2 * DEEPEST);
  return match?.groups?.minus?.startsWith('-') && depth > 0 ? -depth : depth;
}

/** A hazard in the words instead, if there is one. */
function hazardOr(words: string, reading: Reading, problem: Parameters<typeof unread>[0]): Read<GridRead> {
  const found = screened(words.replace(/[\d./"'-]+/g, ' '), reading, problem.fix);
  if (!found.ok || found.value.hazards.length === 0) return unread(problem);
  const one = ticks(TICKS_PER_INCH);
  return read({ grid: { dx: one, dy: one, rows: [[0]] }, units: reading.habits.units, found: found.value });
}
