/** Kept answers about what was found, asked again and said in plain sentences with areas and quantities. */

import type { Context, Outcome } from '../../../src/bot/command.ts';
import { fullName } from '../../../src/bot/command.ts';
import { parseLine } from '../../../src/bot/grammar.ts';
import { ticks } from '../../../src/core/length.ts';
import { roomIn } from '../../../src/measure/finding.ts';
import type { Habits } from '../../../src/measure/reading.ts';
import { sayArea, sayWeight } from '../../../src/measure/say.ts';
import { sayCut } from '../../../src/measure/say-length.ts';
import { mergeNeeds } from '../../../src/project/needs-merged.ts';
import type { Project } from '../../../src/project/project.ts';
import type { Caution } from '../../../src/reply/caution.ts';
import type { Reply } from '../../../src/reply/reply.ts';
import { FOUND } from '../../../src/words/found.ts';
import type { LevelResult } from '../../prep/parts/level.ts';
import type { MoistureResult } from '../../prep/parts/moisture.ts';
import type { PatchResult } from '../../prep/parts/patch-result.ts';
import type { SqueaksResult } from '../../prep/parts/squeaks.ts';
import { sayAmount } from './shopping-say.ts';

/** A sentence about a place; `call` where it is not for the asker to do. */
export interface Told {
  readonly room: string | undefined;
  readonly text: string;
  readonly call?: { readonly why: string; readonly who: string };
  readonly cautions: readonly Caution[];
}

const COMMANDS = ['prep tearout', 'prep patch', 'prep squeaks', 'prep level', 'prep moisture'];

/** Every kept answer of that kind, in the order kept. One that cannot be answered any more is left to its own command. */
export async function keptFindings({ kept, rooms }: Project, context: Context): Promise<readonly Told[]> {
  const names = rooms.map(({ name }) => name);
  const told: Told[] = [];
  for (const { ask, headline } of kept) {
    const parsed = parseLine(ask, context.commands, context.habits);
    if (!parsed.ok || !COMMANDS.includes(fullName(parsed.command))) continue;
    const { outcome } = await context.ask(ask);
    const room = roomIn([...parsed.told.values()].join(' ; '), names);
    told.push({ room, ...sentenceOf(outcome, headline, parsed.told.get('found'), context.habits) });
  }
  return told;
}

function sentenceOf(outcome: Outcome, before: string, found: string | undefined, habits: Habits): Omit<Told, 'room'> {
  if ('why' in outcome) {
    return { text: before, call: { why: outcome.why, who: outcome.call }, cautions: outcome.cautions };
  }
  if ('problems' in outcome) return { text: before, cautions: [] };
  const things = mergeNeeds(outcome.needs ?? []).map(
    (line) => `${line.label} ${sayAmount(line, line.count ?? line.amount, habits)}`,
  );
  const beside = found === undefined || found === 'none' ? '' : FOUND.beside(found);
  const takes = things.length > 0 ? FOUND.takes(things) : '';
  return { text: `${dataSentence(outcome, habits)}${beside}${takes}`, cautions: outcome.cautions };
}

type Known = PatchResult | LevelResult | SqueaksResult | MoistureResult | TearoutData;

interface TearoutData {
  readonly kind: 'tearout';
  readonly area: number;
  readonly kilograms: number;
}

function dataSentence({ data, headline }: Reply, habits: Habits): string {
  const known = data as Known;
  if (known.kind === 'patch') {
    const [[x0 = 0, y0 = 0] = [], , [x1 = 0, y1 = 0] = []] = known.cut;
    const area = BigInt(x1 - x0) * BigInt(y1 - y0);
    return FOUND.patch(sayCut(ticks(x1 - x0), habits), sayCut(ticks(y1 - y0), habits), sayArea(area, habits));
  }
  if (known.kind === 'level') return known.flat ? FOUND.flat : FOUND.notFlat(headline);
  if (known.kind === 'squeaks') return FOUND.squeaks(known.screws, sayCut(ticks(known.length), habits));
  if (known.kind === 'moisture') return FOUND.moisture(headline);
  return FOUND.tearout(sayArea(BigInt(Math.round(known.area)), habits), sayWeight(known.kilograms, habits));
}
