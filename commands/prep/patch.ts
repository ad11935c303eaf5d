/** `prep patch`: replaces a piece of subfloor, with its edges landing on joists. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { drawPatch } from '../../src/drawing/patch-drawing.ts';
import { MOULD_AREA } from '../../src/figures/moisture-figures.ts';
import { cautionsFor } from '../../src/figures/safety-figures.ts';
import {
  ADHESIVE_FIGURES,
  BEAD_WASTE,
  BLOCK_FACE,
  BLOCK_SCREWS,
  CUBIC_INCHES_PER_FLUID_OUNCE,
  FASTENER_BITE,
  FASTENER_SPACING,
  JOIST_FIGURES,
  JOIST_LIMITS,
  LARGEST_PATCH,
  LEAST_PANEL_WIDTH,
  PANEL_AT_24,
  PANEL_GAP,
  PANEL_KERF,
  PATCH_BAYS,
  PATCH_FIGURES,
  PATCH_RIM,
  SCREW_STEPS,
  SHEET_BAYS,
} from '../../src/figures/subfloor-figures.ts';
import { type Saying, sayCut, sayLength, sayNumber } from '../../src/input/format.ts';
import { text } from '../../src/input/options.ts';
import { type Found, foundAside, together } from '../../src/input/parse-found.ts';
import { type ParsedDamage, readDamage } from '../../src/input/parse-place.ts';
import type { ParsedRooms } from '../../src/input/reading.ts';
import { type JoistFlaw, joistFlaws, joistLimits, squeakScrews } from '../../src/prep/joist-cut.ts';
import {
  adhesiveTubes,
  baysPerSheet,
  beadLitres,
  cornersOf,
  feetPerTube,
  type Patch,
  type PatchRules,
  patchRange,
  planPatch,
  type Rect,
  type SheetSize,
} from '../../src/prep/subfloor-patch.ts';
import type { Need } from '../../src/reply/need.ts';
import { type Block, type Fact, type Problem, type Refusal, type Result, reply } from '../../src/reply/reply.ts';
import { worded } from '../../src/text/caution-text.ts';
import { cutJoist, ENGINEERED_CUT, referral } from '../../src/text/found-text.ts';
import { damageBeyond, damageTooLarge, holeApartNotGiven, sheetTooSmall } from '../../src/text/prep-problems-text.ts';
import { NO_CUT, PATCH } from '../../src/text/prep-text.ts';
import { NEEDS } from '../../src/text/shopping-text.ts';
import { boxOf } from '../../src/units/geometry.ts';
import {
  areaOf,
  type Length,
  roundUpRatio,
  SQUARE_TICKS_PER_SQUARE_FOOT,
  TICKS_PER_INCH,
  TICKS_PER_MM,
  ticks,
} from '../../src/units/length.ts';
import {
  firstJoist,
  foundOption,
  patchOptions,
  refusal,
  refusalFor,
  spacingOption,
  thicknessOption,
} from './prep-options.ts';
import { screwNeed } from './squeaks.ts';

// In joist coordinates: across and along.

interface PatchAsk {
  readonly damage: ParsedDamage;
  readonly 'first-joist': Length | 'unknown';
  readonly spacing: Length;
  readonly joists: 'up' | 'across';
  readonly thickness: Length;
  readonly room: ParsedRooms | 'none';
  readonly margin: Length;
  readonly 'joist-width': Length;
  readonly 'joist-depth': Length;
  readonly notch: Length;
  readonly 'notch-length': Length;
  readonly 'notch-place': 'unknown' | 'end' | 'outer' | 'middle';
  readonly hole: Length;
  readonly 'hole-edge': Length;
  readonly 'hole-apart': Length;
  readonly 'joist-kind': 'solid' | 'i-joist' | 'truss' | 'glued';
  readonly sheet: SheetSize;
  readonly bead: Length;
  /** US fluid ounces. */
  readonly tube: number;
  readonly found: Found;
}

/** u runs across the joists, v along them. */
function uvOf({ damage, joists }: PatchAsk, { left, bottom }: NonNullable<ParsedDamage['place']>): Rect {
  const [x0, y0, x1, y1] = [left, bottom, left + damage.across, bottom + damage.up];
  return joists === 'up' ? { u0: x0, v0: y0, u1: x1, v1: y1 } : { u0: y0, v0: x0, u1: y1, v1: x1 };
}

