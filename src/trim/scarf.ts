/** A stretch longer than any stick, parted by scarf joints on studs: the longest length that lands on a stud comes first. */

import { type Length, ticks } from '../units/length.ts';
import { type Cut, slant } from './corner.ts';
import { type Studs, studsBetween } from './stud.ts';

/** 30° off square (reported: Fine Homebuilding); each joint costs thickness × tan 30° of stick. */
export const SCARF: Cut = { cut: 'scarf', setting: 30 };

/** What a stretch adds at its ends, what a stick gives, and the least length worth a piece of its own. */
export interface ScarfTask {
  readonly from: Length;
  readonly to: Length;
  readonly growLeft: Length;
  readonly growRight: Length;
  readonly thickness: Length;
  readonly longest: Length;
  readonly shortest: Length;
}

/** A part of a stretch: where it lies, its length long point to long point, and which of its ends are joints. */
export interface Part {
  readonly from: Length;
  readonly to: Length;
  readonly length: Length;
  readonly joinsLeft: boolean;
  readonly joinsRight: boolean;
}

/** Parts from left to right, one where a stick is long enough; undefined where no stud lies within a stick's reach. Lengths in ticks. */
export function scarfed(task: ScarfTask, studs: Studs): readonly Part[] | undefined {
  const { to, growRight, longest, shortest, thickness } = task;
  const joint = slant(thickness, SCARF.setting);
  const [before, behind] = [Math.floor(joint / 2), joint - Math.floor(joint / 2)];
  const parts: Part[] = [];
  let from = task.from;
  let grown: number = task.growLeft;
  while (to - from + grown + growRight > longest) {
    const reach = from + longest - grown - before;
    const on = studsBetween(studs, from, Math.min(reach + 1, to)).filter((stud) => to - stud >= shortest);
    const stud = on.at(-1);
    if (stud === undefined) return undefined;
    parts.push({
      from,
      to: stud,
      length: ticks(stud - from + grown + before),
      joinsLeft: parts.length > 0,
      joinsRight: true,
    });
    from = stud;
    grown = behind;
  }
  const length = ticks(to - from + grown + growRight);
  return [...parts, { from, to, length, joinsLeft: parts.length > 0, joinsRight: false }];
}
