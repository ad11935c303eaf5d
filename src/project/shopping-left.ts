/** A list of needs beside what is bought: what is left to buy, and what may go back. */

import { roundUp } from '../units/length.ts';
import type { Line } from './needs-merged.ts';
import { type Bought, boughtOf, lotsOf, type Shopping } from './shopping.ts';

/** One item. Packages are whole; amounts exact, in the unit of the need. */
export interface Tally extends Line {
  readonly bought: number;
  /** Left to buy: packages where it is sold in packages. */
  readonly left: number;
  /** Whole packages bought beyond what is needed. */
  readonly over: number;
  /** Of those, what is not told as opened. */
  readonly back: number;
  readonly lots: readonly string[];
}

/** What floating sums may differ by. */
const NOISE = 1e-9;

/** Each line with what is bought of it, then what is bought and not needed any more. */
export function tally(lines: readonly Line[], shopping: Shopping): readonly Tally[] {
  const needed = lines.map((line) => tallyOf(line, shopping));
  const known = new Set(lines.map(({ item }) => item));
  const orphans = [...new Map(shopping.bought.map((one) => [one.item, one])).values()].filter(
    ({ item }) => !known.has(item),
  );
  return [...needed, ...orphans.map((one) => tallyOf(emptyLine(one), shopping))];
}

function tallyOf(line: Line, shopping: Shopping): Tally {
  const size = line.package?.size;
  const bought = boughtOf(shopping, line.item);
  const missing = Math.max(0, line.amount - bought);
  const left = size === undefined ? (missing > NOISE * line.amount ? missing : 0) : roundUp(missing / size);
  const packages = shopping.bought.reduce(
    (sum, { item, packages: told }) => (item === line.item ? sum + (told?.count ?? 0) : sum),
    0,
  );
  const needed = size === undefined ? 0 : roundUp(line.amount / size);
  const whole = size === undefined ? 0 : Math.floor(bought / size + NOISE);
  const over = Math.max(0, Math.min(packages, whole - needed));
  const opened = shopping.opened[line.item] ?? 0;
  return {
    ...line,
    bought,
    left,
    over,
    back: Math.max(0, Math.min(over, packages - opened)),
    lots: lotsOf(shopping, line.item),
  };
}

/** An item that was bought and that nothing needs any more. */
function emptyLine({ item, label, stage, unit, packages }: Bought): Line {
  return {
    item,
    label,
    stage,
    unit,
    amount: 0,
    ...(packages && { package: { size: packages.size, label: packages.label, labels: packages.labels }, count: 0 }),
    rooms: [],
    notes: [],
  };
}