/** Across the room, then up. */
function roomSides({ u0, v0, u1, v1 }: Rect, run: 'up' | 'across'): readonly [number, number] {
  return run === 'up' ? [u1 - u0, v1 - v0] : [v1 - v0, u1 - u0];
}

/** Knows the walls only if there is a room. */
function patchRules(ask: PatchAsk): PatchRules {
  const walls = wallsOf(ask);
  return {
    margin: ask.margin,
    bays: PATCH_BAYS.value,
    // Without the gaps, the panel itself still has the least width.
    least: ticks(LEAST_PANEL_WIDTH.value + 2 * PANEL_GAP.value),
    gap: PANEL_GAP.value,
    kerf: PANEL_KERF.value,
    sheet: ask.sheet,
    fasteners: FASTENER_SPACING.value,
    rim: PATCH_RIM.value,
    block: BLOCK_FACE.value,
    ...(walls && (ask.joists === 'up' ? { across: walls[0], along: walls[1] } : { across: walls[1], along: walls[0] })),
  };
}

function patchProblem(ask: PatchAsk, context: Context, saying: Saying): Problem | undefined {
  const { damage } = ask;
  const got = context.optionTexts.get('damage') ?? '';
  if (Math.max(damage.across, damage.up) > LARGEST_PATCH.value)
    return damageTooLarge(got, sayLength(LARGEST_PATCH.value, saying));
  const few = baysPerSheet(ask.spacing, ask.sheet, PANEL_GAP.value) < SHEET_BAYS.value;
  if (few || ask.sheet.width < LEAST_PANEL_WIDTH.value) return sheetTooSmall(context.optionTexts.get('sheet') ?? '');
  const walls = wallsOf(ask);
  if (!walls) return undefined;
  const [wide, deep] = walls;
  const { left, bottom } = damage.place ?? { left: 0, bottom: 0 };
  if (left + damage.across <= wide && bottom + damage.up <= deep) return undefined;
  return damageBeyond(got, `${sayLength(wide, saying)} x ${sayLength(deep, saying)}`);
}

function squareFeet({ damage }: PatchAsk): number {
  return Number(areaOf(damage.across, damage.up)) / Number(SQUARE_TICKS_PER_SQUARE_FOOT);
}

function wallsOf({ room }: PatchAsk): readonly [Length, Length] | undefined {
  const first = room === 'none' ? undefined : room.rooms[0];
  if (!first) return undefined;
  const { minX, minY, maxX, maxY } = boxOf(first.outline);
  return [ticks(maxX - minX), ticks(maxY - minY)];
}

function tubesOf(patch: Patch, { tube, bead }: PatchAsk): number {
  return adhesiveTubes(patch.bead, feetPerTube(tube * CUBIC_INCHES_PER_FLUID_OUNCE.value, bead), BEAD_WASTE.value);
}

/** The shortest screw that goes through the panel and far enough into the joist. */
function panelScrew({ spacing, thickness, damage }: PatchAsk): Length {
  const step = SCREW_STEPS.value[damage.units];
  const screwed = { panel: thickness, bite: FASTENER_BITE.value, step };
  return squeakScrews({ along: spacing, across: ticks(0) }, spacing, spacing, screwed).length;
}

function cutFacts(patch: Patch, ask: PatchAsk, saying: Saying): Block {
  const [corner] = cornersOf(patch.cut, ask.joists);
  const [across, up] = roomSides(patch.cut, ask.joists);
  const say = (length: number): string => sayLength(ticks(length), saying);
  const cut = (length: number): string => sayCut(ticks(length), saying);
  const facts: readonly Fact[] = [
    { label: PATCH.size, value: PATCH.sizeOf(cut(across), cut(up)) },
    { label: PATCH.from, value: PATCH.fromWalls(say(corner?.[0] ?? 0), say(corner?.[1] ?? 0)) },
    { label: PATCH.lands, value: PATCH.joists(patch.cut.joists.map(say), ask.joists === 'up' ? 'left' : 'bottom') },
    { label: PATCH.depth, value: PATCH.depthOf(cut(ask.thickness)) },
  ];
  return { kind: 'facts', section: 'cuts', title: PATCH.cutTitle, facts };
}

