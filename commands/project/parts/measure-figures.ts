/** What a room measured anew changes: the list of what to buy before and after. Saved answers stay as they were. */

import type { Context } from '../../../src/chat/command.ts';
import { type Line, mergeNeeds } from '../../../src/project/needs.ts';
import type { Content, Project } from '../../../src/project/project.ts';
import type { Room } from '../../../src/project/project-room.ts';
import { covers, isPart } from '../../../src/project/share-scope.ts';
import type { Block } from '../../../src/reply/reply.ts';
import { MEASURE, SAVED } from '../../../src/text/project-text.ts';
import { listOf } from './shopping-lines.ts';
import { sayAmount } from './shopping-say.ts';

export interface Figures {
  /** In a few words each: “23 → 24 planks”. */
  readonly brief: readonly string[];
  readonly blocks: readonly Block[];
  readonly notes: readonly string[];
}

const MOST_BRIEF = 4;

/** The figures of a project before and after these parts are put in place. Throws Outage. */
export async function figuresOf(
  project: Project,
  parts: Partial<Content>,
  room: Room,
  context: Context,
): Promise<Figures> {
  const after = { ...project, ...parts };
  const [was, now] = [await linesOf(project, room, context), await linesOf(after, room, context)];
  const changes = [...new Set([...was, ...now].map(({ item }) => item))].flatMap((item) =>
    changesOf(item, was, now, context),
  );
  const saved = isPart(await context.desk?.share()) ? 0 : project.kept.length;
  const rows = changes.map(({ label, from, to }) => [label, from, to]);
  return {
    brief: changes.slice(0, MOST_BRIEF).map(({ brief }) => brief),
    blocks:
      rows.length === 0 ? [] : [{ kind: 'table', title: MEASURE.figuresTitle, columns: MEASURE.figureColumns, rows }],
    notes: [
      ...(rows.length === 0 && now.length > 0 ? [MEASURE.sameLists] : []),
      ...(saved > 0 ? [SAVED.stay(saved)] : []),
    ],
  };
}

/** What is to be bought for a project as it would be; for a helper with a part of it, the planks of the room. */
async function linesOf(project: Project, room: Room, context: Context): Promise<readonly Line[]> {
  const share = await context.desk?.share();
  if (!share || !isPart(share)) return (await listOf(project, context)).lines;
  if (!covers(share, 'floor planks')) return [];
  const { outcome } = await context.ask(`floor planks room: ${room.name}`, project);
  return 'headline' in outcome ? mergeNeeds(outcome.needs ?? []) : [];
}

interface Change {
  readonly label: string;
  readonly from: string;
  readonly to: string;
  readonly brief: string;
}

function changesOf(item: string, was: readonly Line[], now: readonly Line[], { habits }: Context): readonly Change[] {
  const [before, after] = [was.find((one) => one.item === item), now.find((one) => one.item === item)];
  const some = after ?? before;
  if (!some) return [];
  const amount = (line: Line | undefined): string => sayAmount(some, line ? (line.count ?? line.amount) : 0, habits);
  const [from, to] = [amount(before), amount(after)];
  const ofPlanks = item.startsWith('plank') && some.unit === 'count' && some.package !== undefined;
  const planks = ofPlanks ? planksOf(before, after) : undefined;
  const brief = ofPlanks ? MEASURE.cartons(String(before?.count ?? 0), to) : MEASURE.figure(some.label, from, to);
  const sold = from === to ? [] : [{ label: some.label, from, to, brief }];
  return [...(planks ? [planks] : []), ...sold];
}

/** Planks by the piece, before they are rounded up to cartons. */
function planksOf(before: Line | undefined, after: Line | undefined): Change | undefined {
  const [from, to] = [before, after].map((line) => String(Math.ceil((line?.amount ?? 0) - 1e-9)));
  if (from === undefined || to === undefined || from === to) return undefined;
  return { label: MEASURE.planksLabel, from, to, brief: MEASURE.planks(from, to) };
}
