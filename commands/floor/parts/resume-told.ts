/** What was told of a floor begun, set against its plan: rows laid by region, planks and offcuts left; Problems where it cannot be. */

import type { Context, Problems } from '../../../src/chat/command.ts';
import type { SoFar, ToldRow } from '../../../src/language/old/so-far.ts';
import type { LaidRegion, Plan } from '../../../src/layout/floor.ts';
import type { Progress, Stock } from '../../../src/layout/resume-floor.ts';
import type { Problem } from '../../../src/reply/reply.ts';
import { noSuchRoomSoFar, noSuchRow, oneFloor } from '../../../src/text/floor-problems-text.ts';
import { RESUME_NOTES } from '../../../src/text/home-text.ts';
import type { LaidFloor } from './laid.ts';

/** Rows laid by region and what is left, with notes on what was taken because it was not told. */
export interface Begun {
  readonly progress: readonly Progress[];
  readonly stock: Stock;
  readonly notes: readonly string[];
}

export function begunFloor({ plan, purchase }: LaidFloor, soFar: SoFar, context: Context): Begun | Problems {
  const notes: string[] = [];
  const typed = context.told.get('so-far') ?? '';
  const found = progressOf(plan, soFar, typed, notes);
  if ('problems' in found) return found;
  const { progress } = found;
  const { perCarton } = plan.plank;
  const planned = purchase.cartons * perCarton - begunPlanks(plan, progress) - soFar.broken;
  const counted = soFar.planks === undefined ? undefined : soFar.planks + soFar.cartons * perCarton;
  const planks = counted ?? Math.max(0, planned);
  if (counted === undefined) notes.push(RESUME_NOTES.leftPlanned(planks));
  else if (soFar.broken > 0) notes.push(RESUME_NOTES.brokenTold);
  if (soFar.offcuts === undefined) notes.push(RESUME_NOTES.noOffcuts);
  return { progress, stock: { planks, offcuts: soFar.offcuts ?? [] }, notes };
}

function progressOf(
  plan: Plan,
  { rows, done }: SoFar,
  typed: string,
  notes: string[],
): { readonly progress: readonly Progress[] } | Problems {
  const problems: Problem[] = [];
  const names = plan.regions.flatMap(({ name, rooms }) => rooms?.map((room) => room.name) ?? [name]);
  const whole = new Map<LaidRegion, Progress>();
  for (const room of done) {
    const region = regionOf(plan, room);
    if (!region) problems.push(noSuchRoomSoFar(room, names, typed.replace(room, names[0] ?? '')));
    else if (region.rooms && region.rooms.length > 1 && room.toLowerCase() !== region.name.toLowerCase())
      problems.push(
        oneFloor(
          room,
          region.name,
          typed.replace(
            new RegExp(
              `${room.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')} (?:is |are |all )*(?:done|finished|complete|laid)`,
              'i',
            ),
            `${room} row 1 is laid`,
          ),
        ),
      );
    else whole.set(region, { region: region.name, rows: region.rows.length, last: [] });
  }
  const open = plan.regions.find((region) => !whole.has(region));
  const own = new Map<LaidRegion, ToldRow[]>();
  for (const told of rows) {
    const region = told.room === undefined ? open : regionOf(plan, told.room);
    if (!region) {
      problems.push(noSuchRoomSoFar(told.room ?? '', names, typed.replace(told.room ?? ' ', names[0] ?? '')));
      continue;
    }
    if (told.room === undefined && plan.regions.length > 1) notes.push(RESUME_NOTES.taken(region.name));
    if (told.row > region.rows.length)
      problems.push(
        noSuchRow(
          `row ${told.row}`,
          region.name,
          region.rows.length,
          typed.replace(String(told.row), String(Math.max(1, region.rows.length - 1))),
        ),
      );
    own.set(region, [...(own.get(region) ?? []), told]);
  }
  for (const [region, told] of own) {
    const last = Math.max(...told.map(({ row }) => row));
    const lies = told.filter(({ row, start, end }) => row === last && (start ?? end) !== undefined);
    if (lies.length === 0) notes.push(RESUME_NOTES.asPlanned(region.name, last));
    if (lies.some(({ end }) => end !== undefined)) notes.push(RESUME_NOTES.endMeant(region.name, last));
    whole.set(region, {
      region: region.name,
      rows: last,
      last: lies.map(({ run = 0, start, end }) => ({
        run,
        ...(start === undefined ? {} : { start }),
        ...(end === undefined ? {} : { end }),
      })),
    });
  }
  const [first, ...more] = problems;
  return first ? { problems: [first, ...more] } : { progress: [...whole.values()] };
}

/** The region of a name, or the one that a room of that name lies in. */
function regionOf({ regions }: Plan, name: string): LaidRegion | undefined {
  const wanted = name.toLowerCase();
  return regions.find(
    (region) =>
      region.name.toLowerCase() === wanted || region.rooms?.some((room) => room.name.toLowerCase() === wanted),
  );
}

/** Planks begun in the rows that lie, as the plan has them. */
function begunPlanks(plan: Plan, progress: readonly Progress[]): number {
  const begun = new Set<number>();
  for (const { name, rows } of plan.regions) {
    const laid = progress.find(({ region }) => region === name)?.rows ?? 0;
    for (const { pieces } of rows.slice(0, laid)) for (const { plank } of pieces) begun.add(plank);
  }
  return begun.size;
}
