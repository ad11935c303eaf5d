/** `floor resume`: the rest of a half-laid floor, from the planks and offcuts that are really there. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome, type Problems } from '../../src/chat/command.ts';
import { cautionsFor } from '../../src/figures/safety-figures.ts';
import { type Saying, sayCut } from '../../src/input/format.ts';
import { text } from '../../src/input/options.ts';
import { type ParsedRow, type RowsLaid, readRowsLaid } from '../../src/input/parse-rows-laid.ts';
import type { LaidRegion, Plan } from '../../src/layout/floor.ts';
import type { Progress, RestPiece, RestPlan, RestStock } from '../../src/layout/resume-floor.ts';
import { type Block, type Fact, type Problem, type Reply, reply } from '../../src/reply/reply.ts';
import { worded } from '../../src/text/caution-text.ts';
import {
  allLaid,
  noSuchRoomSoFar,
  noSuchRow,
  notResumed,
  oneFloor,
  rowMisfits,
  slantedNotResumed,
} from '../../src/text/floor-problems-text.ts';
import { FLOOR_BRIEF, GUIDE } from '../../src/text/floor-text.ts';
import { RESUME, RESUME_NOTES } from '../../src/text/home-text.ts';
import { isRectilinear } from '../../src/units/geometry.ts';
import { roundUpRatio, TICKS_PER_INCH, ticks } from '../../src/units/length.ts';
import { restAway } from '../../src/workers/solve.ts';
import { brokenBlocks, floorOptions, layingOptions, type PlanksAsk } from './floor-options.ts';
import { floorFormat, type LaidFloor, layAsk, settledLayout } from './lay.ts';

/** One table per region, in laying order. */
function restTables(plan: Plan, rest: RestPlan, saying: Saying): readonly Block[] {
  const say = (length: number): string => sayCut(ticks(length), saying);
  const uses = new Map<number, number>();
  for (const { pieces } of rest.rows) {
    for (const { from } of pieces) if ('plank' in from) uses.set(from.plank, (uses.get(from.plank) ?? 0) + 1);
  }
  const begun = new Set<number>();
  const source = ({ length, from }: RestPiece): string => {
    if ('offcut' in from) return RESUME.fromOffcut(say(length), from.offcut + 1);
    if (begun.has(from.plank)) return GUIDE.rest(say(length), from.plank);
    begun.add(from.plank);
    const keeps = (uses.get(from.plank) ?? 0) > 1;
    return GUIDE.fresh(say(length), from.plank, keeps ? say(plan.plank.length - length - plan.rules.kerf) : undefined);
  };
  return plan.regions.flatMap(({ name, rows }): Block[] => {
    const own = rest.rows.filter(({ region }) => region === name);
    if (own.length === 0) return [];
    const cells = own.flatMap(({ row, pieces }) => {
      const height = rows[row]?.height ?? plan.plank.width;
      const runs = runsIn(pieces);
      return runs.map((run, i) => {
        const label = `${row + 1}${runs.length > 1 ? String.fromCodePoint(97 + (i % 26)) : ''}`;
        const ripped = height < plan.plank.width ? [GUIDE.ripped(say(height))] : [];
        return [[label, ...ripped].join(', '), ...runCells(run, say, source)];
      });
    });
    return [
      { kind: 'table', section: 'rows' as const, title: RESUME.guide(name), columns: GUIDE.columns, rows: cells },
    ];
  });
}

function runCells(
  run: readonly RestPiece[],
  say: (length: number) => string,
  source: (piece: RestPiece) => string,
): readonly string[] {
  const [first, last] = [run[0], run.at(-1)];
  if (!first || !last) return ['', '', '', ''];
  const whole = run.filter(({ part }) => part === 'whole').length;
  const cuts = run.filter(({ part }) => part !== 'whole').map(source);
  const side = (piece: RestPiece): string => (piece.part === 'whole' ? GUIDE.whole : say(piece.length));
  if (run.length === 1) {
    const only = first.part === 'whole' ? GUIDE.whole : GUIDE.wallToWall(say(first.length));
    return [only, first.part === 'whole' ? '1' : '', '', cuts.join('; ')];
  }
  return [side(first), String(whole), side(last), cuts.join('; ')];
}

