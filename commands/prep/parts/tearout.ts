/** From the options of `prep tearout` to its answer, its Problems, or the Refusal that its floor asks for. */

import type { Context, Outcome } from '../../../src/chat/command.ts';
import { asbestosFigures, leadFigures } from '../../../src/figures/old-materials-figures.ts';
import { cautionsFor } from '../../../src/figures/safety-figures.ts';
import { debrisFigures, tearoutFigures } from '../../../src/figures/tearout-figures.ts';
import type { Country } from '../../../src/prep/old-materials.ts';
import { type Covering, isRolled, kilogramsOf } from '../../../src/prep/tearout-amounts.ts';
import type { Action, Block, Result, Source } from '../../../src/reply/reply.ts';
import { worded } from '../../../src/text/caution-text.ts';
import { doorwaysTooWide, notACovering, tooHeavy } from '../../../src/text/prep-problems-text.ts';
import { TEAROUT, TEAROUT_FIRST, tearoutSteps } from '../../../src/text/tearout-text.ts';
import { areaOf, inches } from '../../../src/units/length.ts';
import { countryOf, houseVerdict, sharedAsk, toProve } from './house.ts';
import { assumedWith } from './not-told.ts';
import { tearoutBlocks, tearoutHeadline } from './tearout-facts.ts';
import { leadBlock } from './tearout-lead.ts';
import { tearoutNeeds } from './tearout-needs.ts';
import { areaOfRooms, rolledWeight, sumTearout, type Tearout, type TearoutAsk, tackStripOf } from './tearout-sums.ts';

/** Beyond this many rolls no plan helps; a floor of the usual weight, at the least lift read, stays below. */
const MOST_ROLLS = 20_000;

/** Strips, weights and the order of work. */
export function answerTearout(ask: TearoutAsk, context: Context): Outcome {
  const house = houseVerdict(ask, context);
  if (typeof house === 'object') return house;
  const got = (option: string) => ({ option, got: context.told.get(option) ?? '' });
  const { covering } = ask.floor;
  if (covering === undefined) return { problems: [notACovering(got('floor'))] };
  const walls = tackStripOf(ask);
  if (walls === undefined) return { problems: [doorwaysTooWide(got('doors'))] };
  if (isRolled(covering) && isTooHeavy(ask, covering)) return { problems: [tooHeavy(got('weight'))] };
  const tearout = sumTearout(ask, covering, walls);
  const headline = tearoutHeadline(tearout, ask, context);
  return {
    headline: house === 'proof' ? TEAROUT.proofFirst(toProve(ask, context), headline) : headline,
    blocks: [...tearoutBlocks(tearout, ask, context), ...leadBlock(ask, context), stepsBlock(tearout, ask, house)],
    assumed: assumedWith(ask, context),
    cautions: worded(hazardsOf(covering)),
    sources: sourcesOf(tearout, ask, countryOf(ask, context)),
    actions: nextAsks(ask, context),
    audience: 'asker',
    data: resultOf(tearout, ask),
    needs: tearoutNeeds(tearout),
  };
}

/** Whether an inch of a strip outweighs a roll, or rolls come to more than anyone cuts: no floor weighs that, a slip of a unit does. */
function isTooHeavy(ask: TearoutAsk, covering: Covering): boolean {
  const each = rolledWeight(ask, covering);
  const inch = kilogramsOf(areaOf(ask.strip, inches(1)), each);
  return inch > ask.carry || kilogramsOf(areaOfRooms(ask.room.rooms), each) / ask.carry > MOST_ROLLS;
}

/** The hazards of a tear-out; tack strip only where carpet lies. */
function hazardsOf(covering: Covering) {
  return cautionsFor('tear-out').filter(({ topic }) => topic !== 'tack-strip' || covering === 'carpet');
}

/** Result data of kind `tearout`: lengths in ticks, areas in square ticks, kilograms, litres. */
export interface TearoutResult
  extends Result,
    Pick<Tearout, 'tackStrip' | 'kilograms' | 'litres' | 'trips' | 'staples'> {
  readonly kind: 'tearout';
  readonly area: number;
  /** Room by room, as they were read: an area joined to a room by itself. */
  readonly rooms: readonly { readonly name: string; readonly area: number }[];
  readonly strips: Tearout['rooms'][number]['strips'];
}

function resultOf(
  { area, rooms, tackStrip, kilograms, litres, trips, staples }: Tearout,
  { room }: TearoutAsk,
): TearoutResult {
  const strips = rooms.flatMap((one) => one.strips);
  const areas = room.rooms.map((one) => ({ name: one.name, area: Number(areaOfRooms([one])) }));
  return {
    kind: 'tearout',
    area: Number(area),
    rooms: areas,
    strips,
    tackStrip,
    kilograms,
    litres,
    trips,
    staples,
  };
}

function stepsBlock({ covering }: Tearout, ask: TearoutAsk, house: 'proof' | 'go'): Block {
  const first = [
    ...(ask.insurer === 'yes' ? [TEAROUT_FIRST.photos] : []),
    ...(house === 'proof' ? [TEAROUT_FIRST.proof] : []),
    ...(covering === 'tile' || ask.tested === 'clear' || house === 'proof' ? [] : [TEAROUT_FIRST.look]),
  ];
  return {
    kind: 'steps',
    title: TEAROUT.stepsTitle,
    steps: [...first, ...tearoutSteps(covering, ask.tested === 'clear')],
  };
}

function sourcesOf({ covering }: Tearout, { trim }: TearoutAsk, country: Country): readonly Source[] {
  const figures = [...tearoutFigures(covering), ...debrisFigures(covering), ...asbestosFigures(country)];
  return [...figures, ...(trim.length > 0 ? leadFigures(country) : [])].map(({ source }) => source);
}

function nextAsks({ vehicle }: TearoutAsk, context: Context): readonly Action[] {
  const other = vehicle.kind === 'container' ? 'pickup' : 'container';
  return [
    { label: TEAROUT.actions[other], ask: context.again({ vehicle: other }) },
    { label: TEAROUT.actions.plan, ask: sharedAsk('plan', context) },
  ];
}
