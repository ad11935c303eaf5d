/** `prep tearout`: strips to cut and roll, what comes up, what it weighs, and how it leaves. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { asbestosFigures, LEAD_YEARS, leadFigures, MINOR_WORK } from '../../src/figures/old-materials-figures.ts';
import { cautionsFor } from '../../src/figures/safety-figures.ts';
import {
  BAG,
  BUNDLE,
  debrisFigures,
  GULLY,
  LAID_WEIGHT,
  PAD_STAPLES,
  TACK_STRIP,
  TACK_STRIP_PIECE,
  tearoutFigures,
  WIDE_TACK_STRIP,
} from '../../src/figures/tearout-figures.ts';
import { type Saying, sayArea, sayHours, sayLength, sayLoose, sayNumber, sayWeight } from '../../src/input/format.ts';
import { type Country, disturbedArea, isMinor } from '../../src/prep/old-materials.ts';
import {
  type Covering,
  handLoads,
  isRolled,
  kilogramsOf,
  LITRES_PER_CUBIC_YARD,
  type Strips,
  tackStripPieces,
  tackStripReach,
} from '../../src/prep/tearout-amounts.ts';
import type { Need } from '../../src/reply/need.ts';
import { type Action, type Block, type Fact, type Result, reply, type Source } from '../../src/reply/reply.ts';
import { worded } from '../../src/text/caution-text.ts';
import { doorwaysTooWide, notACovering, tooHeavy } from '../../src/text/prep-problems-text.ts';
import { NEEDS } from '../../src/text/shopping-text.ts';
import { COVERING_NAMES, TEAROUT, TEAROUT_FIRST, tearoutSteps } from '../../src/text/tearout-text.ts';
import { boxOf, type Outline } from '../../src/units/geometry.ts';
import { areaOf, inches } from '../../src/units/length.ts';
import { assumedWith, countryOf, houseVerdict, sharedAsk, toProve } from './prep-options.ts';
import {
  areaOfRooms,
  rolledWeight,
  sumTearout,
  type Tearout,
  type TearoutAsk,
  tackStripOf,
  tearoutOptions,
} from './tearout-sums.ts';

// The headline, the strips and the facts of a tear-out, in words.

function sayingOf({ room }: TearoutAsk, { preferences }: Context): Saying {
  return { units: room.units, decimal: preferences.decimal };
}

function sayHaul({ trips, container }: Tearout, { vehicle }: TearoutAsk, saying: Saying): string {
  if (vehicle.kind === 'pickup') return TEAROUT.pickup(trips);
  if (vehicle.kind === 'trailer') return TEAROUT.trailer(trips);
  return TEAROUT.container(trips, sayLoose((container ?? 0) * LITRES_PER_CUBIC_YARD, saying));
}

/** The answer in one line. */
function tearoutHeadline(tearout: Tearout, ask: TearoutAsk, context: Context): string {
  const saying = sayingOf(ask, context);
  const [total, haul] = [sayWeight(tearout.kilograms, saying), sayHaul(tearout, ask, saying)];
  const strips = tearout.rooms.flatMap((room) => room.strips);
  const [first] = strips;
  if (!first)
    return TEAROUT.stacks(COVERING_NAMES[tearout.covering], tearout.loads, sayWeight(ask.carry, saying), total, haul);
  const count = strips.reduce((sum, strip) => sum + strip.count, 0);
  const same = strips.every(({ width, length }) => width === first.width && length === first.length);
  const size = same ? TEAROUT.size(sayLength(first.width, saying), sayLength(first.length, saying)) : undefined;
  const all = tearout.covering === 'carpet' ? TEAROUT.withPad(total) : TEAROUT.inAll(total);
  return TEAROUT.strips(count, size, sayWeight(heaviest(strips), saying), all, haul);
}

/** Everything but lead and the steps. */
function tearoutBlocks(tearout: Tearout, ask: TearoutAsk, context: Context): readonly Block[] {
  const saying = sayingOf(ask, context);
  return [
    ...(tearout.covering === 'tile' ? [{ kind: 'text' as const, text: TEAROUT.tileOnly }] : []),
    ...(isRolled(tearout.covering) ? [stripsTable(tearout, saying)] : []),
    { kind: 'facts', title: TEAROUT.carryTitle, facts: carryFacts(tearout, ask, saying) },
    ...(tearout.covering === 'carpet'
      ? [{ kind: 'facts' as const, title: TEAROUT.fixTitle, facts: fixFacts(tearout, ask, saying) }]
      : []),
    { kind: 'facts', title: TEAROUT.needTitle, facts: needFacts(tearout, saying) },
  ];
}

function stripsTable({ rooms }: Tearout, saying: Saying): Block {
  const rows = rooms.flatMap(({ name, strips }) =>
    strips.map(({ width, length, count, kilograms }) => [
      name,
      String(count),
      sayLength(width, saying),
      sayLength(length, saying),
      sayWeight(kilograms, saying),
    ]),
  );
  return { kind: 'table', title: TEAROUT.stripsTitle, columns: TEAROUT.stripsColumns, rows };
}

