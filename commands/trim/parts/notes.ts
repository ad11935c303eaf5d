/** What goes with a list of trim: how doubtful things were taken, and the steps that its cuts ask for. */

import type { Context } from '../../../src/chat/command.ts';
import { sayDegrees } from '../../../src/drawing/elevation.ts';
import { NO_SLACK, OFF_TURN } from '../../../src/figures/trim-figures.ts';
import { type Saying, sayCut, sayLength } from '../../../src/input/format.ts';
import type { Block } from '../../../src/reply/reply.ts';
import { TRIM_NOTES, TRIM_STEPS } from '../../../src/text/trim-text.ts';
import type { TrimPiece } from '../../../src/trim/pieces.ts';
import type { Stick } from '../../../src/trim/sticks.ts';
import { turning, wallName } from '../../../src/trim/walls.ts';
import type { ListAsk } from './ask.ts';
import { type AskedWalls, sayingOf } from './walls.ts';

export function stepsBlock(pieces: readonly TrimPiece[], sticks: readonly Stick[], glue: boolean): Block {
  return {
    kind: 'steps',
    title: TRIM_STEPS.title,
    steps: [
      ...TRIM_STEPS.base,
      ...(sticks.some(({ leftover }) => leftover < NO_SLACK.value) ? [TRIM_STEPS.full] : []),
      ...(has(pieces, 'cope') ? [TRIM_STEPS.cope] : []),
      ...(has(pieces, 'scarf') ? [TRIM_STEPS.scarf] : []),
      ...(glue ? [TRIM_STEPS.glue] : []),
      TRIM_STEPS.nail,
    ],
  };
}

/** Studs where joints lean on them, corners coped for being out of square, and rooms whose corners do not make a full turn. */
export function notesOf(
  ask: ListAsk,
  { walls }: AskedWalls,
  pieces: readonly TrimPiece[],
  context: Context,
): readonly string[] {
  const saying = sayingOf(ask, context);
  const byName = new Map(walls.map((wall) => [wallName(wall), wall]));
  const coped = pieces.filter(({ wall, left }) => left.cut === 'cope' && byName.get(wall)?.left.measured === true);
  const turned = ask.room.rooms.map(({ name }) => ({
    name,
    degrees: turning(walls.filter(({ room }) => room === name).map(({ left }) => left.interior)),
  }));
  return [
    ...takenNote(ask, context, saying),
    ...(has(pieces, 'scarf')
      ? [TRIM_NOTES.studs(sayCut(ask['stud-spacing'], saying), sayCut(ask['first-stud'], saying))]
      : []),
    ...coped.map(({ wall }) => TRIM_NOTES.coped(`the left corner of ${wall}`)),
    ...turned
      .filter(({ degrees }) => Math.abs(degrees - 360) > OFF_TURN.value)
      .map(({ name, degrees }) => TRIM_NOTES.turning(name, sayDegrees(degrees, saying))),
  ];
}

/** What was not told and bears on lengths or on what to buy. */
function takenNote(ask: ListAsk, { told }: Context, saying: Saying): readonly string[] {
  const { takenValues } = TRIM_NOTES;
  const values = [
    ...(told.has('stock')
      ? []
      : [takenValues.stock(ask.stock.items.map(({ length }) => sayLength(length, saying)).join(', '))]),
    ...(told.has('casing') || ask.doors.length === 0 ? [] : [takenValues.casing(sayCut(ask.casing, saying))]),
    ...(told.has('thickness') ? [] : [takenValues.thickness(sayCut(ask.thickness, saying))]),
    ...(told.has('kerf') ? [] : [takenValues.kerf(sayCut(ask.kerf, saying))]),
  ];
  return values.length === 0 ? [] : [TRIM_NOTES.taken(values)];
}

function has(pieces: readonly TrimPiece[], cut: 'cope' | 'scarf'): boolean {
  return pieces.some(({ left, right }) => left.cut === cut || right.cut === cut);
}
