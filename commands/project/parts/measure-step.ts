/** A wall's length put into the rooms of a project, purely: what it makes of them, or what is to be measured again. */

import type { Context } from '../../../src/chat/command.ts';
import {
  FINEST,
  outlineOf,
  remeasured,
  type ToldWall,
  unitsTold,
  wallsOf,
} from '../../../src/input/rooms/measure-wall.ts';
import {
  type Measures,
  MOST_QUESTIONS,
  toldOf,
  withoutQuestions,
  withoutTold,
  withQuestion,
  withTold,
} from '../../../src/project/measurements.ts';
import type { Content, Project } from '../../../src/project/project.ts';
import { type Room, sameName } from '../../../src/project/project-room.ts';
import type { Problem } from '../../../src/reply/reply.ts';
import { type Length, ticks } from '../../../src/units/length.ts';
import { roomSteps } from './room-deeds.ts';

/** `same`: it is kept so; `changed`: the room has it now; `kept`: it waits for other walls. */
export interface WallStep {
  readonly kind: 'same' | 'changed' | 'kept';
  readonly parts: Partial<Content>;
  /** The room's new text. */
  readonly text?: string;
  /** By how much the walls miss one another, where that is known. */
  readonly miss?: Length;
  /** Walls to measure again. */
  readonly again: readonly number[];
}

interface Told extends ToldWall {
  readonly at: number;
}

/** What a wall told makes of a project. What was told earlier and did not fit is tried with it. */
export function wallStep(
  project: Project,
  room: Room,
  told: Told,
  { habits }: Context,
): WallStep | { readonly problem: Problem } {
  const measures = withoutQuestions(
    project.measures,
    ({ room: of, wall }) => sameName(of, room.name) && wall === told.wall,
  );
  const units = unitsTold(room.text, habits);
  const walls = wallsOf(outlineOf(room, habits) ?? []);
  const fits = ({ wall, length }: ToldWall): boolean => Math.abs((walls[wall - 1] ?? 0) - length) <= FINEST;
  const earlier = toldOf(measures, room.name)
    .filter(({ wall }) => wall !== told.wall)
    .map(({ wall, length }) => ({ wall, length: ticks(length) }));
  const heard = withTold(measures, { room: room.name, wall: told.wall, length: told.length, at: told.at });
  // A wall that is as it was kept may be what another, told before, waited for.
  const waiting = fits(told) ? earlier.filter((one) => !fits(one)) : [told];
  for (const one of waiting) {
    const others = [...earlier.filter(({ wall }) => wall !== one.wall), ...(one === told ? [] : [told])];
    const found = remeasured(room, one, others, units, habits);
    if (found.ok) return put(project, room, found.text, heard, habits);
    if (one === told)
      return {
        kind: 'kept',
        parts: { measures: askedAgain(heard, room, found.again, told.at) },
        again: found.again,
        ...(found.why === 'open' && { miss: found.miss }),
      };
  }
  return { kind: 'same', parts: { measures: heard }, again: [] };
}

function put(
  project: Project,
  room: Room,
  text: string,
  measures: Measures,
  habits: Context['habits'],
): WallStep | { readonly problem: Problem } {
  const steps = roomSteps({ ...project, measures }, [{ do: 'shape', name: room.name, text }], habits);
  if ('problem' in steps) return steps;
  const { rooms } = steps.parts;
  const after = rooms.find(({ name }) => sameName(name, room.name))?.text ?? text;
  return { kind: 'changed', parts: { rooms, measures: withoutTold(measures, room.name) }, text: after, again: [] };
}

/** The walls to measure again are asked of whoever has the tape in hand. */
function askedAgain(measures: Measures, { name }: Room, again: readonly number[], at: number): Measures {
  return again.slice(0, Math.max(0, MOST_QUESTIONS - measures.open.length)).reduce(
    // A number of its own, and the same whenever the change is made again.
    (all, wall) => withQuestion(all, { id: `again-${at}-${wall}`, room: name, wall, at }),
    measures,
  );
}