/** A run ends where the next piece doesn't touch the last one. */
function runsIn(pieces: readonly RestPiece[]): readonly (readonly RestPiece[])[] {
  const runs: RestPiece[][] = [];
  let end: number | undefined;
  for (const piece of pieces) {
    if (piece.u === end) runs.at(-1)?.push(piece);
    else runs.push([piece]);
    end = piece.u + piece.length;
  }
  return runs;
}

/**
 * Rows laid by region and what's left, with notes on what was assumed because it was missing. Problems if it contradicts the
 * plan.
 */
interface Begun {
  readonly progress: readonly Progress[];
  readonly stock: RestStock;
  readonly notes: readonly string[];
}

function begunFloor({ plan, purchase }: LaidFloor, soFar: RowsLaid, context: Context): Begun | Problems {
  const notes: string[] = [];
  const typed = context.optionTexts.get('so-far') ?? '';
  const found = progressOf(plan, soFar, typed, notes);
  if ('problems' in found) return found;
  const { progress } = found;
  const { perCarton } = plan.plank;
  const planned = purchase.cartons * perCarton - begunPlanks(plan, progress) - soFar.broken;
  const counted = soFar.planks === undefined ? undefined : soFar.planks + soFar.cartons * perCarton;
  const planks = counted ?? Math.max(0, planned);
  if (counted === undefined) notes.push(RESUME_NOTES.leftPlanned(planks));
  else if (soFar.broken > 0) notes.push(RESUME_NOTES.brokenGiven);
  if (soFar.offcuts === undefined) notes.push(RESUME_NOTES.noOffcuts);
  return { progress, stock: { planks, offcuts: soFar.offcuts ?? [] }, notes };
}