function buyFacts(patch: Patch, ask: PatchAsk, saying: Saying): Block {
  const cut = (length: number): string => sayCut(ticks(length), saying);
  const sizes = new Map<string, number>();
  for (const { u0, u1, v0, v1 } of patch.panels) {
    const size = `${cut(u1 - u0)}|${cut(v1 - v0)}`;
    sizes.set(size, (sizes.get(size) ?? 0) + 1);
  }
  const area = patch.panels.reduce((sum, { u0, u1, v0, v1 }) => sum + BigInt(u1 - u0) * BigInt(v1 - v0), 0n);
  const least = roundUpRatio(area, BigInt(ask.sheet.width) * BigInt(ask.sheet.length));
  const { edge, field } = FASTENER_SPACING.value;
  const panels = [...sizes].map(([size, count]) => {
    const [long = '', wide = ''] = size.split('|');
    return PATCH.panel(count, long, wide, cut(ask.thickness));
  });
  const facts: readonly Fact[] = [
    ...panels.map((value) => ({ label: PATCH.panels, value })),
    {
      label: PATCH.sheets,
      value: PATCH.sheetsOf(patch.sheets.length, `${cut(ask.sheet.width)} × ${cut(ask.sheet.length)}`, least),
    },
    {
      label: PATCH.blocking,
      value: patch.blocking.map((block) => PATCH.block(block.count, cut(block.length))).join(', '),
    },
    { label: PATCH.screws, value: PATCH.screwsOf(patch.fasteners.length, cut(edge), cut(field), cut(panelScrew(ask))) },
    { label: PATCH.keptScrews, value: PATCH.keptScrewsOf(patch.kept) },
    { label: PATCH.blockScrews, value: PATCH.blockScrewsOf(patch.blocks.length * BLOCK_SCREWS.value) },
    {
      label: PATCH.adhesive,
      value: PATCH.adhesiveOf(
        PATCH.tubes(tubesOf(patch, ask)),
        sayLength(ticks(Math.round(patch.bead)), saying),
        cut(ask.bead),
      ),
    },
  ];
  return { kind: 'facts', section: 'buy', title: PATCH.buyTitle, facts };
}

function sheetTable(patch: Patch, saying: Saying): Block {
  const cut = (length: number): string => sayCut(ticks(length), saying);
  const rows = patch.sheets.flatMap((pieces, sheet) =>
    pieces.map(({ piece, x, y, length, width }) => [
      String(sheet + 1),
      String(piece + 1),
      `${cut(length)} × ${cut(width)}`,
      cut(x),
      cut(y),
    ]),
  );
  return { kind: 'table', section: 'cuts', title: PATCH.planTitle, columns: PATCH.planColumns, rows };
}

/** Refuses where a cut is over its limit, in a joist that must not be cut, or can't be judged. */
function joistRefusal(ask: PatchAsk, context: Context): Refusal | undefined {
  const cut = ask.notch > 0 || ask.hole > 0;
  if (cut && ask['joist-kind'] !== 'solid') return refusal(ENGINEERED_CUT);
  const flaws = flawsOf(ask, context);
  if (flaws.length === 0 || isOnlyApart(flaws)) return undefined;
  const depth = ask['joist-depth'];
  const saying: Saying = { units: ask.damage.units, decimal: context.preferences.decimal };
  const limits = joistLimits(depth, JOIST_LIMITS.value);
  const say = (length: number): string => sayLimit(length, saying);
  return refusal(
    cutJoist(flaws, {
      depth: sayCut(depth, saying),
      notch: say(limits.notch),
      endNotch: say(limits.endNotch),
      hole: say(limits.hole),
    }),
  );
}

/** How far apart hole and notch are, if both are given and nothing else is wrong. */
function joistQuestion(ask: PatchAsk, context: Context): Problem | undefined {
  if (!isOnlyApart(flawsOf(ask, context))) return undefined;
  const saying: Saying = { units: ask.damage.units, decimal: context.preferences.decimal };
  return holeApartNotGiven(sayCut(JOIST_LIMITS.value.holeApart, saying));
}

