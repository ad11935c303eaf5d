/** An outsider's check of the rest of a floor begun: every row covered, every piece cut from what is there, and no “enough” that is not. */

import { z } from 'zod';
import type { FloorData } from './floor-checker-data.ts';

const whole = z.int();
const nonNegative = z.int().nonnegative();
const positive = z.int().positive();
const source = z.union([z.strictObject({ offcut: nonNegative }), z.strictObject({ plank: positive })]);

const resume = z.object({
  kind: z.literal('resume'),
  ticksPerInch: z.literal(8128),
  plank: z.object({ width: positive, length: positive, perCarton: positive, lock: z.enum(['click', 'none']) }),
  rules: z.object({ kerf: nonNegative, stagger: nonNegative, minEnd: nonNegative }),
  laid: z.array(z.object({ region: z.string(), rows: nonNegative })),
  before: z.array(
    z.object({
      region: z.string(),
      row: nonNegative,
      runs: z.array(z.object({ u: whole, lengths: z.array(positive) })),
    }),
  ),
  stock: z.object({
    planks: nonNegative,
    offcuts: z.array(z.object({ length: positive, end: z.enum(['left', 'right', 'any']) })),
  }),
  need: nonNegative,
  bound: nonNegative,
  suffices: z.boolean(),
  short: nonNegative,
  cartons: nonNegative,
  rows: z.array(
    z.object({
      region: z.string(),
      row: nonNegative,
      pieces: z.array(
        z.object({ u: whole, length: positive, part: z.enum(['whole', 'start', 'end', 'any']), from: source }),
      ),
    }),
  ),
  broken: z.array(z.object({ rule: z.enum(['stagger', 'minEnd']), region: z.string(), row: nonNegative, at: whole })),
});

export type ResumeData = z.infer<typeof resume>;
type Piece = ResumeData['rows'][number]['pieces'][number];
type Run = readonly { readonly u: number; readonly length: number }[];

/** Every fault of a rest, given the floor that was planned: its rows tell where floor must lie. */
export function checkResume(data: unknown, floor: FloorData): string[] {
  const read = resume.safeParse(data);
  if (!read.success) return read.error.issues.map((issue) => `${issue.path.join('.')}: ${issue.message}`);
  const rest = read.data;
  return [...faultsOfCover(rest, floor), ...faultsOfSources(rest), ...faultsOfCounts(rest), ...faultsOfRules(rest)];
}

/** Rows not laid yet lie wall to wall, each once; pieces follow on one another, and locks meet. */
function faultsOfCover(rest: ResumeData, floor: FloorData): string[] {
  return floor.regions.flatMap((region) => {
    const laid = rest.laid.find((one) => one.region === region.name)?.rows ?? 0;
    return region.rows.flatMap((row, index) => {
      const given = rest.rows.filter((one) => one.region === region.name && one.row === index);
      const place = `${region.name}, row ${index}`;
      if (index < laid) return given.length > 0 ? [`${place}: lies already`] : [];
      if (given.length !== 1) return [`${place}: told ${given.length} times`];
      const [own] = given;
      const pieces = own?.pieces ?? [];
      const [wanted, got] = [extents(row.pieces), extents(pieces)];
      const faults =
        JSON.stringify(wanted) === JSON.stringify(got)
          ? []
          : [`${place}: covers ${JSON.stringify(got)} of ${JSON.stringify(wanted)}`];
      return [
        ...faults,
        ...runsOf(pieces).flatMap((run) => faultsOfRun(run, rest.plank).map((text) => `${place}: ${text}`)),
      ];
    });
  });
}

function faultsOfRun(run: readonly Piece[], { length, lock }: ResumeData['plank']): string[] {
  return run.flatMap((piece, i) => {
    const [first, last] = [i === 0, i === run.length - 1];
    if (piece.length > length) return ['a piece is longer than a plank'];
    if ((piece.part === 'whole') !== (piece.length === length))
      return ['a piece is called whole and is not, or the other way round'];
    if (lock === 'none' || piece.part === 'whole') return [];
    if (piece.part === 'start' && (!first || last)) return ['a start piece does not begin a run'];
    if (piece.part === 'end' && (!last || first)) return ['an end piece does not finish a run'];
    return piece.part === 'any' && run.length > 1 ? ['a piece of any part has a joint'] : [];
  });
}

