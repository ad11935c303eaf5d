/** `floor estimate`: boxes and cost from the area alone, before the plank or the walls are known. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { COMMON_PRACTICE } from '../../src/figures/cited.ts';
import { RULE_OF_THUMB_PERCENT } from '../../src/figures/floor-figures.ts';
import { sayArea, sayMoney, sayNumber } from '../../src/input/format.ts';
import { percent, text } from '../../src/input/options.ts';
import { type Carton, readCartonArea, readFloorArea, withoutBox } from '../../src/input/parse-area.ts';
import { type AreaPrice, readPadPrice, readPrice } from '../../src/input/parse-price.ts';
import { type Price, type Read, type Reading, read } from '../../src/input/reading.ts';
import { reply } from '../../src/reply/reply.ts';
import { ESTIMATE } from '../../src/text/floor-text.ts';
import {
  type Area,
  portion,
  roundUpRatio,
  SQUARE_TICKS_PER_SQUARE_FOOT,
  SQUARE_TICKS_PER_SQUARE_METRE,
} from '../../src/units/length.ts';

/** Common practice for waste, in hundredths of a percent; the answer shows both ends whichever was requested. */
const LOW = 500;
const HIGH = 1500;

interface Money {
  readonly each?: Price;
  readonly square?: AreaPrice;
}

/** A price per carton or per area; `none` means no price. */
function readMoney(typed: string, reading: Reading): Read<Money> {
  if (/^(?:none|no)$/i.test(typed.trim())) return read({});
  const square = readPadPrice(typed, reading);
  if (square.ok) return read(square.value ? { square: square.value } : {});
  const each = readPrice(withoutBox(typed), reading);
  return each.ok ? read({ each: each.value }) : each;
}

function withExtra(area: Area, points: number): Area {
  return (area * BigInt(10_000 + points)) / 10_000n;
}

function cartonsFor(area: Area, points: number, carton: Carton): number {
  return roundUpRatio(area * BigInt(10_000 + points), carton.area * 10_000n);
}

/** The usual extra stands in the headline too, so what was doubtful to read comes before it. */
function doubtsFirst(assumed: readonly string[], extra: string): readonly string[] {
  const doubts = assumed.filter((one) => one.startsWith('Assuming '));
  return [...doubts, extra, ...assumed.filter((one) => !doubts.includes(one))];
}