function isOnlyApart(flaws: readonly JoistFlaw[]): boolean {
  return flaws.length === 1 && flaws[0] === 'hole-apart-untold';
}

function flawsOf(ask: PatchAsk, { optionTexts }: Context): readonly JoistFlaw[] {
  const place = ask['notch-place'];
  return joistFlaws(
    {
      depth: ask['joist-depth'],
      notch: {
        depth: ask.notch,
        ...(optionTexts.has('notch-length') && { length: ask['notch-length'] }),
        ...(place !== 'unknown' && { place }),
      },
      hole: {
        diameter: ask.hole,
        ...(optionTexts.has('hole-edge') && { edge: ask['hole-edge'] }),
        ...(optionTexts.has('hole-apart') && { apart: ask['hole-apart'] }),
      },
    },
    JOIST_LIMITS.value,
  );
}

/** Depth, deepest notch, widest hole, and how far the hole must be from other cuts. */
function limitsSaid(
  depth: Length,
  saying: Saying,
): readonly [depth: string, notch: string, hole: string, apart: string] {
  const { notch, hole } = joistLimits(depth, JOIST_LIMITS.value);
  const apart = sayCut(JOIST_LIMITS.value.holeApart, saying);
  return [sayCut(depth, saying), sayLimit(notch, saying), sayLimit(hole, saying), apart];
}

/** Rounds down to a mark on the tape, because rounding to the nearest could allow more than the limit. */
function sayLimit(length: number, saying: Saying): string {
  const mark = saying.units === 'metric' ? TICKS_PER_MM : TICKS_PER_INCH / 16;
  return sayCut(ticks(Math.floor(length / mark) * mark), saying);
}

/** US fluid ounces per liter: 231 in³ in a gallon of 128 (NIST Handbook 44, appendix C). */
const OUNCES_PER_LITRE = 128 / 3.785411784;

/** Sheets already come whole from the cutting plan; adhesive is by volume. */
function patchNeeds(patch: Patch, ask: PatchAsk, saying: Saying): readonly Need[] {
  const cut = (length: number): string => sayCut(ticks(length), saying);
  const { sheet, thickness, tube, bead } = ask;
  const size = `${cut(sheet.width)} × ${cut(sheet.length)}`;
  const stage = 'subfloor' as const;
  const blocks = patch.blocking.reduce((sum, { length, count }) => sum + length * count, 0);
  const litres = tube / OUNCES_PER_LITRE;
  const said =
    saying.units === 'metric' ? `${sayNumber(litres * 1000, saying, 0)} ml` : `${sayNumber(tube, saying)} fl oz`;
  return [
    {
      item: `panel ${thickness} ${sheet.width}x${sheet.length}`,
      label: NEEDS.panels(cut(thickness), size),
      stage,
      quantity: { unit: 'count', amount: patch.sheets.length },
      package: { size: 1, ...NEEDS.sheet },
    },
    ...(blocks > 0
      ? [
          {
            item: 'block 2x4',
            label: NEEDS.blocks,
            stage,
            quantity: { unit: 'length', amount: blocks } as const,
            note: NEEDS.blocksNote(patch.blocking.map(({ length }) => cut(length))),
          },
          {
            item: 'block screw',
            label: NEEDS.blockScrews,
            stage,
            quantity: { unit: 'count', amount: patch.blocks.length * BLOCK_SCREWS.value } as const,
          },
        ]
      : []),
    screwNeed(patch.fasteners.length + patch.kept, panelScrew(ask), undefined, saying),
    {
      item: 'subfloor adhesive',
      label: NEEDS.adhesive,
      stage,
      quantity: { unit: 'volume', amount: beadLitres(patch.bead, bead) * BEAD_WASTE.value },
      package: { size: litres, ...NEEDS.tube(said) },
    },
  ];
}

/** Room coordinates and lengths in ticks; the `length` of a panel runs across the joists. */
export interface PatchResult extends Result {
  readonly kind: 'patch';
  readonly cut: readonly (readonly [number, number])[];
  readonly joists: readonly number[];
  readonly blocking: readonly { readonly length: number; readonly count: number }[];
  readonly panels: readonly { readonly width: number; readonly length: number }[];
  readonly sheets: number;
  readonly fasteners: number;
  readonly adhesiveTubes: number;
}