function carryFacts(tearout: Tearout, ask: TearoutAsk, saying: Saying): readonly Fact[] {
  const say = (kilograms: number) => sayWeight(kilograms, saying);
  const { covering, kilograms, light, litres } = tearout;
  const { said, value } = LAID_WEIGHT[covering];
  const rate = (perSquareMetre: number) => sayNumber(perSquareMetre, saying, 1);
  const usual = saying.units === 'imperial' ? said : `${rate(value.light)}–${rate(value.heavy)} kg/m²`;
  return [
    { label: TEAROUT.area, value: sayArea(tearout.area, saying) },
    {
      label: TEAROUT.weight,
      value:
        ask.weight === undefined ? TEAROUT.usual(say(light), say(kilograms), usual) : TEAROUT.given(say(kilograms)),
    },
    ...(covering === 'carpet'
      ? [
          {
            label: TEAROUT.carpetAlone,
            value: TEAROUT.carpetAloneOf(
              say(kilogramsOf(tearout.area, rolledWeight(ask, covering))),
              say(kilograms - kilogramsOf(tearout.area, rolledWeight(ask, covering))),
            ),
          },
        ]
      : []),
    { label: TEAROUT.volume, value: sayLoose(litres, saying) },
    { label: TEAROUT.haul, value: sayHaul(tearout, ask, saying) },
    { label: TEAROUT.kerb, value: kerb(tearout, ask, saying) },
  ];
}

/** Whether rolls keep to the hauler's rule: a roll is as long as its strip is wide. */
function kerb({ rooms, kilograms }: Tearout, ask: TearoutAsk, saying: Saying): string {
  const [longest, weight] = [sayLength(ask['bundle-length'], saying), sayWeight(ask['bundle-weight'], saying)];
  const strips = rooms.flatMap((room) => room.strips);
  if (strips.length === 0) {
    return TEAROUT.kerbStack(longest, weight, handLoads(kilograms, Math.min(ask.carry, ask['bundle-weight'])));
  }
  const wide = Math.max(...strips.map(({ width }) => width));
  const fits = wide <= ask['bundle-length'] && heaviest(strips) <= ask['bundle-weight'];
  if (!fits) return TEAROUT.kerbNot(longest, weight);
  const [rolls, aWeek] = [strips.reduce((sum, strip) => sum + strip.count, 0), BUNDLE.value.aWeek];
  return TEAROUT.kerbFits(longest, weight, rolls, aWeek, Math.ceil(rolls / aWeek));
}

function fixFacts({ tackStrip, staples }: Tearout, ask: TearoutAsk, saying: Saying): readonly Fact[] {
  const piece = TACK_STRIP_PIECE.value;
  const wide = ask.room.rooms.some(({ outline }) => longestSide(outline) > WIDE_TACK_STRIP.value.beyond);
  const reach = tackStripReach(GULLY.value, wide ? WIDE_TACK_STRIP.value.reach : TACK_STRIP.value);
  const pieces = tackStripPieces(tackStrip, piece);
  const { breadth, least, most } = PAD_STAPLES.value;
  const [broad, far, close] = [breadth, least.spacing, most.spacing].map((ticks) => sayLength(ticks, saying));
  const counted =
    ask.below.ground === 'concrete'
      ? TEAROUT.noStaples
      : TEAROUT.staplesRange(staples[0], staples[1], broad ?? '', far ?? '', close ?? '');
  return [
    {
      label: TEAROUT.tackStrip,
      value:
        TEAROUT.tackPieces(sayLength(tackStrip, saying), pieces, sayLength(piece, saying)) +
        (wide ? TEAROUT.tackDoubled(sayLength(WIDE_TACK_STRIP.value.beyond, saying), 2 * pieces) : ''),
    },
    { label: TEAROUT.tackReach, value: TEAROUT.reach(sayLength(reach, saying), sayLength(GULLY.value, saying)) },
    { label: TEAROUT.staples, value: counted },
  ];
}

function needFacts({ bags, blades, masks, hours: [least, most], covering }: Tearout, saying: Saying): readonly Fact[] {
  const { pad, rubble, dust } = TEAROUT.bagged;
  const what = covering === 'carpet' ? pad : covering === 'tile' ? rubble : dust;
  const knife = isRolled(covering) ? [{ label: TEAROUT.blades, value: String(blades) }] : [];
  return [
    { label: TEAROUT.bags, value: TEAROUT.bagsValue(bags, BAG.said, what) },
    ...knife,
    { label: TEAROUT.masks, value: TEAROUT.masksValue(masks) },
    { label: TEAROUT.hours, value: TEAROUT.hoursValue(sayHours(least, saying), sayHours(most, saying)) },
  ];
}

function longestSide(outline: Outline): number {
  const { minX, minY, maxX, maxY } = boxOf(outline);
  return Math.max(maxX - minX, maxY - minY);
}

function heaviest(strips: readonly Strips[]): number {
  return Math.max(...strips.map(({ kilograms }) => kilograms));
}

// Painted trim of a tear-out against the rule for minor work on old paint.

