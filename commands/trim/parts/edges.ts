/** From the options of `trim edges` to its answers. */

import type { Context, Outcome } from '../../../src/chat/command.ts';
import { ALIKE_RISERS, EDGE_FIGURES, TRIP } from '../../../src/figures/trim-figures.ts';
import { type Saying, sayCut, sayLength } from '../../../src/input/format.ts';
import { unitIn, unitsOf } from '../../../src/input/parse-length.ts';
import type { Block, Caution, Reply } from '../../../src/reply/reply.ts';
import { NEEDS } from '../../../src/text/shopping-text.ts';
import { edgeTooLong, floorTaken, noEdges } from '../../../src/text/trim-problems-text.ts';
import { EDGES, riserText, sayProfile } from '../../../src/text/trim-text.ts';
import { stepOf, undercut } from '../../../src/trim/pieces.ts';
import { SQUARE } from '../../../src/trim/walls.ts';
import { ticks } from '../../../src/units/length.ts';
import { cuttingTable, sayBought, sayCost } from './bought.ts';
import { cautionsOf } from './cautions.ts';
import { type Edge, type EdgesAsk, edgesOf, type ProfilePlan, profilePlans } from './edge-pieces.ts';
import { longerStick, longestPiece } from './pieces.ts';
import { trimResult } from './result.ts';
import { stickNeeds, toBuy } from './stick-needs.ts';

export async function* answerEdges(ask: EdgesAsk, context: Context): AsyncGenerator<Outcome> {
  const saying = sayingOf(context);
  const edges = edgesOf(ask);
  if (edges.length === 0) {
    yield { problems: [noEdges(saying.units === 'metric' ? '800 mm to tile 10 mm' : 'bath 30 in to tile 1/2 in')] };
    return;
  }
  const long = edges.filter(({ length }) => length > longestPiece(ask)).sort((a, b) => b.length - a.length)[0];
  if (long) {
    const longer = sayLength(longerStick(long.length, saying), saying);
    const told = context.told.get('stock');
    yield { problems: [edgeTooLong(long.name, sayLength(long.length, saying), told ? `${told}; ${longer}` : longer)] };
    return;
  }
  context.begin();
  for await (const plans of profilePlans(edges, ask)) yield replyOf(ask, edges, plans, saying, context);
}

/** How lengths are said: in the units that the doorways or the stairs were typed in, else by habit. */
function sayingOf({ told, habits }: Context): Saying {
  const unit = unitIn(told.get('doorways') ?? '') ?? unitIn(told.get('stairs') ?? '');
  return { units: unit === undefined ? habits.units : unitsOf(unit), decimal: habits.decimal };
}

function replyOf(
  ask: EdgesAsk,
  edges: readonly Edge[],
  plans: readonly ProfilePlan[],
  saying: Saying,
  context: Context,
): Reply {
  const sum = (of: (plan: ProfilePlan['plan']) => number): number =>
    plans.reduce((total, { plan }) => total + of(plan), 0);
  const bought = sum(({ sticks }) => sticks.filter(({ stock }) => ask.stock.items[stock]?.have === undefined).length);
  const counts = plans.map(({ profile, task }) => [profile, task.pieces.length] as const);
  return {
    headline: EDGES.headline(
      counts,
      bought,
      sayCost(
        sum(({ cents }) => cents),
        ask.stock,
        saying,
      ),
    ),
    blocks: [
      doorwayTable(ask, edges, saying),
      {
        kind: 'facts',
        title: EDGES.buyTitle,
        facts: [
          ...plans.map(({ profile, plan, task }) => ({
            label: sayProfile(profile),
            value: EDGES.buy(sayBought(plan, task, ask.stock, saying), sayCost(plan.cents, ask.stock, saying)),
          })),
          {
            label: EDGES.undercut,
            value: EDGES.undercutValue(
              sayCut(undercut(ask.floor, ask.clearance), saying),
              sayCut(ask.floor, saying),
              sayCut(ask.clearance, saying),
            ),
          },
        ],
      },
      ...plans.map(({ profile, plan, task }) => cuttingTable(plan, task, saying, EDGES.cutTitle(profile))),
      {
        kind: 'steps',
        title: EDGES.stepsTitle,
        steps: [...EDGES.steps(sayCut(TRIP.value, saying)), ...(ask.stairs.count > 0 ? EDGES.nosingSteps : [])],
      },
    ],
    assumed: [...context.assumed, ...(context.told.has('floor') ? [] : [floorTaken(sayLength(ask.floor, saying))])],
    cautions: [...riserCaution(ask, saying), ...cautionsOf('laying', 'subfloor')],
    sources: EDGE_FIGURES.map(({ source }) => source),
    actions: [],
    audience: 'asker',
    data: trimResult(
      {
        stock: ask.stock,
        kerf: ask.kerf,
        endTrim: ask['end-trim'],
        thickness: 0,
        walls: edges.map(({ name, length }) => ({ name, length, corners: [90, 90] })),
        pieces: edges.map(({ name, length, profile }) => ({
          id: name,
          wall: name,
          length,
          left: SQUARE,
          right: SQUARE,
          profile: sayProfile(profile),
        })),
        glueUp: [],
        units: saying.units,
      },
      {
        sticks: plans.flatMap(({ plan }) => plan.sticks),
        cents: sum(({ cents }) => cents),
        bound: sum(({ bound }) => bound),
        proven: plans.every(({ plan }) => plan.proven),
      },
    ),
    ...toBuy(
      plans.flatMap(({ profile, plan }) =>
        stickNeeds(
          plan,
          ask.stock,
          { item: profile, label: NEEDS.profile(sayProfile(profile)), stage: 'transitions' },
          saying,
        ),
      ),
    ),
  };
}

function doorwayTable(ask: EdgesAsk, edges: readonly Edge[], saying: Saying): Block {
  const rows = edges.map(({ name, profile, length, why, doorway }) => {
    const step = doorway ? stepOf(doorway, ask.floor) : 0;
    const size = sayCut(ticks(Math.abs(step)), saying);
    const said = !doorway?.height ? '' : step === 0 ? EDGES.level : step > 0 ? EDGES.up(size) : EDGES.down(size);
    const trip = doorway?.height && Math.abs(step) > TRIP.value ? EDGES.trip(sayCut(TRIP.value, saying)) : '';
    return [name, sayProfile(profile), sayCut(length, saying), said, `${EDGES.why[why]}${trip}`];
  });
  return {
    kind: 'table',
    title: ask.doorways.length > 0 ? EDGES.title : EDGES.stairsTitle,
    columns: EDGES.columns,
    rows,
  };
}

function riserCaution({ floor, stairs }: EdgesAsk, saying: Saying): readonly Caution[] {
  if (stairs.count === 0) return [];
  const text = riserText(sayCut(floor, saying), sayCut(ALIKE_RISERS.value, saying), floor > ALIKE_RISERS.value);
  return [{ topic: 'riser', text, source: ALIKE_RISERS.source }];
}
