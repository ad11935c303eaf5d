/** What a project's owner wants measured, as it is shown and answered. */

import type { Desk } from '../accounts/account-access.ts';
import { sayLength } from '../input/format.ts';
import { DEFAULT_HABITS, type Habits, type Units } from '../input/reading.ts';
import { outlineOf, unitsTold, wallsOf } from '../input/rooms/measure-wall.ts';
import type { Question } from '../project/measurements.ts';
import type { Project } from '../project/project.ts';
import { roomNamed } from '../project/project-room.ts';
import { MEASURE } from '../text/project-text.ts';

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

/** The open questions of the project in use, as far as the asker sees it, in its owner's units. Throws Outage. */
export async function questionsAt(desk: Desk): Promise<readonly OpenQuestion[]> {
  const [project, settings] = [await desk.inUse(), await desk.ownersSettings()];
  const units = settings?.units ?? DEFAULT_HABITS.units;
  const decimal = settings?.decimal ?? DEFAULT_HABITS.decimal;
  return project ? openQuestions(project, { ...DEFAULT_HABITS, units, decimal }) : [];
}
