/** `prep tearout`: strips to cut and roll, what comes up, what it weighs, and how to get rid of it. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import {
  asbestosFigures,
  BAG,
  BUNDLE,
  debrisFigures,
  GULLY,
  LAID_WEIGHT,
  LEAD_YEARS,
  leadFigures,
  MINOR_WORK,
  TACK_STRIP,
  TACK_STRIP_PIECE,
  tearoutFigures,
  WIDE_TACK_STRIP,
} from '../../src/figures/tearout-figures.ts';
import { type Saying, sayArea, sayHours, sayLength, sayLoose, sayNumber, sayWeight } from '../../src/input/format.ts';
import {
  type Country,
  type Covering,
  disturbedArea,
  handLoads,
  isMinor,
  isRolled,
  kilogramsOf,
  LITRES_PER_CUBIC_YARD,
  type Strips,
  tackStripPieces,
  tackStripReach,
} from '../../src/prep/old-floor.ts';
import type { Need } from '../../src/reply/need.ts';
import {
  type Action,
  type Block,
  type Fact,
  type Reply,
  type Result,
  reply,
  type Source,
} from '../../src/reply/reply.ts';
import { worded } from '../../src/text/caution-text.ts';
import { doorwaysTooWide, notACovering, tooHeavy } from '../../src/text/prep-problems-text.ts';
import { NEEDS } from '../../src/text/shopping-text.ts';
import { COVERING_NAMES, TEAROUT, TEAROUT_FIRST, tearoutSteps } from '../../src/text/tearout-text.ts';
import { boxOf, type Outline } from '../../src/units/geometry.ts';
import { areaOf, inches } from '../../src/units/length.ts';
import { assumedWith, countryOf, houseVerdict, sharedAsk, tearoutHazards, toProve } from './prep-options.ts';
import {
  areaOfRooms,
  rolledWeight,
  sumTearout,
  type Tearout,
  type TearoutAsk,
  tackStripOf,
  tearoutOptions,
} from './tearout-sums.ts';

function sayingOf({ room }: TearoutAsk, { preferences }: Context): Saying {
  return { units: room.units, decimal: preferences.decimal };
}

function sayHaul({ trips, container }: Tearout, { vehicle }: TearoutAsk, saying: Saying): string {
  if (vehicle.kind === 'pickup') return TEAROUT.pickup(trips);
  if (vehicle.kind === 'trailer') return TEAROUT.trailer(trips);
  return TEAROUT.container(trips, sayLoose((container ?? 0) * LITRES_PER_CUBIC_YARD, saying));
}

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

function tearoutLines(tearout: Tearout, ask: TearoutAsk, context: Context): readonly string[] {
  const saying = sayingOf(ask, context);
  const { covering, area, kilograms, light, hours, staples, tackStrip, bags, blades, masks } = tearout;
  const [least, most] = hours.map((part) => sayHours(part, saying));
  const { lines } = TEAROUT;
  const rolled = kilogramsOf(area, rolledWeight(ask, covering));
  const weight =
    covering === 'carpet'
      ? [lines.carpet(sayWeight(rolled, saying), sayWeight(kilograms - rolled, saying))]
      : ask.weight === undefined
        ? [lines.light(sayWeight(light, saying))]
        : [];
  return [
    lines.work(COVERING_NAMES[covering], sayArea(area, saying), least ?? '', most ?? ''),
    ...weight,
    ...(covering === 'carpet'
      ? [lines.held(sayLength(tackStrip, saying), ask.below.ground === 'concrete' ? undefined : staples)]
      : []),
    lines.ready(bags, isRolled(covering) ? blades : 0, masks),
  ];
}

function tearoutLeads(tearout: Tearout, ask: TearoutAsk, context: Context): NonNullable<Reply['leads']> {
  const saying = sayingOf(ask, context);
  const [work] = tearoutLines(tearout, ask, context);
  const { covering, tackStrip, staples } = tearout;
  const wood = ask.below.ground !== 'concrete';
  const held = TEAROUT.lines.held(sayLength(tackStrip, saying), wood ? staples : undefined);
  return {
    ...(work === undefined ? {} : { time: work }),
    weight: TEAROUT.leads.weight(sayWeight(tearout.kilograms, saying), sayHaul(tearout, ask, saying)),
    bags: TEAROUT.leads.bags(tearout.bags),
    ...(covering === 'carpet' ? { strip: held } : {}),
    ...(covering === 'carpet' && wood && staples !== undefined ? { staples: TEAROUT.leads.staples(staples) } : {}),
  };
}

/** Without the lead block and the steps. */
function tearoutBlocks(tearout: Tearout, ask: TearoutAsk, context: Context): readonly Block[] {
  const saying = sayingOf(ask, context);
  return [
    ...(tearout.covering === 'tile'
      ? [{ kind: 'text' as const, section: 'how' as const, text: TEAROUT.tileOnly }]
      : []),
    ...(isRolled(tearout.covering) ? [stripsTable(tearout, saying)] : []),
    { kind: 'facts', section: 'details', title: TEAROUT.carryTitle, facts: carryFacts(tearout, ask, saying) },
    ...(tearout.covering === 'carpet'
      ? [
          {
            kind: 'facts' as const,
            section: 'details' as const,
            title: TEAROUT.fixTitle,
            facts: fixFacts(tearout, ask, saying),
          },
        ]
      : []),
    { kind: 'facts', section: 'buy', title: TEAROUT.needTitle, facts: needFacts(tearout, saying) },
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
  return { kind: 'table', section: 'cuts', title: TEAROUT.stripsTitle, columns: TEAROUT.stripsColumns, rows };
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

/** Checks rolls against the hauler's rule; a roll is as long as its strip is wide. */
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
  const counted = ask.below.ground === 'concrete' ? TEAROUT.noStaples : TEAROUT.staplesRange(staples[0], staples[1]);
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
    { label: TEAROUT.bags, value: TEAROUT.bagsValue(bags, what) },
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

/** Compares the painted trim they disturb with the US rule for minor work on old paint. Empty if no trim is given. */
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
      section: 'details',
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

/** Not rounded up: the shopping list adds them to other needs first. */
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

/**
 * Beyond this many rolls a unit is probably wrong; any real floor stays below, even at the lightest carry that can be entered.
 */
const MOST_ROLLS = 20_000;

/** Refuses a floor that may hold asbestos. */
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
    lines: tearoutLines(tearout, ask, context),
    ...(house === 'proof' ? {} : { leads: tearoutLeads(tearout, ask, context) }),
    blocks: [...tearoutBlocks(tearout, ask, context), ...leadBlock(ask, context), stepsBlock(tearout, ask, house)],
    assumed: assumedWith(ask, context),
    cautions: worded(hazardsOf(covering, ask, context)),
    sources: sourcesOf(tearout, ask, countryOf(ask, context)),
    actions: nextAsks(ask, context),
    data: resultOf(tearout, ask),
    needs: tearoutNeeds(tearout),
  });
}