export default defineCommand({
  group: 'floor',
  name: 'estimate',
  summary: 'Boxes and cost from the area alone, before you know the exact plank or walls',
  phrases: [
    'i have 450 sq ft to cover and boxes are 22 sq ft, how many',
    'how many boxes for 300 square feet',
    'need flooring for 1,200 sq ft, how many cartons at 23.33',
    'box covers 18.7, area is 265',
    '100 sq ft at 20 per box with 10 percent extra',
    'how many boxes for 75 m2, 2.2 m2 a pack',
    '640 sq feet divided into cartons of 24',
    'cartons for 900 sqft plus 8% waste',
    'whole house 1450 sq ft how many boxes do i order',
    'boxes if i need 385 sq feet including waste',
    'my floor is about 200 square feet, how many boxes of lvp',
    'how many planks are in 150 sq ft if each is 7x48',
    'area is 512, 10% over, 28.6 per carton',
    'how many sq ft should i order for 480',
    'how many packs for 33 square metres',
    'apartment is 700 square feet, what do i order',
    'planks are 2.4 sq ft each and i need 260 sq ft',
    '500 sq ft of hallway and rooms, boxes of 21.5',
    'number of boxes for 1000 sq ft',
    'i need 27 sq yards, boxes cover 20 sq ft',
    'what will it cost to do 500 sq ft at $3.29',
    '12x14 room at 2.79 a square foot how much money',
    'total cost with 10% extra and 7% tax',
    'price for flooring at $54 a box, 14 boxes',
    'how much for 850 sq ft at 1.99 plus pad at .39',
    'whats the total for 20 cartons at 61.50',
    'budget for whole house 1300 square feet',
    'how much does it cost to do a room myself',
    'cost of materials for a 10x12 bedroom',
    'what would 3 rooms cost in vinyl plank',
    '16x20 at $4.15 and 10 percent waste total price',
    'i have $1500, can i do 600 sq ft',
    'how much money per square foot all in',
    'cost of flooring plus trim plus underlayment',
    'add sales tax 8.25 to 22 boxes at 47.99',
    'can i do my living room for under a thousand',
    'how much will the flooring be',
    'price out a 14x18 at 2.49',
    'estimated cost lvp 700 sq ft',
    'how much is 340 sq ft at $2.15',
    'how much flooring for 300 sq ft',
    '168 sq ft 24 a box',
    '15x21 at 2.89 plus 10%',
    'measured it all out and got 487 square feet, how many boxes should i grab',
    'the listing says 18.94 sf per carton and my floor is 412 sf, what do i order',
    'whole upstairs is about 640 sq ft, what would it run me at 3.19 a foot',
    'how heavy will it be if i bring home enough plank for 520 square feet',
    '265 sqft / 22.1 per case',
    "ballpark for a 13x17 den, haven't chosen a floor yet",
    'need a rough number before i go shopping, living room is 14 by 19 feet',
    "i've 42 m2 to cover and packs hold 2.196 m2, how many packs is that",
    'cost of covering 375 feet at $2.39 with ten percent extra and 6.5% tax',
    "what's the weight of 30 boxes worth, like 700 sq ft of 5mm vinyl",
    '11x12 bedroom, floor is 1.99 a sq foot, total?',
    "we're doing 850 ft, does the pallet come in under two thousand pounds",
    'price me up 28 square metres at £24.50 a square metre plus a bit for waste',
    'boxes for 96 sq ft bathroom and laundry',
    'floor space from the listing is 1,130 sq ft minus baths at 90, cartons of 27.4',
    '20 sq yd how much to buy',
    'the clerk wants to know how many square feet to ring up for a 10x13 room',
    'figure 7 percent waste on 560 feet, cases are 19.63',
    'how many cartons would a 9 by 11 nursery eat up roughly',
    "our basement's 24x31, what am i looking at moneywise around 2.50 a foot",
    'i only know the area, 233 square feet, tell me how much to order',
    'boxes come at 23.77 for $61, floor is 344, how much will i pay',
    '16x18 family room, rough guess on flooring',
    'would i be under $900 for a 12 x 20 room at $3.29 a square foot',
    '330 sq ft + 12% for angled walls, how much is that',
    "need to tell the delivery guy the weight, it's 48 cartons worth for about 1000 sq ft",
    'how many boxes to cover 75 sq ft hallway if one does 20.8',
    'small flat 51 sq m, whats a sensible amount to order',
    'cost for two rooms 130 and 155 sq ft at 2.79, add ten percent',
    'how much lvp should i order for 1475 square ft of house',
    'box says 28.84 square feet. i need 190. so how many',
    "what's 410 sq ft of click vinyl weigh, worried about my car springs",
    '8x9 mudroom no idea on plank yet how much floor',
    "tax is 8.875 here, 295 feet at 2.65 each, what's my total",
    'give me boxes, cost and weight for 600 square feet at 22 a carton 54 bucks each',
    'landlord says the unit is 780 sq ft, how much flooring is that with waste',
    'if i round up to 450 sq ft how many 20 ft boxes and what would it cost at 1.89',
  ],
  options: z.object({
    area: text({ summary: 'The area, or rooms by their sides', colons: 'rooms', example: '168 sq ft' }, readFloorArea),
    box: text(
      {
        summary: 'What a box covers, or the plank size and how many are in a box',
        standard: 'none',
        colons: 'any',
        example: '24 sq ft',
      },
      readCartonArea,
    ),
    price: text({ summary: 'Price, by area or per box', standard: 'none', example: '$2.89/sq ft' }, readMoney),
    extra: percent({
      summary: 'Extra for cuts and mistakes',
      standard: '10%',
      record: RULE_OF_THUMB_PERCENT,
      example: '10%',
    }),
    'sales-tax': percent({ summary: 'Sales tax', standard: '0%', example: '8.25%' }),
  }),
  examples: [
    { ask: 'estimate area: 168 sq ft, box: 24 sq ft', headline: 'About 8 boxes for 168 sq ft with 10% extra.' },
    {
      ask: 'estimate area: 15x21, price: $2.89/sq ft',
      headline: 'Buy about 347 sq ft for 315 sq ft with 10% extra: $1,001.39.',
    },
    {
      ask: 'estimate area: 20 m², box: 2.2 m², price: 31.90 € a carton, extra: 5%',
      headline: 'About 10 boxes for 20 m² with 5% extra: €319.00.',
    },
  ],
  run: ({ area: floor, box: carton, price, extra, 'sales-tax': tax }, { assumed, preferences, optionTexts }) => {
    const saying = { units: floor.units, decimal: preferences.decimal };
    const whole = sayArea(floor.area, saying);
    const share = `${sayNumber(extra / 100, saying)}%`;
    const cartons = carton && cartonsFor(floor.area, extra, carton);
    const bought =
      carton && cartons !== undefined && price.square ? carton.area * BigInt(cartons) : withExtra(floor.area, extra);
    const net = price.square
      ? portion(BigInt(price.square.price.cents), bought, price.square.per)
      : price.each && cartons !== undefined
        ? portion(BigInt(price.each.cents), BigInt(cartons), 1n)
        : undefined;
    const currency = price.square?.price.currency ?? price.each?.currency ?? preferences.currency;
    const taxed = net === undefined ? undefined : portion(BigInt(net), BigInt(10_000 + tax), 10_000n);
    const money = taxed === undefined ? undefined : sayMoney(taxed, currency, saying);
    const square = floor.units === 'metric' ? SQUARE_TICKS_PER_SQUARE_METRE : SQUARE_TICKS_PER_SQUARE_FOOT;
    // A square meter is too coarse a step for what is paid by the square meter.
    const steps = floor.units === 'metric' ? 10n : 1n;
    const toBuy = sayNumber(
      Number(roundUpRatio(withExtra(floor.area, extra) * steps, square)) / Number(steps),
      saying,
      1,
    );
    const [least, most] = carton ? [cartonsFor(floor.area, LOW, carton), cartonsFor(floor.area, HIGH, carton)] : [];
    const rolls = /roll/i.test(optionTexts.get('box') ?? '');
    const room = /\d\s*(?:x|×|by)\s*\d/i.test(optionTexts.get('area') ?? '');
    return reply({
      headline:
        cartons === undefined
          ? ESTIMATE.area(toBuy, floor.units === 'metric', whole, share, money)
          : ESTIMATE.boxes(cartons, whole, share, money, rolls ? 'roll' : undefined),
      ...(money === undefined ? {} : { leads: { cost: ESTIMATE.cost(money, cartons, rolls, whole, share) } }),
      lines: [
        ...(least === undefined || most === undefined || least === most ? [] : [ESTIMATE.range(least, most)]),
        ...(tax > 0 && net !== undefined && taxed !== undefined
          ? [ESTIMATE.tax(sayMoney(net, currency, saying), `${sayNumber(tax / 100, saying)}%`)]
          : []),
        ESTIMATE.exact(room, carton !== undefined),
      ],
      assumed: optionTexts.has('extra') ? assumed : doubtsFirst(assumed, ESTIMATE.assumedExtra(share)),
      blocks: [
        {
          kind: 'facts',
          section: 'why',
          title: ESTIMATE.whyTitle,
          facts: [
            { label: ESTIMATE.floor, value: whole },
            { label: ESTIMATE.withExtra(share), value: sayArea(withExtra(floor.area, extra), saying) },
            ...(carton ? [{ label: ESTIMATE.box, value: sayArea(carton.area, saying) }] : []),
          ],
        },
      ],
      sources: [COMMON_PRACTICE],
      reasons: [{ entry: 'extra-percent', figure: share }],
      data: {
        kind: 'estimate',
        area: Number(floor.area),
        low: Number(withExtra(floor.area, LOW)),
        high: Number(withExtra(floor.area, HIGH)),
        percent: extra / 100,
        ...(cartons === undefined ? {} : { cartons }),
        ...(rolls ? { unit: 'rolls' } : {}),
        ...(taxed === undefined ? {} : { cents: taxed }),
      },
    });
  },
});
