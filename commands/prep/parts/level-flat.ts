/** Flat enough or not, reading by reading or over a grid, and what to take down. */

import { type Saying, sayCut, sayLength } from '../../../src/input/format.ts';
import type { ToldReadings } from '../../../src/input/parse-flatness.ts';
import {
  allowedGap,
  type FlatLimit,
  isFlat,
  isGridFlat,
  isGridStraight,
  limitFor,
} from '../../../src/prep/flatness.ts';
import type { Block, Fact } from '../../../src/reply/reply.ts';
import { LEVEL } from '../../../src/text/prep-text.ts';
import { type Length, ticks } from '../../../src/units/length.ts';
import type { LevelAsk } from './level-ask.ts';

type Limits = readonly [FlatLimit, ...FlatLimit[]];

/** The verdict, the worst reading and what was read in a doubtful way, the last two once it is known how to say them. */
export interface Flatness {
  readonly flat: boolean;
  readonly facts: (saying: Saying) => readonly Fact[];
  readonly worst: (saying: Saying) => string;
  readonly assumed: (saying: Saying) => readonly string[];
}

/** Judges what was told by the rule. */
export function flatOf({ readings, line }: LevelAsk, limits: Limits): Flatness {
  return readings.kind === 'gaps' ? gapsFlat(readings.gaps, limits) : gridFlat(readings.grid, line, limits);
}

function gapsFlat(gaps: Extract<ToldReadings, { kind: 'gaps' }>['gaps'], limits: Limits): Flatness {
  const judged = gaps.map((told) => {
    const allowed = ticks(Math.floor(allowedGap(told.over, limits)));
    return { ...told, allowed, flat: isFlat(told.gap, told.over, limits) };
  });
  // The worst is the one that takes most of what is allowed.
  const [worst] = [...judged].sort((a, b) => b.gap * a.allowed - a.gap * b.allowed);
  const say = (gap: Length, over: Length, saying: Saying): string =>
    LEVEL.gap(sayCut(gap, saying), sayLength(over, saying));
  const short = judged.filter(({ over }) => over < limitFor(over, limits).over);
  return {
    flat: judged.every(({ flat }) => flat),
    worst: (saying) => (worst ? say(worst.gap, worst.over, saying) : ''),
    facts: (saying) =>
      judged.map(({ gap, over, spot, allowed, flat }) => ({
        label: spot === 'high' ? LEVEL.high : LEVEL.low,
        value: `${say(gap, over, saying)}: ${LEVEL.verdict(flat, sayCut(allowed, saying))}`,
      })),
    assumed: (saying) =>
      short.map(({ over, allowed }) => LEVEL.short(sayLength(over, saying), sayCut(allowed, saying))),
  };
}

function gridFlat(
  grid: Extract<ToldReadings, { kind: 'grid' }>['grid'],
  line: LevelAsk['line'],
  limits: Limits,
): Flatness {
  const depths = grid.rows.flat();
  const spread = ticks(Math.max(...depths) - Math.min(...depths));
  const straight = isGridStraight(grid, limits);
  return {
    flat: line === 'level' ? straight : straight && isGridFlat(grid, limits),
    worst: (saying) => sayCut(spread, saying),
    facts: (saying) => [
      {
        label: LEVEL.grid,
        value: LEVEL.gridOf(
          grid.rows.length,
          grid.rows[0]?.length ?? 0,
          sayLength(grid.dx, saying),
          sayLength(grid.dy, saying),
        ),
      },
      { label: LEVEL.spread, value: sayCut(spread, saying) },
      { label: LEVEL.straight, value: LEVEL.straightOf(straight) },
    ],
    assumed: () => [],
  };
}

/** The flatness block. */
export function flatFacts(flatness: Flatness, rule: string, saying: Saying): Block {
  return { kind: 'facts', title: LEVEL.title, facts: [{ label: LEVEL.rule, value: rule }, ...flatness.facts(saying)] };
}

/** Whether anything is to be taken down. */
export function hasHigh(readings: ToldReadings): boolean {
  return readings.kind === 'gaps'
    ? readings.gaps.some(({ spot }) => spot === 'high')
    : readings.grid.rows.flat().some((depth) => depth < 0);
}

/** High spots past the rule and how they are taken down; nothing where there are none. */
export function highSteps({ readings }: LevelAsk, limits: Limits, saying: Saying): readonly Block[] {
  const steps: string[] = [];
  if (readings.kind === 'gaps') {
    for (const { gap, over, spot } of readings.gaps) {
      if (spot === 'low' || isFlat(gap, over, limits)) continue;
      const take = ticks(gap - Math.floor(allowedGap(over, limits)));
      steps.push(LEVEL.highOf(sayCut(gap, saying), sayLength(over, saying), sayCut(take, saying)));
    }
  } else {
    const high = readings.grid.rows.flat().filter((depth) => depth < 0);
    if (high.length > 0) steps.push(LEVEL.highGrid(high.length, sayCut(ticks(-Math.min(...high)), saying)));
  }
  return steps.length === 0 ? [] : [{ kind: 'steps', title: LEVEL.highTitle, steps: [...steps, LEVEL.highHow] }];
}