/** What the told trim comes to and what that means; nothing where no trim is told. */
function leadBlock(ask: TearoutAsk, context: Context): readonly Block[] {
  const { trim, built, room } = ask;
  if (trim.length === 0) return [];
  const area = disturbedArea(trim);
  const said = sayArea(area, { units: room.units, decimal: context.preferences.decimal });
  const country = countryOf(ask, context);
  const year = LEAD_YEARS[country].value;
  const old = built === undefined || built < year;
  const american = isMinor(area, MINOR_WORK.value) ? TEAROUT.minor : TEAROUT.beyond;
  const where = room.rooms.length > 1 ? `, ${TEAROUT.severalRooms}` : '';
  return [
    {
      kind: 'facts',
      title: TEAROUT.leadTitle,
      facts: [
        { label: TEAROUT.leadArea, value: `${said}${where}` },
        country === 'us'
          ? { label: TEAROUT.leadVerdict, value: old ? american : TEAROUT.young(year) }
          : { label: TEAROUT.leadElsewhere, value: old ? TEAROUT.testFirst(year) : TEAROUT.youngElsewhere(year) },
      ],
    },
  ];
}

// What a tear-out takes: bags, blades, masks, and a container where one is told.

/** Parts of a bag, a blade and a mask, not yet whole ones. */
function tearoutNeeds({ exact, container, trips, blades, rooms }: Tearout): readonly Need[] {
  const only = rooms.length === 1 ? rooms[0]?.name : undefined;
  const need = (item: string, label: string, amount: number, sold: { label: string; labels: string }): Need => ({
    item,
    label,
    stage: 'tear-out',
    quantity: { unit: 'count', amount },
    package: { size: 1, ...sold },
    ...(only ? { room: only } : {}),
  });
  return [
    need('contractor bag', NEEDS.bags(BAG.said), exact.bags, NEEDS.bag),
    ...(blades > 0 && rooms.length > 0 ? [need('knife blade', NEEDS.blades, exact.blades, NEEDS.blade)] : []),
    need('mask n95', NEEDS.masks, exact.masks, NEEDS.mask),
    ...(container === undefined ? [] : [need(`container ${container}`, NEEDS.container(container), trips, NEEDS.hire)]),
  ];
}

// From the options of `prep tearout` to its answer, its Problems, or the Refusal that its floor asks for.

/** Beyond this many rolls no plan helps; a floor of the usual weight, at the least lift read, stays below. */
const MOST_ROLLS = 20_000;

/** Strips, weights and the order of work. */
function answerTearout(ask: TearoutAsk, context: Context): Outcome {
  const house = houseVerdict(ask, context);
  if (typeof house === 'object') return house;
  const got = (option: string) => ({ option, got: context.optionTexts.get(option) ?? '' });
  const { covering } = ask.floor;
  if (covering === undefined) return { problems: [notACovering(got('floor'))] };
  const walls = tackStripOf(ask);
  if (walls === undefined) return { problems: [doorwaysTooWide(got('doors'))] };
  if (isRolled(covering) && isTooHeavy(ask, covering)) return { problems: [tooHeavy(got('weight'))] };
  const tearout = sumTearout(ask, covering, walls);
  const headline = tearoutHeadline(tearout, ask, context);
  return reply({
    headline: house === 'proof' ? TEAROUT.proofFirst(toProve(ask, context), headline) : headline,
    blocks: [...tearoutBlocks(tearout, ask, context), ...leadBlock(ask, context), stepsBlock(tearout, ask, house)],
    assumed: assumedWith(ask, context),
    cautions: worded(hazardsOf(covering)),
    sources: sourcesOf(tearout, ask, countryOf(ask, context)),
    actions: nextAsks(ask, context),
    data: resultOf(tearout, ask),
    needs: tearoutNeeds(tearout),
  });
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

export default defineCommand({
  group: 'prep',
  name: 'tearout',
  summary: 'The old floor out: strips to cut and roll, weight, trips, order of work',
  options: z.object(tearoutOptions),
  examples: [
    {
      ask: 'tearout room: 12x14, built: 1995',
      headline: `Cut 4 strips of 3' x 14', 21 lb a roll: 187 lb in all with its pad, 1 pickup load.`,
    },
    {
      ask: "tearout room: living 14' x 16' + 3x8 bay; bedroom 11' x 12'6\"; closet 3x5; hall 3'6\" x 14', built: 1962, doors: 5 x 30 in, trim: 40 ft x 3 in, insurer: yes, vehicle: container",
      headline: 'Cut 13 strips, no roll over 22 lb: 499 lb in all with its pad, a 10 cu yd container.',
    },
    {
      ask: 'tearout room: 3.8 x 4.2 m, floor: click vinyl plank, built: 2011',
      headline: 'Carry the vinyl plank out in 11 loads of at most 16 kg: 171 kg in all, 1 pickup load.',
    },
    {
      ask: 'tearout room: 5x8, floor: ceramic tile, built: 1990',
      headline: 'Carry the ceramic tile out in 12 loads of at most 35 lb: 400 lb in all, 1 pickup load.',
    },
  ],
  run: (options, context) => answerTearout(options, context),
});
