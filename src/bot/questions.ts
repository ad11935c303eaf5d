/** What a project's owner wants measured, as it is shown and answered. */

import type { Habits, Units } from '../measure/reading.ts';
import { sayLength } from '../measure/say-length.ts';
import { outlineOf, unitsTold, wallsOf } from '../measure/wall-told.ts';
import type { Question } from '../project/measure.ts';
import type { Project } from '../project/project.ts';
import { roomNamed } from '../project/room.ts';
import { MEASURE } from '../words/measure.ts';

/** An open question: its words, what the wall is kept as, a length as one might type it, and the line that answers it. */
export interface OpenQuestion {
  readonly id: string;
  readonly question: Question;
  readonly label: string;
  readonly kept?: string;
  readonly example: string;
  line(text: string): string;
}

/** The open questions of a project, as far as it is seen; none of a wall that is no more. */
export function openQuestions({ measures, rooms }: Pick<Project, 'measures' | 'rooms'>, habits: Habits) {
  return measures.open.flatMap((question): OpenQuestion[] => {
    const room = roomNamed(rooms, question.room);
    const units = room ? unitsTold(room.text, habits) : habits.units;
    const walls = room && question.wall !== undefined ? outlineOf(room, habits) : undefined;
    const length = walls && wallsOf(walls)[(question.wall ?? 0) - 1];
    if (walls && length === undefined) return [];
    const kept = length === undefined ? undefined : sayLength(length, { units, decimal: habits.decimal });
    return [
      {
        id: question.id,
        question,
        label: MEASURE.question(question),
        ...(kept !== undefined && { kept }),
        example: kept ?? lengthLike(units, habits),
        line: (text) => `project measure question: ${question.id}, do: ${text}`,
      },
    ];
  });
}

function lengthLike(units: Units, { decimal }: Habits): string {
  return units === 'metric' ? `2${decimal}44 m` : `8' 1/4"`;
}