/** Plain numbers, so that checkers outside this code can read them. */
function patchResult(patch: Patch, ask: PatchAsk): PatchResult {
  return {
    kind: 'patch',
    cut: cornersOf(patch.cut, ask.joists),
    joists: patch.cut.joists,
    blocking: patch.blocking,
    panels: patch.panels.map(({ u0, u1, v0, v1 }) => ({ width: v1 - v0, length: u1 - u0 })),
    sheets: patch.sheets.length,
    fasteners: patch.fasteners.length,
    adhesiveTubes: tubesOf(patch, ask),
  };
}

/** Refuses a patch that isn't a job for a homeowner. */
function answerPatch(ask: PatchAsk, context: Context): Outcome {
  const aside = foundAside(context.optionTexts.get('room') ?? '');
  const refused = refusalFor(ask.damage.found, ask.found, aside) ?? joistRefusal(ask, context);
  if (refused) return refused;
  const { mould } = together(ask.damage.found, ask.found);
  if (mould && squareFeet(ask) >= MOULD_AREA.value) return refusal(referral(['mould']), 'mold');
  const saying: Saying = { units: ask.damage.units, decimal: context.preferences.decimal };
  const problem = joistQuestion(ask, context) ?? patchProblem(ask, context, saying);
  if (problem) return { problems: [problem] };
  const { place } = ask.damage;
  const first = ask['first-joist'];
  if (place === undefined || first === 'unknown') return answerSize(ask, context, saying);
  const damage = uvOf(ask, place);
  const rules = patchRules(ask);
  const joists = { spacing: ask.spacing, first, width: ask['joist-width'] };
  const patch = planPatch(damage, joists, rules);
  if (typeof patch === 'string') return refusal(NO_CUT[patch]);
  const [across, up] = roomSides(patch.cut, ask.joists).map((side) => sayCut(ticks(side), saying));
  const blocks = patch.blocks.length;
  return reply({
    headline: PATCH.headline(across ?? '', up ?? '', patch.sheets.length, blocks, patch.fasteners.length),
    lines: patchLines(patch, ask, saying),
    blocks: [
      cutFacts(patch, ask, saying),
      buyFacts(patch, ask, saying),
      { kind: 'picture', drawing: drawPatch(patch, { run: ask.joists, joistWidth: ask['joist-width'] }, saying) },
      ...notes(patch, ask, mould, saying),
      { kind: 'steps', section: 'how', title: PATCH.stepsTitle, steps: patchSteps(ask, saying) },
      sheetTable(patch, saying),
      beforeClosing(ask, saying),
    ],
    assumed: context.optionTexts.has('joists') ? context.assumed : [...context.assumed, PATCH.assumedRun],
    cautions: worded(cautionsFor('subfloor')),
    sources: [...PATCH_FIGURES, ...JOIST_FIGURES, ...ADHESIVE_FIGURES].map(({ source }) => source),
    data: patchResult(patch, ask),
    needs: patchNeeds(patch, ask, saying),
  });
}

/** What the patch can come to before anybody measured from the walls. */
function answerSize(ask: PatchAsk, context: Context, saying: Saying): Outcome {
  const { damage, spacing } = ask;
  const joists = { spacing, width: ask['joist-width'] };
  const turned = context.optionTexts.has('joists') ? [ask.joists === 'across'] : [false, true];
  const range = patchRange([damage.across, damage.up], turned, joists, patchRules({ ...ask, room: 'none' }));
  if (typeof range === 'string') return refusal(NO_CUT[range]);
  const cut = (size: number): string => sayCut(ticks(size), saying);
  const { across, along, most } = range;
  const tubes = tubesOf(most, ask);
  return reply({
    headline: PATCH.sizeHeadline(across.map(cut), along.map(cut)),
    lines: [
      PATCH.sizeBuy(most.sheets.length, most.blocks.length, most.fasteners.length, PATCH.tubes(tubes)),
      PATCH.lines.depth(cut(ask.thickness)),
      PATCH.soft,
      PATCH.sizeLacks(damage.place === undefined, ask['first-joist'] === 'unknown'),
    ],
    assumed: context.assumed,
    cautions: worded(cautionsFor('subfloor')),
    blocks: [
      { kind: 'steps', section: 'how', title: PATCH.stepsTitle, steps: patchSteps(ask, saying) },
      beforeClosing(ask, saying),
    ],
    sources: [...PATCH_FIGURES, ...JOIST_FIGURES, ...ADHESIVE_FIGURES].map(({ source }) => source),
    data: {
      kind: 'patch-size',
      across,
      along: [...along],
      sheets: most.sheets.length,
      blocks: most.blocks.length,
      fasteners: most.fasteners.length,
      adhesiveTubes: tubes,
    },
  });
}

