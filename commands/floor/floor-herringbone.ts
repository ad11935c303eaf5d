/** Everything a floor command does with `pattern: herringbone`, from its options to its answer. */

import type { Context, Outcome, Problems } from '../../src/chat/command.ts';
import { drawHerringbone } from '../../src/drawing/herringbone-sheet.ts';
import { HERRINGBONE_THUMB_PERCENT, PLANK_FIGURES } from '../../src/figures/floor-figures.ts';
import { cautionsFor } from '../../src/figures/safety-figures.ts';
import { type Saying, sayArea, sayCut, sayNumber } from '../../src/input/format.ts';
import { sayPieceMarked } from '../../src/input/format-piece.ts';
import type { ParsedHerringbone } from '../../src/input/parse-layout.ts';
import { planksByArea, purchaseOf } from '../../src/layout/floor.ts';
import {
  type HerringBoard,
  type HerringPlan,
  type HerringRegion,
  type HerringRules,
  onBoard,
} from '../../src/layout/herringbone.ts';
import type { Home } from '../../src/layout/home-regions.ts';
import { type Block, type Fact, type Reply, type Result, reply } from '../../src/reply/reply.ts';
import { worded } from '../../src/text/caution-text.ts';
import { borderOfHanded, clickInHerringbone, noBorder } from '../../src/text/floor-problems-text.ts';
import { BUY, counted, FLOOR_BRIEF, LAY, SHAPE } from '../../src/text/floor-text.ts';
import { type BoughtBoards, boardsHeadline, HERRING, HERRING_STEPS } from '../../src/text/home-text.ts';
import { roundUpRatio, TICKS_PER_INCH, ticks } from '../../src/units/length.ts';
import { layHerringboneAway } from '../../src/workers/solve.ts';
import { inSteps } from '../../src/workers/time-limits.ts';
import { floorLine } from './floor-brief.ts';
import { floorNeeds, homeFacts, wallToWall } from './floor-facts.ts';
import type { AreasAsk } from './floor-options.ts';
import { type Cost, floorFormat, type LaidFloor, priceOf, requestedAreas } from './lay.ts';

/** Kinds of piece listed one by one, the most frequent first. */
const MOST_KINDS = 40;

type BoughtBoardCount = Omit<BoughtBoards, 'perCarton'>;

export interface BoughtHerring extends Pick<LaidFloor, 'cost' | 'said' | 'carton' | 'home' | 'assumed'> {
  readonly plan: HerringPlan;
  readonly purchase: BoughtBoardCount;
}

/**
 * Includes mistakes and spares. If boards come as A and B, each hand fills its own cartons and they share the mistakes and
 * spares.
 */
function boughtBoards({ planks, hands, plank }: HerringPlan, { mistakes, spares }: AreasAsk): BoughtBoardCount {
  const buys = (hands ? [hands.A, hands.B] : [planks]).map((count, i, all) =>
    purchaseOf(count, mistakes, Math.floor((spares + i) / all.length), plank.perCarton),
  );
  const sum = (key: 'cartons' | 'planks' | 'mistakes' | 'spares' | 'left'): number =>
    buys.reduce((total, buy) => total + buy[key], 0);
  return {
    cartons: sum('cartons'),
    boards: sum('planks'),
    mistakes: sum('mistakes'),
    spares: sum('spares'),
    left: sum('left'),
    ...(hands && { hands: { A: buys[0]?.cartons ?? 0, B: buys[1]?.cartons ?? 0 } }),
  };
}

/** Shows the rule of thumb beside the computed figure. */
function herringFacts({ plan, purchase, said, carton }: BoughtHerring, saying: Saying): Block {
  const { plank, planks, bound, hands } = plan;
  const area = wallToWall(plan);
  const square = BigInt(plank.length) * BigInt(plank.width);
  const thumb = planksByArea(area, square, [HERRINGBONE_THUMB_PERCENT.value * 100]);
  const waste = Number(((square * BigInt(planks) - area) * 1000n) / area) / 10;
  const facts: readonly Fact[] = [
    { label: BUY.cartons, value: BUY.of(purchase.cartons, plank.perCarton, carton) },
    {
      label: HERRING.boards,
      value: HERRING.counted(planks, plan.whole, plan.pieces, plan.reused, bound.proven ? undefined : bound.best),
    },
    ...(hands ? [{ label: HERRING.hands, value: HERRING.perHand(hands.A, hands.B) }] : []),
    { label: BUY.mistakes, value: counted(purchase.mistakes, 'board') },
    ...(purchase.spares > 0 ? [{ label: BUY.spares, value: counted(purchase.spares, 'board') }] : []),
    { label: BUY.left, value: counted(purchase.left, 'board') },
    ...(said === undefined ? [] : [{ label: BUY.cost, value: said }]),
    { label: BUY.area, value: sayArea(area, saying) },
    { label: BUY.waste, value: `${sayNumber(waste, saying, 1)}%` },
    {
      label: HERRING.byArea,
      value: `${counted(thumb, 'board')}, ${counted(roundUpRatio(BigInt(thumb), BigInt(plank.perCarton)), 'carton')}`,
    },
  ];
  return { kind: 'facts', section: 'buy', title: BUY.title, facts };
}

