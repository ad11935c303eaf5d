/** `floor enough`: whether what was bought, or what a store says, covers the floor with enough to spare. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { COMMON_PRACTICE } from '../../src/figures/cited.ts';
import { type Saying, sayArea, sayNumber } from '../../src/input/format.ts';
import { text } from '../../src/input/options.ts';
import { type Carton, type ParsedArea, readCartonArea, readFloorArea } from '../../src/input/parse-area.ts';
import { type Read, type Reading, read } from '../../src/input/reading.ts';
import { reply } from '../../src/reply/reply.ts';
import { ENOUGH } from '../../src/text/estimate-text.ts';
import { roundUpRatio } from '../../src/units/length.ts';

/** By rule of thumb, in hundredths of a percent. */
const LEAST = 500n;
const USUAL = 1000n;
const MUCH = 2000n;
const PERCENT = 10_000n;

/** Boxes by their number, or an area. */
type Have = { readonly boxes: number } | ParsedArea;

function readHave(typed: string, reading: Reading): Read<Have> {
  const found = /^(\d{1,4})\s*(?:box(?:es)?|cartons?|packs?|cases?)$/i.exec(typed.trim());
  if (found) return read({ boxes: Number(found[1]) });
  return readFloorArea(typed, reading);
}

export default defineCommand({
  group: 'floor',
  name: 'enough',
  summary: 'Whether the boxes or square feet you have are enough, too few or too many',
  options: z.object({
    area: text({ summary: 'The area, or rooms by their sides', colons: 'rooms', example: '12 x 14 ft' }, readFloorArea),
    have: text({ summary: 'Boxes or square feet that you have', example: '9 boxes' }, readHave),
    carton: text(
      { summary: 'What a box covers, or plank size and count', standard: 'none', colons: 'any', example: '20 sq ft' },
      readCartonArea,
    ),
  }),
  examples: [
    {
      ask: 'enough area: 100 sq ft, have: 125 sq ft',
      headline: 'Yes, and more than you need: 125 sq ft for 100 sq ft is 25 % extra.',
    },
    {
      ask: 'enough area: 12x14, have: 9 boxes, carton: 20 sq ft',
      headline: 'Yes: 9 boxes (180 sq ft) for 168 sq ft is 7.1 % extra.',
    },
    {
      ask: 'enough area: 10x15, have: 8 boxes, carton: 18 sq ft',
      headline: 'No: 8 boxes (144 sq ft) for 150 sq ft is 6 sq ft short.',
    },
  ],
  run: ({ area: floor, have, carton }, { assumed, preferences }) => {
    const saying: Saying = { units: floor.units, decimal: preferences.decimal };
    const need = floor.area;
    if ('boxes' in have && !carton) return { problems: [boxUnknown()] };
    const got = 'boxes' in have ? (carton as Carton).area * BigInt(have.boxes) : have.area;
    const said = sayArea(got, saying);
    const has = 'boxes' in have ? `${have.boxes === 1 ? '1 box' : `${have.boxes} boxes`} (${said})` : said;
    const whole = sayArea(need, saying);
    const over = ((got - need) * PERCENT) / need;
    const share = `${sayNumber(Number(over) / 100, saying, 1)} %`;
    const headline =
      got < need
        ? ENOUGH.no(has, whole, sayArea(need - got, saying))
        : got === need
          ? ENOUGH.none(has, whole)
          : over < LEAST
            ? ENOUGH.tight(has, whole, share)
            : over > MUCH
              ? ENOUGH.much(has, whole, share)
              : ENOUGH.yes(has, whole, share);
    const wanted = (need * (PERCENT + USUAL)) / PERCENT;
    const lacks = wanted > got && over < LEAST;
    return reply({
      headline,
      lines: [
        ...(lacks
          ? [
              carton
                ? ENOUGH.more(roundUpRatio(wanted - got, carton.area))
                : ENOUGH.moreArea(sayArea(wanted - got, saying)),
            ]
          : []),
        ...(over > MUCH ? [ENOUGH.left(sayArea(got - need, saying))] : []),
        ENOUGH.usual,
        ENOUGH.exact,
      ],
      assumed,
      sources: [COMMON_PRACTICE],
      data: { kind: 'enough', area: Number(need), have: Number(got), extra: Number(over) / 100, enough: over >= LEAST },
    });
  },
});

function boxUnknown() {
  return { option: 'carton', got: '', expected: 'What does one box cover, in square feet or square meters?' };
}