function progressOf(
  plan: Plan,
  { rows, done }: RowsLaid,
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
  const own = new Map<LaidRegion, ParsedRow[]>();
  for (const given of rows) {
    const region = given.room === undefined ? open : regionOf(plan, given.room);
    if (!region) {
      problems.push(noSuchRoomSoFar(given.room ?? '', names, typed.replace(given.room ?? ' ', names[0] ?? '')));
      continue;
    }
    if (given.room === undefined && plan.regions.length > 1) notes.push(RESUME_NOTES.taken(region.name));
    if (given.row > region.rows.length)
      problems.push(
        noSuchRow(
          `row ${given.row}`,
          region.name,
          region.rows.length,
          typed.replace(String(given.row), String(Math.max(1, region.rows.length - 1))),
        ),
      );
    own.set(region, [...(own.get(region) ?? []), given]);
  }
  for (const [region, given] of own) {
    const last = Math.max(...given.map(({ row }) => row));
    const lies = given.filter(({ row, start, end }) => row === last && (start ?? end) !== undefined);
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

/** Also finds the region that a room of this name is part of. */
function regionOf({ regions }: Plan, name: string): LaidRegion | undefined {
  const wanted = name.toLowerCase();
  return regions.find(
    (region) =>
      region.name.toLowerCase() === wanted || region.rooms?.some((room) => room.name.toLowerCase() === wanted),
  );
}

/** As the plan has them; the real ones may differ. */
function begunPlanks(plan: Plan, progress: readonly Progress[]): number {
  const begun = new Set<number>();
  for (const { name, rows } of plan.regions) {
    const laid = progress.find(({ region }) => region === name)?.rows ?? 0;
    for (const { pieces } of rows.slice(0, laid)) for (const { plank } of pieces) begun.add(plank);
  }
  return begun.size;
}

interface ResumeAsk extends PlanksAsk {
  readonly 'so-far': RowsLaid;
}

async function* resumed(ask: ResumeAsk, context: Context): AsyncGenerator<Outcome> {
  // What's been laid can only be checked against the finished plan, so checking starts later.
  const first = await layAsk(ask, { ...context, begin: () => undefined });
  if ('problems' in first) {
    yield first;
    return;
  }
  // They laid their rows by the plan the search ended with.
  const laid = await settledLayout(first, ask, context);
  const typed = context.optionTexts.get('so-far') ?? '';
  const [slanted, ...more] = slantProblems(laid.plan, context);
  if (slanted) {
    yield { problems: [slanted, ...more] };
    return;
  }
  const begun = begunFloor(laid, ask['so-far'], context);
  if ('problems' in begun) {
    yield begun;
    return;
  }
  const saying = floorFormat(ask, context);
  const rest = await restAway(laid.plan, begun.progress, begun.stock);
  if ('misfits' in rest) {
    const [first, ...more] = rest.misfits.map(({ length, planned }) =>
      rowMisfits(
        typed,
        sayCut(ticks(length), saying),
        sayCut(ticks(planned), saying),
        mendedRow(typed, sayCut(ticks(planned), saying)),
      ),
    );
    if (first) yield { problems: [first, ...more] };
    return;
  }
  if (rest.rows.length === 0) {
    yield { problems: [allLaid(typed, 'row 1 is laid')] };
    return;
  }
  yield replyOf(laid, begun, rest, ask, context);
}

/** The floor can't be resumed on a slant. Names the option to change: the direction, or the room with the slanted wall. */
function slantProblems({ regions }: Plan, { optionTexts }: Context): readonly Problem[] {
  const walls = regions.find(({ outline, holes }) => ![outline, ...holes].every(isRectilinear));
  const rows = regions.some(({ frame }) => frame.angle % 90 !== 0);
  return [
    ...(walls ? [slantedNotResumed('room', walls.name, '12 x 14 ft')] : []),
    ...(rows ? [slantedNotResumed('direction', optionTexts.get('direction') ?? 'long', 'long')] : []),
  ];
}

/** Replaces the start in what they typed with the end that the plan has for the row. */
function mendedRow(typed: string, end: string): string {
  return typed
    .replace(/(?:started|starts|began|begins)\b[^,;]*?\band\s+(?=ended|ends)/i, '')
    .replace(/((?:ended|ends|finished) (?:at|with) )[^,;.]+/i, `$1${end}`)
    .replace(/(?:started|starts|began|begins) (?:at|with) [^,;.]+/i, `ended at ${end}`);
}

function replyOf(laid: LaidFloor, begun: Begun, rest: RestPlan, ask: ResumeAsk, context: Context): Reply {
  const { plan } = laid;
  const saying = floorFormat(ask, context);
  const short = Math.max(0, rest.planks - begun.stock.planks);
  const cartons = roundUpRatio(BigInt(short), BigInt(plan.plank.perCarton));
  const data: ResumeResult = {
    kind: 'resume',
    ticksPerInch: TICKS_PER_INCH,
    plank: plan.plank,
    rules: plan.rules,
    laid: begun.progress.map(({ region, rows }) => ({ region, rows })),
    before: rest.before,
    stock: begun.stock,
    broke: ask['so-far'].broken,
    need: rest.planks,
    bound: rest.bound,
    suffices: short === 0,
    short,
    cartons,
    rows: rest.rows,
    broken: rest.broken,
  };
  return reply({
    headline:
      short > 0
        ? RESUME.short(short, cartons)
        : RESUME.enough(
            RESUME.planks(begun.stock.planks),
            RESUME.offcuts(begun.stock.offcuts.length),
            begun.stock.planks - rest.planks,
          ),
    lines: linesOf(plan, begun, rest, ask['so-far'].broken, saying),
    blocks: [
      {
        kind: 'facts',
        section: 'details',
        title: RESUME.title,
        facts: factsOf(plan, begun, rest, ask['so-far'].broken, cartons, saying),
      },
      ...brokenBlocks({ ...plan, broken: rest.broken }, saying),
      { kind: 'steps', section: 'how', title: RESUME.read, steps: RESUME.steps },
      ...restTables(plan, rest, saying),
    ],
    assumed: [...laid.assumed, ...begun.notes],
    cautions: worded(cautionsFor('laying')),
    data,
  });
}

/** Includes the last rows laid, so that somebody can check them against the floor. */
function linesOf(plan: Plan, { progress }: Begun, rest: RestPlan, broke: number, saying: Saying): readonly string[] {
  const used = offcutsUsed(rest);
  const say = (length: number): string => sayCut(ticks(length), saying);
  return [
    FLOOR_BRIEF.rest(sayLaid(plan, progress), rest.planks, used.size),
    ...rest.before
      .slice(0, 2)
      .map(({ region, row, runs }) =>
        FLOOR_BRIEF.lastRow(region, row + 1, runs.map(({ lengths }) => lengths.map(say).join(', ')).join(' | ')),
      ),
    ...(broke > 0 ? [FLOOR_BRIEF.spoiled(broke)] : []),
  ];
}

function offcutsUsed({ rows }: RestPlan): ReadonlySet<number> {
  return new Set(rows.flatMap(({ pieces }) => pieces.flatMap(({ from }) => ('offcut' in from ? [from.offcut] : []))));
}

function sayLaid({ regions }: Plan, progress: Begun['progress']): string {
  const rowsOf = (name: string): number => regions.find((region) => region.name === name)?.rows.length ?? 0;
  return progress.map(({ region, rows }) => RESUME.laidRows(region, rows, rowsOf(region))).join('; ');
}

/** Lengths in ticks. Laying `rows` takes `need` whole planks, of which `short` are missing. */
export interface ResumeResult {
  readonly kind: 'resume';
  readonly ticksPerInch: number;
  readonly plank: Plan['plank'];
  readonly rules: Plan['rules'];
  readonly laid: readonly { readonly region: string; readonly rows: number }[];
  readonly before: RestPlan['before'];
  readonly stock: Begun['stock'];
  readonly broke: number;
  readonly need: number;
  readonly bound: number;
  readonly suffices: boolean;
  readonly short: number;
  readonly cartons: number;
  readonly rows: RestPlan['rows'];
  readonly broken: RestPlan['broken'];
}

function factsOf(
  plan: Plan,
  { progress, stock }: Begun,
  rest: RestPlan,
  broke: number,
  cartons: number,
  saying: Saying,
): readonly Fact[] {
  const say = (length: number): string => sayCut(ticks(length), saying);
  const used = offcutsUsed(rest);
  const short = rest.planks - stock.planks;
  return [
    { label: RESUME.laid, value: sayLaid(plan, progress) },
    ...rest.before.map(({ region, row, runs }) => ({
      label: RESUME.last,
      value: RESUME.lastRow(region, row + 1, runs.map(({ lengths }) => lengths.map(say).join(', ')).join(' | ')),
    })),
    { label: RESUME.left, value: String(stock.planks) },
    ...(broke > 0 ? [{ label: RESUME.broken, value: String(broke) }] : []),
    {
      label: RESUME.kept,
      value:
        stock.offcuts.map(({ length, end }, i) => RESUME.offcut(i + 1, say(length), end)).join('; ') || RESUME.none,
    },
    { label: RESUME.takes, value: RESUME.takesOf(rest.planks, used.size, rest.bound) },
    {
      label: RESUME.verdict,
      value: short > 0 ? RESUME.no(short, cartons, plan.plank.perCarton) : RESUME.yes(-short),
    },
  ];
}

const { room, plank } = floorOptions;

export default defineCommand({
  group: 'floor',
  name: 'resume',
  summary: 'Finish a half-laid floor: are the planks and offcuts you have left enough, and where do they go?',
  phrases: [
    'i stopped at row 12 and have 33 planks left, is it enough to finish',
    'already laid half the room, what do i need to finish',
    'broke two planks, have 20 left and 6 rows to go',
    'can i finish with 14 planks and some offcuts',
    'mid floor and running low, 5 rows left, 18 planks left',
    'continue from row 8 that ended at 31 inches',
    'whats my next row start, last one ended at 22 in',
    "i'm on row 9 of 20 and opened my last box",
    'got 3 offcuts 18 20 and 31 can i use them in the next row',
    'do i have enough planks left to finish the room',
    'left off at row 6 yesterday, pick up from there',
    'how many more boxes to finish, 40 planks left and 90 sq ft to go',
    'halfway thru and think im short',
    'i have 2 boxes left and 4 rows to do in a 12 foot wide room',
    'which offcut goes next',
    'floor started already, remaining 7 rows, planks left 25',
    'finishing the floor with what i have left',
    'ruined a plank, am i still ok',
    'row 15 done, 11 left in the box',
    'resume my layout',
    'row 7 ended at 22 inches, where do i start row 8',
    'broke two planks tonight, got 19 left and five rows to go',
    "half the bedroom's down, last row finished with a 31 inch piece, what's next",
    "picked it up again after a month, i'm on row 11 and have 3 boxes",
    'quit at row 9 last night with a 14 inch scrap left, can that start the next one',
    'snapped the tongue off one plank and cracked another, do i still make it to the wall',
    "dog chewed a plank, 26 left, room is 11 ft wide and i've 9 rows to lay",
    'stopped at row 4',
    "i'm 60% across the den and the stack looks awfully small, will it stretch",
    'kid helped and wrecked three boards, 16 full ones remain, 4 rows 13 feet long',
    'where was i, row 12 ended with 27 1/2',
    '6 rows remain and 21 planks, finish or not',
    'got to the closet door on row 10, offcuts are 9, 17 and 33 inches, which goes first',
    'had to pull up two rows because of a bad joint, now i have 34 planks left',
    'ran into the hearth at row 8, the piece i cut off measures 20 and a half',
    'laid 1.8 m of a 3.9 m wide room so far and have 2 packs plus 4 loose planks',
    'the next row, the last cut piece was 410 mm',
    'i miscut one by an inch, can it go somewhere later or do i need another',
    'pick up the floor from row 15, full planks in the box 7',
    'took a break at christmas with half the lounge done, carry on from row 6',
    'started from the left, eight rows in, this last one ended on a 12 inch stub',
    "how many more boards to reach the far wall, i've covered 74 inches of 138",
    'five planks came out of the box with crushed corners, 28 good ones, still got 7 rows',
    'remaining: 3 rows. left: 11 planks. short?',
    'continue my layout after row 5 which ended at 40 inches',
    "whats left to lay after tonight's 6 rows",
    "i've got one unopened carton and half of another, kitchen's two thirds laid",
    'a plank split when i tapped it, does that leave me one short at the end',
    'redo the plan from here, rows 1 to 9 are down already',
    'finished row 13 with a piece 2 ft 3 long and the scrap is 21',
    'lost a plank to a bad hole cut round the radiator pipe, 15 left for 5 rows',
    'my brother laid rows 1 through 7 and left, the last one ends 19 inches from the seam',
    'mid job, need to know if i should drive back for one more carton before they close',
    'what length do i start row 10 with if row 9 started at 16',
    'two broken, one warped, 40 on the pile and 96 inches of floor still bare',
    'three cutoffs lying here, 11, 25 and 30 inch, row 6 is up next',
    'still 4 and a bit rows short of the slider and i count 13 full planks',
    'resuming after row 2, last board in it got cut to 35 3/4',
    'i started the floor last weekend, now tell me how to finish the rest of it',
    'one plank short maybe? row 18 of 21, 8 left, rows take 3 and a piece',
  ],
  options: z.object({
    room,
    plank,
    'so-far': text(
      {
        summary: 'How far you’ve laid it, what broke, and the planks and offcuts left',
        example: 'row 7 ended at 31 1/4 in, broke one, 22 planks left, offcuts: 18 in left, 31 in right',
        colons: 'any',
      },
      readRowsLaid,
    ),
    ...layingOptions,
  }),
  examples: [
    {
      ask: "resume room: bedroom 11' x 12'6\", plank: 7 x 48 in, 10 per carton, so-far: row 12 ended at 31 1/4 in, broke one, 33 planks left, offcuts: 18 in left, 31 in right",
      headline: 'Yes: 33 planks and 2 offcuts lay the rest, 10 planks to spare.',
    },
    {
      ask: "resume room: bedroom 11' x 12'6\", plank: 7 x 48 in, 10 per carton, so-far: 12 rows done, 20 planks left",
      headline: 'Not enough: 2 planks short. Buy 1 carton more.',
    },
  ],
  run: ({ pattern, ...options }, context) =>
    pattern.name === 'herringbone'
      ? { problems: [notResumed(context.optionTexts.get('pattern') ?? pattern.name)] }
      : resumed({ ...options, pattern }, context),
});