export function fieldFacts(laid: BoughtHerring, saying: Saying): Block {
  const { plank, rules, regions, aligned } = laid.plan;
  const [width, length] = [sayCut(plank.width, saying), sayCut(plank.length, saying)];
  const facts: readonly Fact[] = [
    ...homeFacts(laid, saying),
    { label: HERRING.pattern, value: HERRING.field(width, length, rules.border) },
    ...regions.map(({ name, outline, frame }) => ({ label: name, value: wayOf(frame.angle, outline) })),
    {
      label: HERRING.fit,
      value: aligned
        ? HERRING.aligned(plank.length / plank.width)
        : HERRING.unaligned(width, sayCut(ticks(plank.length % plank.width), saying)),
    },
    { label: HERRING.rules, value: HERRING.kept(sayCut(rules.gap, saying), sayCut(rules.kerf, saying)) },
  ];
  return { kind: 'facts', section: 'details', title: LAY.title, facts };
}

function wayOf(frame: number, outline: readonly (readonly [number, number])[]): string {
  const zigzag = (frame + 45) % 180;
  const wide = Math.max(...outline.map(([x]) => x)) - Math.min(...outline.map(([x]) => x));
  const deep = Math.max(...outline.map(([, y]) => y)) - Math.min(...outline.map(([, y]) => y));
  if (zigzag % 90 === 0) return (zigzag === 0) === wide >= deep ? HERRING.along : HERRING.across;
  return zigzag % 90 === 45 ? HERRING.diagonal : HERRING.turned(Math.round(zigzag * 10) / 10);
}

interface BoardKind {
  readonly row: readonly [piece: string, make: string];
  readonly board: HerringBoard;
  readonly count: number;
}

/** The most frequent first. */
export function boardKinds(boards: readonly HerringBoard[], width: number, saying: Saying): readonly BoardKind[] {
  const kinds = new Map<string, BoardKind>();
  for (const board of boards) {
    if (board.part === 'whole' && !board.shape) continue;
    const row = [sayBoard(board, width, saying), board.hand ?? ''] as const;
    const key = row.join(' ');
    const before = kinds.get(key);
    kinds.set(key, before ? { ...before, count: before.count + 1 } : { row, board, count: 1 });
  }
  return [...kinds.values()].sort((a, b) => b.count - a.count);
}

export function cutTables({ plank, rules, regions }: HerringPlan, saying: Saying): readonly Block[] {
  return regions.flatMap(({ name, boards }): readonly Block[] => {
    const sorted = boardKinds(boards, plank.width, saying);
    if (sorted.length === 0) return [];
    const rows = sorted.slice(0, MOST_KINDS).map(({ row, count }) => [...row, String(count)]);
    const rest = sorted.slice(MOST_KINDS);
    const more = rest.reduce((sum, { count }) => sum + count, 0);
    if (more > 0) rows.push([HERRING.more(rest.length), '', String(more)]);
    const columns = rules.handed ? HERRING.columns : HERRING.columns.filter((_, i) => i !== 1);
    return [
      {
        kind: 'table',
        section: 'cuts',
        title: HERRING.cutsTitle(name),
        columns,
        rows: rules.handed ? rows : rows.map((row) => row.filter((_, i) => i !== 1)),
      },
    ];
  });
}

function sayBoard(board: HerringBoard, width: number, saying: Saying): string {
  const { at, along, from, length, left, right } = board;
  const way = { corner: at, along };
  const shape = board.shape?.map((ring) => ring.map((point) => onBoard(point, way)));
  return sayPieceMarked(
    {
      u: from,
      length,
      part: 'any',
      edge: 'full',
      ...(shape && { shape }),
      ...(left && { left }),
      ...(right && { right }),
    },
    { v: 0, height: width },
    saying,
    SHAPE.alone,
  );
}

/** A `floor` result without rows: `boards` has each board with its region, run and polygon. */
export interface HerringResult extends Result {
  readonly kind: 'floor';
  readonly ticksPerInch: number;
  readonly plank: HerringPlan['plank'] & { readonly handed: boolean };
  readonly rules: {
    readonly gap: number;
    readonly kerf: number;
    readonly pattern: { readonly name: 'herringbone'; readonly border: number };
  };
  readonly regions: readonly (HerringRegion & { readonly rows: readonly [] })[];
  readonly count: Record<string, number>;
  readonly bound: HerringPlan['bound'];
  readonly broken: readonly [];
  readonly cost?: Cost;
  readonly doorways?: Home['doorways'];
}

