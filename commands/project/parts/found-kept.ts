/** What saved answers tell of what was found: worked out today, room by room, in plain sentences with areas and quantities. */

import type { Context, Outcome } from '../../../src/chat/command.ts';
import { parseLine } from '../../../src/chat/grammar.ts';
import { sayArea, sayAreasOfSum, sayCut, sayWeight } from '../../../src/input/format.ts';
import type { Habits } from '../../../src/input/reading.ts';
import { roomOfArea } from '../../../src/input/rooms/rooms-apart.ts';
import { mergeNeeds } from '../../../src/project/needs.ts';
import type { Project } from '../../../src/project/project.ts';
import { sameName } from '../../../src/project/project-room.ts';
import type { Caution, Reply } from '../../../src/reply/reply.ts';
import { FOUND } from '../../../src/text/found-text.ts';
import { type Area, ticks } from '../../../src/units/length.ts';
import type { LevelResult } from '../../prep/level.ts';
import type { MoistureResult } from '../../prep/moisture.ts';
import type { PatchResult } from '../../prep/patch.ts';
import type { SqueaksResult } from '../../prep/squeaks.ts';
import type { TearoutResult } from '../../prep/tearout.ts';
import { asksOnce } from './asked-once.ts';
import { OF_PLACES } from './saved-work.ts';
import { type JobAsk, listAsks, savedTearouts } from './shopping-asks.ts';
import { sayAmount } from './shopping-say.ts';

/** Where something is: a room, several together, or not given. */
export type Place = { readonly room: string } | 'together' | 'not given';

/** A sentence about a place; `call` where it is not for the asker to do. */
export interface Told {
  readonly place: Place;
  readonly text: string;
  /** Square ticks, where the sentence is about an area. */
  readonly area?: number;
  readonly call?: { readonly why: string; readonly who: string };
  readonly cautions: readonly Caution[];
  /** The number of the saved answer whose room is not given. */
  readonly unplaced?: number;
}

/** Every saved answer of that kind as it is today, tear-outs first. */
export async function keptFindings(project: Project, context: Context): Promise<readonly Told[]> {
  const ask = await asksOnce(project, context);
  const told: Told[] = [];
  for (const one of savedTearouts(project, context)) {
    const { outcome, line } = await ask(one.line);
    told.push(...('headline' in outcome ? comesOut(outcome, line, one, project, context) : [unsaid(outcome, one)]));
  }
  for (const one of listAsks(project, context).asks.filter(({ name }) => OF_PLACES.includes(name))) {
    const { outcome } = await ask(one.line);
    const [room, ...more] = one.rooms;
    const no = project.kept.findIndex(({ id }) => id === one.saved) + 1;
    const placed = room !== undefined && more.length === 0;
    told.push({
      ...('headline' in outcome ? sentenceOf(outcome, foundIn(one, context), context.habits) : unsaid(outcome, one)),
      place: placed ? { room } : 'not given',
      ...(!placed && { unplaced: no }),
    });
  }
  return told;
}

/** What comes out of each room, and of all together. */
function comesOut(
  reply: Reply,
  line: string,
  { rooms }: JobAsk,
  { rooms: all }: Project,
  context: Context,
): readonly Told[] {
  const { habits } = context;
  const { area, kilograms, rooms: areas } = reply.data as TearoutResult;
  const parsed = parseLine(line, context.commands, habits);
  const shapes = parsed.ok ? (parsed.told.get('room') ?? '') : '';
  const roomOf = roomOfArea(shapes, { option: 'room', habits, note: () => undefined });
  const byRoom = all
    .filter(({ name }) => rooms.includes(name))
    .map(({ name }) => ({
      name,
      area: areas
        .filter((one) => sameName(roomOf.get(one.name) ?? one.name, name))
        .reduce((sum, one) => sum + one.area, 0),
    }));
  const whole = FOUND.tearout(sayArea(square(area), habits), sayWeight(kilograms, habits));
  const takes = takenBy(reply, habits);
  const { cautions } = reply;
  const [only, ...more] = byRoom;
  if (only && more.length === 0) return [{ place: { room: only.name }, text: `${whole}${takes}`, area, cautions }];
  const said = sayAreasOfSum(
    byRoom.map((one) => square(one.area)),
    habits,
  );
  return [
    ...byRoom.map((one, i) => ({
      place: { room: one.name },
      text: FOUND.tearoutHere(said[i] ?? ''),
      area: one.area,
      cautions: [],
    })),
    { place: 'together', text: `${FOUND.tearoutOf(rooms)}${whole}${takes}`, area, cautions },
  ];
}

function square(area: number): Area {
  return BigInt(Math.round(area));
}

/** A refusal, or what cannot be worked out: no figure of the saved answer stands in for it. */
function unsaid(outcome: Exclude<Outcome, Reply>, { name, rooms }: JobAsk): Told {
  const [room, ...more] = rooms;
  const place: Place = room === undefined ? 'not given' : more.length > 0 ? 'together' : { room };
  if (!('why' in outcome)) return { place, text: FOUND.unanswered(name, outcome.problems[0].expected), cautions: [] };
  return {
    place,
    text: FOUND.refused(name),
    call: { why: outcome.why, who: outcome.call },
    cautions: outcome.cautions,
  };
}

function foundIn({ line }: JobAsk, { commands, habits }: Context): string | undefined {
  const parsed = parseLine(line, commands, habits);
  return parsed.ok ? parsed.told.get('found') : undefined;
}

function sentenceOf(reply: Reply, found: string | undefined, habits: Habits): Omit<Told, 'place'> {
  const beside = found === undefined || found === 'none' ? '' : FOUND.beside(found);
  return { text: `${dataSentence(reply, habits)}${beside}${takenBy(reply, habits)}`, cautions: reply.cautions };
}

function takenBy({ needs = [] }: Reply, habits: Habits): string {
  const things = mergeNeeds(needs).map((line) => `${line.label} ${sayAmount(line, line.count ?? line.amount, habits)}`);
  return things.length > 0 ? FOUND.takes(things) : '';
}

type Known = PatchResult | LevelResult | SqueaksResult | MoistureResult;

function dataSentence({ data, headline }: Reply, habits: Habits): string {
  const known = data as Known;
  if (known.kind === 'patch') {
    const [[x0 = 0, y0 = 0] = [], , [x1 = 0, y1 = 0] = []] = known.cut;
    const area = BigInt(x1 - x0) * BigInt(y1 - y0);
    return FOUND.patch(sayCut(ticks(x1 - x0), habits), sayCut(ticks(y1 - y0), habits), sayArea(area, habits));
  }
  if (known.kind === 'level') return known.flat ? FOUND.flat : FOUND.notFlat(headline);
  if (known.kind === 'squeaks') return FOUND.squeaks(known.screws, sayCut(ticks(known.length), habits));
  return FOUND.moisture(headline);
}
