/** `trim run`: sticks, or nails, caulk and paint, for a length of trim in all, before every wall is known. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { RULE_OF_THUMB_PERCENT } from '../../src/figures/floor-figures.ts';
import {
  CAULK_FIGURES,
  NAIL_FIGURES,
  PAINT_FIGURES,
  STUD_SPACING,
  TRIM_FIGURES,
} from '../../src/figures/trim-figures.ts';
import { sayLength, sayMoney, sayNumber } from '../../src/input/format.ts';
import { choice, percent, text } from '../../src/input/options.ts';
import { readLength, unitIn, unitsOf } from '../../src/input/parse-length.ts';
import type { ParsedStock } from '../../src/input/parse-stock.ts';
import { reply } from '../../src/reply/reply.ts';
import { FINISH, TRIM_RUN } from '../../src/text/trim-text.ts';
import { type Cents, portion, ticks } from '../../src/units/length.ts';
import { finishCautions, usualSupplies } from './finish.ts';
import { stickOptions } from './trim-options.ts';

/** One way to buy it all in sticks of a single length. */
interface Way {
  readonly length: number;
  readonly count: number;
  readonly cents: Cents | undefined;
}

/** Each length on sale alone, the cheapest first, or the one that leaves least over; longer sticks first among equals. */
function waysFor(needed: number, { items, currency }: ParsedStock): readonly [Way, ...Way[]] | undefined {
  const [first, ...others] = items
    .filter(({ have }) => have === undefined)
    .map(({ length: stick, price }): Way => {
      const count = Math.ceil(needed / stick);
      return {
        length: stick,
        count,
        cents: price && currency !== undefined ? portion(BigInt(price.cents), BigInt(count), 1n) : undefined,
      };
    })
    .sort(
      (one, other) =>
        (one.cents ?? 0) - (other.cents ?? 0) ||
        one.count * one.length - other.count * other.length ||
        other.length - one.length,
    );
  return first && [first, ...others];
}

export default defineCommand({
  group: 'trim',
  name: 'run',
  summary: 'Sticks, nails, caulk and paint for a total length of trim, before you list the walls',
  options: z.object({
    run: text({ summary: 'All the trim you need, end to end, without the doors', example: '64 ft' }, (typed, reading) =>
      readLength(typed, reading, reading.preferences.units === 'metric' ? 'm' : 'ft'),
    ),
    stock: stickOptions.stock,
    extra: percent({
      summary: 'Extra for cuts and mistakes',
      standard: '10%',
      record: RULE_OF_THUMB_PERCENT,
      example: '10%',
    }),
    list: choice(['sticks', 'supplies'], { summary: 'Sticks, or nails, caulk and paint, first', standard: 'sticks' }),
  }),
  examples: [
    { ask: 'run 64 ft, stock: 8 ft', headline: "About 9 sticks of 8' for 64' of trim with 10% extra." },
    {
      ask: 'run 87 ft, stock: 8 ft $7.98; 12 ft $12.48',
      headline: "About 12 sticks of 8' for 87' of trim with 10% extra: $95.76.",
    },
    {
      ask: 'run 180 ft, list: supplies',
      headline: `About 2 tubes of caulk, 272 nails (2") and 1.3 qt of paint for 180' of trim.`,
    },
    { ask: 'run 19 m, stock: 2.4 m', headline: 'About 9 sticks of 2.4 m for 19 m of trim with 10% extra.' },
  ],
  run: ({ run, stock, extra, list }, { assumed, optionTexts, preferences }) => {
    const unit = unitIn(optionTexts.get('run') ?? '');
    const saying = { units: unit ? unitsOf(unit) : preferences.units, decimal: preferences.decimal };
    const share = `${sayNumber(extra / 100, saying)}%`;
    const had = stock.items.reduce((sum, { length: stick, have = 0 }) => sum + stick * have, 0);
    const needed = Math.max(0, Math.ceil((run * (10_000 + extra)) / 10_000) - had);
    const ways = waysFor(needed, stock);
    const currency = stock.currency ?? preferences.currency;
    const say = ({ length: stick, count, cents }: Way): readonly [number, string, string | undefined] => [
      count,
      sayLength(ticks(stick), saying),
      cents === undefined ? undefined : sayMoney(cents, currency, saying),
    ];
    const whole = sayLength(run, saying);
    const [best, ...others] = ways ?? [];
    const supplies = usualSupplies(run, saying);
    if (list === 'supplies') {
      const { nails, tubes } = supplies;
      return reply({
        headline: TRIM_RUN.supplies(supplies, whole),
        lines: [TRIM_RUN.suppliesAssume, FINISH.caulkLine, TRIM_RUN.exact],
        assumed,
        cautions: finishCautions(),
        sources: [...NAIL_FIGURES, STUD_SPACING, ...CAULK_FIGURES, ...PAINT_FIGURES].map(({ source }) => source),
        data: { kind: 'trim-run', run, nails, caulkTubes: tubes, sticks: [] },
      });
    }
    return reply({
      headline: best && needed > 0 ? TRIM_RUN.headline(...say(best), whole, share) : TRIM_RUN.nothing(whole),
      lines: [...(others.length > 0 ? [TRIM_RUN.others(others.map(say))] : []), TRIM_RUN.exact],
      assumed: optionTexts.has('extra') ? assumed : [TRIM_RUN.assumedExtra(share), ...assumed],
      blocks: [
        {
          kind: 'facts',
          section: 'why',
          title: TRIM_RUN.whyTitle,
          facts: [
            { label: TRIM_RUN.length, value: whole },
            { label: TRIM_RUN.withExtra(share), value: sayLength(ticks(needed), saying) },
          ],
        },
        { kind: 'text', section: 'buy', text: TRIM_RUN.supplies(supplies, whole) },
      ],
      sources: TRIM_FIGURES.map(({ source }) => source),
      data: {
        kind: 'trim-run',
        run: run,
        percent: extra / 100,
        sticks:
          ways?.map(({ length: stick, count, cents }) => ({
            length: stick,
            count,
            ...(cents !== undefined && { cents }),
          })) ?? [],
      },
    });
  },
});