export function herringResult(
  plan: HerringPlan,
  bought: BoughtBoardCount,
  cost: Cost | undefined,
  home?: Home,
): HerringResult {
  const { plank, rules, regions, bound, planks, reused, whole, pieces, hands } = plan;
  const { mistakes, spares, cartons } = bought;
  return {
    kind: 'floor',
    ticksPerInch: TICKS_PER_INCH,
    plank: { ...plank, handed: rules.handed },
    rules: { gap: rules.gap, kerf: rules.kerf, pattern: { name: 'herringbone', border: rules.border } },
    regions: regions.map((region) => ({ ...region, rows: [] as const })),
    count: { planks, reused, mistakes, spares, cartons, whole, pieces, ...hands },
    bound,
    broken: [],
    ...(cost && { cost }),
    ...(home && { doorways: home.doorways }),
  };
}

export interface HerringAsk extends AreasAsk {
  readonly pattern: ParsedHerringbone;
}

/** Yields the answer, then the same with its pictures. */
export async function* answerHerringbone(ask: HerringAsk, context: Context): AsyncGenerator<Outcome> {
  const laid = await layHerringAsk(ask, context);
  if ('problems' in laid) {
    yield laid;
    return;
  }
  const reply = herringReply(laid, ask, context);
  yield reply;
  const drawings = await inSteps(drawHerringbone(laid.plan, floorFormat(ask, context)));
  const pictures = drawings.map((drawing) => ({ kind: 'picture' as const, drawing }));
  const [buy, lay, ...blocks] = reply.blocks;
  yield { ...reply, blocks: [...(buy && lay ? [buy, lay] : []), ...pictures, ...blocks] };
}

/** Returns Problems if the pattern can't be laid with these boards. */
export async function layHerringAsk(ask: HerringAsk, context: Context): Promise<BoughtHerring | Problems> {
  const { plank, handed = false } = ask.plank;
  const pattern = context.optionTexts.get('pattern') ?? ask.pattern.name;
  if (plank.lock === 'click' && !handed)
    return { problems: [clickInHerringbone(context.optionTexts.get('plank') ?? '')] };
  if (handed && ask.pattern.border > 0) return { problems: [borderOfHanded(pattern)] };
  const requested = requestedAreas(ask, context);
  if ('problems' in requested) return requested;
  const { areas, home, about, gap } = requested;
  const rules: HerringRules = {
    gap,
    kerf: ask.kerf,
    minEnd: ask['shortest-end'],
    border: ask.pattern.border,
    handed,
  };
  // A border may turn out not to fit once the boards are laid, and then this is a problem, not a long answer.
  if (rules.border === 0) context.begin();
  const plan = await layHerringboneAway(areas, plank, rules, about);
  if ('why' in plan) return { problems: [noBorder(pattern, plan.region, plan.why === 'meets a hole', rules.border)] };
  const purchase = boughtBoards(plan, ask);
  const assumed = [...context.assumed, ...home.assumed, ...(handed ? [HERRING.handsRead] : [])];
  return { plan, home, assumed, purchase, ...priceOf(purchase.cartons, ask, context) };
}

export function fieldLine(plan: HerringPlan, saying: Saying): string {
  return floorLine(plan, FLOOR_BRIEF.herringbone(plan.rules.border), saying, 'boards');
}

function herringLines(plan: HerringPlan, saying: Saying): readonly string[] {
  return [
    fieldLine(plan, saying),
    FLOOR_BRIEF.cuts(plan.whole, plan.pieces),
    ...(plan.hands ? [FLOOR_BRIEF.hands(plan.hands.A, plan.hands.B)] : []),
  ];
}

/** Leaves out the pictures, which take longer. */
export function herringReply(laid: BoughtHerring, ask: HerringAsk, context: Context): Reply {
  const { plan, purchase, cost, said } = laid;
  const saying = floorFormat(ask, context);
  return reply({
    headline: boardsHeadline({ ...purchase, perCarton: plan.plank.perCarton }, said),
    lines: herringLines(plan, saying),
    blocks: [
      herringFacts(laid, saying),
      fieldFacts(laid, saying),
      {
        kind: 'steps',
        section: 'how',
        title: HERRING_STEPS.title,
        steps: plan.rules.handed ? HERRING_STEPS.handed : HERRING_STEPS.none,
      },
      ...cutTables(plan, saying),
    ],
    assumed: laid.assumed,
    cautions: worded(cautionsFor('laying')),
    sources: PLANK_FIGURES.map(({ source }) => source),
    actions: actionsFor(plan, context),
    data: herringResult(plan, purchase, cost, laid.home),
    needs: floorNeeds({ plan }, ask),
  });
}

function actionsFor({ rules }: HerringPlan, context: Context): Reply['actions'] {
  const diagonal = /diagonal|45/i.test(context.optionTexts.get('direction') ?? '');
  const border =
    rules.border > 0
      ? { label: HERRING.actions.plain, ask: context.again({ pattern: 'herringbone' }) }
      : { label: HERRING.actions.border, ask: context.again({ pattern: 'herringbone, border 1' }) };
  return [
    ...(rules.handed ? [] : [border]),
    diagonal
      ? { label: HERRING.actions.along, ask: context.again({ direction: 'long' }) }
      : { label: HERRING.actions.diagonal, ask: context.again({ direction: 'diagonal' }) },
  ];
}
