/** The headline, the strips and the facts of a tear-out, in words. */

import type { Context } from '../../../src/chat/command.ts';
import {
  BAG,
  BUNDLE,
  GULLY,
  LAID_WEIGHT,
  PAD_STAPLES,
  TACK_STRIP,
  TACK_STRIP_PIECE,
  WIDE_TACK_STRIP,
} from '../../../src/figures/tearout-figures.ts';
import {
  type Saying,
  sayArea,
  sayHours,
  sayLength,
  sayLoose,
  sayNumber,
  sayWeight,
} from '../../../src/input/format.ts';
import {
  handLoads,
  isRolled,
  kilogramsOf,
  LITRES_PER_CUBIC_YARD,
  type Strips,
  tackStripPieces,
  tackStripReach,
} from '../../../src/prep/tearout-amounts.ts';
import type { Block, Fact } from '../../../src/reply/reply.ts';
import { COVERING_NAMES, TEAROUT } from '../../../src/text/tearout-text.ts';
import { boxOf, type Outline } from '../../../src/units/geometry.ts';
import { rolledWeight, type Tearout, type TearoutAsk } from './tearout-sums.ts';

function sayingOf({ room }: TearoutAsk, { habits }: Context): Saying {
  return { units: room.units, decimal: habits.decimal };
}

function sayHaul({ trips, container }: Tearout, { vehicle }: TearoutAsk, saying: Saying): string {
  if (vehicle.kind === 'pickup') return TEAROUT.pickup(trips);
  if (vehicle.kind === 'trailer') return TEAROUT.trailer(trips);
  return TEAROUT.container(trips, sayLoose((container ?? 0) * LITRES_PER_CUBIC_YARD, saying));
}

/** The answer in one line. */
export function tearoutHeadline(tearout: Tearout, ask: TearoutAsk, context: Context): string {
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
export function tearoutBlocks(tearout: Tearout, ask: TearoutAsk, context: Context): readonly Block[] {
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
      value: ask.weight === undefined ? TEAROUT.usual(say(light), say(kilograms), usual) : TEAROUT.told(say(kilograms)),
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