/** Catches a wrong unit: an inch of strip outweighs a roll, or there are more rolls than anybody would cut. */
function isTooHeavy(ask: TearoutAsk, covering: Covering): boolean {
  const each = rolledWeight(ask, covering);
  const inch = kilogramsOf(areaOf(ask.strip, inches(1)), each);
  return inch > ask.carry || kilogramsOf(areaOfRooms(ask.room.rooms), each) / ask.carry > MOST_ROLLS;
}

/** Mentions tack strip only for carpet. */
function hazardsOf(covering: Covering, ask: TearoutAsk, context: Context) {
  return tearoutHazards(ask, context).filter(({ topic }) => topic !== 'tack-strip' || covering === 'carpet');
}

/** Lengths in ticks, areas in square ticks, kilograms, liters. */
export interface TearoutResult
  extends Result,
    Pick<Tearout, 'tackStrip' | 'kilograms' | 'litres' | 'trips' | 'staples'> {
  readonly kind: 'tearout';
  readonly area: number;
  /** As they were read, so an area added to a room is an entry of its own. */
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
    section: 'how',
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
  summary: 'Tear out the old floor: strips to cut and roll, weight, trips, order of work',
  phrases: [
    'how much does the carpet in a 12x15 room weigh',
    'tear out plan for carpet in 3 rooms',
    'how many rolls will the old carpet make',
    'weight of carpet and pad from 900 sq ft',
    'how many trips to haul out carpet from 12x14 bedroom',
    'what size dumpster for 1200 sq ft of carpet',
    'will old carpet from 2 rooms fit in my pickup',
    'how many contractor bags for the pad',
    'how heavy is a roll of carpet 12 ft by 4 ft',
    'strips to cut the carpet into for 15x18',
    'tearout of 400 sq ft of carpet how much debris',
    'how many lb of tile from a 60 sq ft bathroom',
    'how many yards dumpster for old flooring',
    'carpet removal amounts for 12x20',
    'debris volume for laminate 500 sq ft',
    'how many tack strip pieces in a 12x12 room',
    'weight of old vinyl from kitchen 10x12',
    'rip out carpet bedroom 11x12, how many bundles',
    'how much trash will the old floor make',
    'pounds of carpet in 1000 sq feet',
    'how much will the old carpet weigh, bedroom is 12x16',
    'how wide should i slice the carpet so i can carry it out alone',
    'pulling carpet in three bedrooms and a hall, how many bundles for the curb',
    'how many staples am i going to be pulling in a 13x15 room',
    'trash guy only takes bundles 4 ft long and under 50 lb, plan the strips for 11x14',
    'tearing out 900 sq ft of berber tomorrow, one pickup load or two',
    'tack strip around a 14x18 how many feet',
    'rip out plan for laminate in the den, 240 sq ft',
    "what does wet carpet with pad weigh, basement flooded, room's about 15x20",
    'need a dumpster size for carpet plus the pad out of 1,100 sq ft',
    'cut strips, roll, tape, how many for my hallway 3x22',
    "i'm taking up the carpet and underlay in a lounge 4.2 by 5.1 metres, what's it weigh",
    'how many trips to the dump with a 5x8 trailer if i pull everything upstairs',
    'old sheet vinyl out of the kitchen 11x13, how much stuff to haul',
    'how heavy is each roll if i cut 3 ft wide strips 14 ft long',
    'dont want the carpet rolls more than 40 pounds, how wide do i cut',
    'carpet demo order of work, house is from 1988',
    'how long are the gripper rods in total for a 3.6 x 3.9 room',
    'bags for tack strip and staples, two bedrooms',
    'the tile in my entry has to go, 5x9 ft, how many pounds of rubble',
    'getting rid of glued down plank in a 10x18 room, what do i haul',
    'can my hatchback take the carpet out of a 10x11 room in one go',
    'amount of junk from taking out hardwood 380 square feet',
    "the stairs have carpet too, 13 steps, how do i cut it off and what's it weigh",
    'does the pad come off in one piece or how many pieces should i reckon on',
    'tear out sheet for bedroom 1 12x13 and bedroom 2 10x12 and closet 2x6',
    "how do i get carpet out from under a king bed i can't move, two strips maybe",
    'hauler charges by weight, give me the pounds for 65 sq yards of carpet and pad',
    'ripping up carpet tonight, plan it',
    'rolls and pounds 14x20',
    'how many contractor bags will the pad from 500 sq ft fill',
    'pull carpet in the family room first, 16x19 with two 32 inch doors, give me the list',
    "what'll come out of a 9x10 room, carpet on thick pad",
    'how many sq yds am i ripping out and what do they weigh',
    'pad is stapled every six inches, so how many staples in a 12x12',
    "there's two layers, carpet over old lino, 10 by 14, how much to carry out",
    'number of strips if my carpet knife cuts 30 inch widths across 17 feet',
    'baseboard, carpet, pad and strips out of the den, in which order and how heavy',
    'landfill wants to know tons, 1400 sq ft carpet',
    'half a day to get the carpet to the curb, how many rolls would i have for 250 sq ft',
  ],
  options: z.object(tearoutOptions),
  examples: [
    {
      ask: 'tearout room: 12x14, built: 1995',
      headline: `Cut 4 strips of 3' x 14', 21 lb a roll: 187 lb in all with the pad, 1 pickup load.`,
    },
    {
      ask: "tearout room: living 14' x 16' + 3x8 bay; bedroom 11' x 12'6\"; closet 3x5; hall 3'6\" x 14', built: 1962, doors: 5 x 30 in, trim: 40 ft x 3 in, insurer: yes, vehicle: container",
      headline: 'Cut 13 strips, no roll over 22 lb: 499 lb in all with the pad, a 10 cu yd container.',
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
