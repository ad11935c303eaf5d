/** The texts about straightedge readings, grids, rules, ramps and bags that cannot be read, and how doubtful ones were. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './asks.ts';
import { type Got, problem } from './got.ts';

export function notReadings(got: Got): Problem {
  return problem(
    got,
    'A reading is a gap over a length, such as “3/16 in over 10 ft”, “high” before it for a hump, several with ; between. Or a grid: “grid 2 ft: 0 1/8 1/4; 0 1/4 3/8”.',
  );
}

export function gapTooWide(got: Got): Problem {
  return problem(got, 'The gap comes first and the straightedge’s length behind “over”.');
}

export function gapInFeet(typed: string, unit: string): string {
  return `gap of ${typed.trim()} read as ${unit}`;
}

export function readingLow(typed: string): string {
  return `${typed} read as a low spot; type “high” before it for a hump`;
}

export function gridSpacing(got: Got): Problem {
  return problem(got, 'A grid begins with how far its points are apart and a colon, then its rows with ; between.');
}

export function gridFigure(got: Got, token: string): Problem {
  return problem(got, `“${quoted(token)}” in the grid is no depth: figures with spaces or commas between.`);
}

export function gridDoubtful(got: Got, token: string, fix: string): Problem {
  return problem(
    got,
    `Is “${token}” one figure or two? Type ${token.replace(' ', '-')} for one, or commas between all.`,
    fix,
  );
}

export function gridTooDeep(got: Got, token: string): Problem {
  return problem(got, `A depth of ${token} is more than levelling is for: at most 12 in (300 mm).`);
}

export function gridCount(got: Got, most: number): Problem {
  return problem(got, `A grid has from 2 to ${most} rows of from 2 to ${most} figures.`);
}

export function gridUneven(got: Got, first: number, other: number): Problem {
  return problem(got, `Every row has as many figures: one has ${first}, another ${other}.`);
}

export function gridRead(rows: number, columns: number, unit: string): string {
  return `grid read as ${rows} rows of ${columns}, in ${unit} below the line; a minus is above it`;
}

export function notARule(got: Got): Problem {
  return problem(got, 'A rule is floating, nail-down, or a gap in a length from the maker, such as “1/8 in in 6 ft”.');
}

export function notARamp(got: Got): Problem {
  return problem(got, 'A ramp is its two sides, a comma and its height at the high end.');
}

export function notAYield(got: Got): Problem {
  return problem(
    got,
    'A bag’s figure is what it fills and weighs, such as “0.45 cu ft per 50 lb”, “13 L per 25 kg”, or “1.7 kg/m²/mm, 25 kg”.',
  );
}