function patchSteps(ask: PatchAsk, saying: Saying): readonly string[] {
  const width = ask['joist-width'];
  return PATCH.steps(
    sayCut(ticks(Math.floor(width / 2) - PANEL_GAP.value), saying),
    sayCut(width, saying),
    sayCut(PANEL_GAP.value, saying),
  );
}

function beforeClosing(ask: PatchAsk, saying: Saying): Block {
  return {
    kind: 'checklist',
    section: 'checklist',
    title: PATCH.checkTitle,
    items: PATCH.check(...limitsSaid(ask['joist-depth'], saying)),
  };
}

function patchLines(patch: Patch, ask: PatchAsk, saying: Saying): readonly string[] {
  const [corner] = cornersOf(patch.cut, ask.joists);
  const say = (length: number): string => sayLength(ticks(length), saying);
  const { lines } = PATCH;
  return [
    lines.at(say(corner?.[0] ?? 0), say(corner?.[1] ?? 0)),
    lines.joists(patch.cut.joists.map(say), ask.joists === 'up' ? 'left' : 'bottom'),
    lines.depth(sayCut(ask.thickness, saying)),
    lines.glue(PATCH.tubes(tubesOf(patch, ask)), patch.kept + patch.blocks.length * BLOCK_SCREWS.value),
  ];
}

function notes(patch: Patch, ask: PatchAsk, mould: boolean, saying: Saying): readonly Block[] {
  const { beyond, thickness } = PANEL_AT_24.value;
  const say = (length: number): string => sayCut(ticks(length), saying);
  const { cut, damage } = patch;
  const bare = [damage.u0 - cut.u0, cut.u1 - damage.u1, damage.v0 - cut.v0, cut.v1 - damage.v1];
  const items = [
    ...(ask.spacing > beyond && ask.thickness < thickness
      ? [PATCH.thin(say(ask.thickness), say(ask.spacing), say(thickness))]
      : []),
    ...(bare.some((side) => side < ask.margin) ? [PATCH.marginLess(say(ask.margin))] : []),
    ...(mould ? [PATCH.mould] : []),
  ];
  return items.length === 0 ? [] : [{ kind: 'checklist', section: 'details', title: PATCH.notesTitle, items }];
}