/** What one plank or offcut gives fits into it, a kerf between; a lock is used once and only where it is. */
function faultsOfSources(rest: ResumeData): string[] {
  const { plank, rules, stock } = rest;
  const cuts = new Map<string, Piece[]>();
  for (const piece of rest.rows.flatMap(({ pieces }) => pieces)) {
    const name = JSON.stringify(piece.from);
    cuts.set(name, [...(cuts.get(name) ?? []), piece]);
  }
  return [...cuts].flatMap(([name, pieces]) => {
    const [first] = pieces;
    const from = first?.from;
    const offcut = from && 'offcut' in from ? stock.offcuts[from.offcut] : undefined;
    if (from && 'offcut' in from && !offcut) return [`${name}: there is no such offcut`];
    const faults: string[] = [];
    const room = offcut?.length ?? plank.length;
    const taken = pieces.reduce((sum, { length }) => sum + length, 0) + rules.kerf * (pieces.length - 1);
    if (taken > room) faults.push(`${name}: ${taken} ticks cut from ${room}`);
    const count = (part: Piece['part']): number => pieces.filter((piece) => piece.part === part).length;
    if (offcut && count('whole') > 0) faults.push(`${name}: a whole plank from an offcut`);
    if (plank.lock === 'none') return faults;
    if (count('start') > 1 || count('end') > 1) faults.push(`${name}: one end used twice`);
    if (offcut && count('start') > 0 && offcut.end !== 'right')
      faults.push(`${name}: a start piece from a ${offcut.end} end`);
    if (offcut && count('end') > 0 && offcut.end !== 'left')
      faults.push(`${name}: an end piece from a ${offcut.end} end`);
    return faults;
  });
}

function faultsOfCounts({ rows, stock, plank, ...given }: ResumeData): string[] {
  const planks = new Set(
    rows.flatMap(({ pieces }) => pieces.flatMap(({ from }) => ('plank' in from ? [from.plank] : []))),
  );
  const short = Math.max(0, planks.size - stock.planks);
  const faults: string[] = [];
  if (given.need !== planks.size) faults.push(`${given.need} planks told, ${planks.size} in the rows`);
  if (given.short !== short) faults.push(`${given.short} short told, ${short} follow`);
  if (given.suffices !== (short === 0)) faults.push(`told that it ${given.suffices ? 'suffices' : 'does not suffice'}`);
  if (given.cartons !== Math.ceil(short / plank.perCarton)) faults.push(`${given.cartons} cartons told`);
  if (given.bound > given.need) faults.push(`no fewer than ${given.bound} told, ${given.need} used`);
  return faults;
}

/** Breaches beside the row that lies and between rows, told and true. */
function faultsOfRules({ rows, before, rules, broken }: ResumeData): string[] {
  const found = rows.flatMap(({ region, row, pieces }) => {
    const below =
      rows.find((one) => one.region === region && one.row === row - 1)?.pieces ??
      before
        .filter((one) => one.region === region && one.row === row - 1)
        .flatMap(({ runs }) => runs.flatMap(piecesAt));
    const own = runsOf(pieces);
    const short = own.flatMap((run) =>
      run.length < 2
        ? []
        : run
            .filter(({ length, part }) => part !== 'whole' && length < rules.minEnd)
            .map(({ u }) => `minEnd ${region} ${row} ${u}`),
    );
    const near = own.flatMap((run) => {
      const [low, high] = [run[0]?.u ?? 0, end(run)];
      const others = runsOf(below)
        .filter((other) => (other[0]?.u ?? 0) < high && end(other) > low)
        .flatMap(joints);
      return joints(run)
        .filter((u) => others.some((other) => Math.abs(u - other) < rules.stagger))
        .map((u) => `stagger ${region} ${row} ${u}`);
    });
    return [...short, ...near];
  });
  const given = broken.map(({ rule, region, row, at }) => `${rule} ${region} ${row} ${at}`);
  return [
    ...found.filter((one) => !given.includes(one)).map((one) => `not told: ${one}`),
    ...given.filter((one) => !found.includes(one)).map((one) => `told and not so: ${one}`),
  ];
}

function piecesAt({ u, lengths }: { u: number; lengths: readonly number[] }): { u: number; length: number }[] {
  let at = u;
  return lengths.map((length) => {
    at += length;
    return { u: at - length, length };
  });
}

function runsOf<T extends { readonly u: number; readonly length: number }>(pieces: readonly T[]): T[][] {
  const runs: T[][] = [];
  for (const piece of [...pieces].sort((a, b) => a.u - b.u)) {
    const last = runs.at(-1);
    if (last && end(last) === piece.u) last.push(piece);
    else runs.push([piece]);
  }
  return runs;
}

function end(run: Run): number {
  const last = run.at(-1);
  return last ? last.u + last.length : 0;
}

function joints(run: Run): number[] {
  return run.slice(1).map(({ u }) => u);
}

function extents(pieces: Run): number[][] {
  return runsOf(pieces).map((run) => [run[0]?.u ?? 0, end(run)]);
}
