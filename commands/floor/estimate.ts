/** `floor estimate`: boxes and money by area alone, for when the plank or the walls aren't known yet. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { COMMON_PRACTICE } from '../../src/figures/cited.ts';
import { sayArea, sayMoney, sayNumber } from '../../src/input/format.ts';
import { percent, text } from '../../src/input/options.ts';
import { type Carton, readCartonArea, readFloorArea } from '../../src/input/parse-area.ts';
import { type AreaPrice, readPadPrice, readPrice } from '../../src/input/parse-price.ts';
import { type Read, type Reading, read } from '../../src/input/reading.ts';
import type { Price } from '../../src/input/readings-made.ts';
import { reply } from '../../src/reply/reply.ts';
import { ESTIMATE } from '../../src/text/estimate-text.ts';
import {
  type Area,
  portion,
  roundUpRatio,
  SQUARE_TICKS_PER_SQUARE_FOOT,
  SQUARE_TICKS_PER_SQUARE_METRE,
} from '../../src/units/length.ts';

/** By rule of thumb; the answer gives both ends whatever was asked for. */
const LOW = 500;
const HIGH = 1500;

interface Money {
  readonly each?: Price;
  readonly square?: AreaPrice;
}

/** A price a carton or for an area; `none` is neither. */
function readMoney(typed: string, reading: Reading): Read<Money> {
  if (/^(?:none|no)$/i.test(typed.trim())) return read({});
  const square = readPadPrice(typed, reading);
  if (square.ok) return read(square.value ? { square: square.value } : {});
  const each = readPrice(typed.replace(/\s*(?:\/|per|an?|each)\s*(?:carton|box|pack|case)\.?$/i, ''), reading);
  return each.ok ? read({ each: each.value }) : each;
}

function withExtra(area: Area, points: number): Area {
  return (area * BigInt(10_000 + points)) / 10_000n;
}

function cartonsFor(area: Area, points: number, carton: Carton): number {
  return roundUpRatio(area * BigInt(10_000 + points), carton.area * 10_000n);
}

export default defineCommand({
  group: 'floor',
  name: 'estimate',
  summary: 'Boxes and cost by area alone, before the plank or the walls are known exactly',
  options: z.object({
    area: text({ summary: 'The area, or rooms by their sides', colons: 'rooms', example: '168 sq ft' }, readFloorArea),
    carton: text(
      { summary: 'What a box covers, or plank size and count', standard: 'none', colons: 'any', example: '24 sq ft' },
      readCartonArea,
    ),
    price: text({ summary: 'Price, by area or by box', standard: 'none', example: '$2.89/sq ft' }, readMoney),
    extra: percent({ summary: 'Extra for cuts and mistakes', standard: '10 %', example: '10 %' }),
    tax: percent({ summary: 'Sales tax', standard: '0 %', example: '8.25 %' }),
  }),
  examples: [
    { ask: 'estimate area: 168 sq ft, carton: 24 sq ft', headline: 'About 8 boxes for 168 sq ft with 10 % extra.' },
    {
      ask: 'estimate area: 15x21, price: $2.89/sq ft',
      headline: 'About 347 sq ft to buy for 315 sq ft with 10 % extra: $1,001.39.',
    },
    {
      ask: 'estimate area: 20 m², carton: 2.2 m², price: 31.90 € a carton, extra: 5 %',
      headline: 'About 10 boxes for 20 m² with 5 % extra: €319.00.',
    },
  ],
  run: ({ area: floor, carton, price, extra, tax }, { assumed, preferences, optionTexts }) => {
    const saying = { units: floor.units, decimal: preferences.decimal };
    const whole = sayArea(floor.area, saying);
    const share = `${sayNumber(extra / 100, saying)} %`;
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
    const toBuy = sayNumber(roundUpRatio(withExtra(floor.area, extra), square), saying, 0);
    const [least, most] = carton ? [cartonsFor(floor.area, LOW, carton), cartonsFor(floor.area, HIGH, carton)] : [];
    const room = /\d\s*(?:x|×|by)\s*\d/i.test(optionTexts.get('area') ?? '');
    return reply({
      headline:
        cartons === undefined
          ? ESTIMATE.area(toBuy, floor.units === 'metric', whole, share, money)
          : ESTIMATE.boxes(cartons, whole, share, money),
      lines: [
        ...(least === undefined || most === undefined || least === most ? [] : [ESTIMATE.range(least, most)]),
        ...(tax > 0 && net !== undefined && taxed !== undefined
          ? [ESTIMATE.tax(sayMoney(net, currency, saying), `${sayNumber(tax / 100, saying)} %`)]
          : []),
        ESTIMATE.exact(room, carton !== undefined),
      ],
      assumed: optionTexts.has('extra') ? assumed : [ESTIMATE.assumedExtra(share), ...assumed],
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
      data: {
        kind: 'estimate',
        area: Number(floor.area),
        low: Number(withExtra(floor.area, LOW)),
        high: Number(withExtra(floor.area, HIGH)),
        percent: extra / 100,
        ...(cartons === undefined ? {} : { cartons }),
        ...(taxed === undefined ? {} : { cents: taxed }),
      },
    });
  },
});