export default defineCommand({
  group: 'prep',
  name: 'patch',
  summary: 'Patch a piece of subfloor: where to cut, panels, blocks, screws, adhesive',
  phrases: [
    'need to patch a 20x30 in hole in the subfloor',
    'rotted plywood by the toilet how do i replace it',
    'subfloor soft by the tub how do i cut it out',
    'how big a piece of plywood for a rotten spot 2 ft by 3 ft',
    'cut out bad subfloor back to the joists',
    'replace a section of subfloor',
    'water damaged osb near the sliding door, patch it',
    'hole in the floor where an old vent was',
    'blocking for a subfloor patch',
    'how do i patch a hole in plywood subfloor',
    'rot under the window in bedroom floor',
    'subfloor chewed up by water heater leak, 3x4 ft',
    'what thickness plywood to patch with',
    'joists 16 oc, damage 18x24, patch size',
    'cut to the middle of joist for patch?',
    'old floor furnace hole needs filled with plywood',
    'dishwasher leak rotted the subfloor',
    'black spongy wood in corner of closet how to fix',
    'termite ate part of the subfloor',
    'screwdriver goes right through the subfloor',
    'how do i put new wood where i cut the floor out',
    'patching particle board that swelled up',
    'soft spot by the toilet about 18x24, how do i cut it out',
    'hole in the osb 14 by 20 inches, joists 16 on center, what size piece goes back',
    'how much plywood and blocking for rot 3 ft x 4 ft along the slider',
    'cut out the bad subfloor',
    'my foot almost went through near the tub, 2 ft by 30 in is mush',
    "size of panel to replace a chunk the dog ruined by the back door, 22x36, it's 3 ft from left wall",
    "water got under the dishwasher, floor's swollen maybe 24 inches square, what do i cut",
    "patch for an old floor vent 12x14 we're not using",
    'do i cut back to the middle of the joist or add blocks alongside it',
    'how many screws and blocks to patch a 20 x 40 in hole',
    'particleboard crumbles in the closet corner, about 2x2, how do i mend it',
    'rotten chipboard in the loo, 600 by 450 mm, joists at 400',
    "replace one 4x8 sheet of subfloor, half of it's rotten",
    'the spongy part starts 5 ft from the window wall and runs 30 inches, first joist at 15',
    "what do i set the new ply on, there's no joist at one side of the cut",
    'subfloor patch 5/8 thick, damage 10x16',
    'fridge leaked for years, need to take out roughly a 3 by 5 section of floor',
    'patch goes up against the wall, no joist there, how do i hold up that edge',
    'two burned spots from an old wood stove, each 16 inches across, cut both',
    'how big do i make the cutout round a bad spot of 9x9',
    'adhesive and screws for a subfloor repair 32x48',
    'termites got a strip 8 in wide and 4 ft long of plywood, not the joist',
    'fixing the floor where they moved a wall, gap 5 in wide by 11 ft',
    'delaminated ply at the patio door, 28 x 60, what materials',
    "i stuck a screwdriver in and it went through, area's about a dinner plate",
    'damage 16 x 22 in, 4 ft from the left and 2 ft up from the bottom wall, ply 3/4',
    'plank subfloor, three boards are broken by the chimney, what do i put in',
    'hole from a cold air return 14x30 need it closed before plank',
    'need a lumber list for mending the floor under the washer, 3 feet square',
    'how do i mark the cut so it lands on joists',
    'old toilet moved, leaves a round hole 6 inch, patch it?',
    'wet rot near the sink base, got it dry now, want to cut and replace 2x4 feet',
    'bad panel section spans two joists, how many 2x6 blocks',
    "let in a new bit of ply where the cat peed, it's black through, 20 inches by 3 ft",
    'one sheet of 23/32 tongue and groove enough for two patches 2x3 and 18x40',
    'repair the subfloor in hall bath corner, about 15 in each way',
    'what depth do i set the saw to and what piece do i cut for a 25 x 33 in bad area',
    'sagging sheet end with no block under the seam, 4 ft long',
    'closet floor gave way under a safe, cracked 26 x 30',
    'saw out rotten bit and fit new, metres 0.8 x 1.1',
  ],
  options: z.object({
    damage: text(
      {
        summary: 'Size across x up, and if you can, how far from the left wall and the bottom wall',
        example: `20 x 30 in at 3' from left, 5' from bottom`,
      },
      readDamage,
    ),
    'first-joist': firstJoist,
    spacing: spacingOption,
    thickness: thicknessOption,
    ...patchOptions,
    found: foundOption,
  }),
  examples: [
    {
      ask: `patch damage: 20 x 30 in at 3' from left, 5' from bottom, first-joist: 16 in`,
      headline: 'Cut out 32" × 34": 1 sheet, 4 blocks, 26 screws.',
    },
    {
      ask: 'patch damage: 2 x 3 ft',
      headline: 'Cut back to joist centers: 32", 48" or 64" across the joists, 28" to 40" along them.',
    },
    {
      ask: 'patch damage: 300 x 500 mm at 1,2 m from left, 900 mm from bottom, first-joist: 400 mm, spacing: 400 mm, joists: across, thickness: 18 mm, sheet: 1220 x 2440 mm, found: water stain',
      headline: 'Cut out 616 mm × 800 mm: 1 sheet, 4 blocks, 21 screws.',
    },
  ],
  run: (options, context) => answerPatch(options, context),
});
