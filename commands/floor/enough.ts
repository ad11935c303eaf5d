/** `floor enough`: whether the boxes they have, or the number a store gave them, will cover the floor with enough extra. */

import { z } from 'zod';
import { defineCommand } from '../../src/chat/command.ts';
import { COMMON_PRACTICE } from '../../src/figures/cited.ts';
import { type Saying, sayArea, sayNumber } from '../../src/input/format.ts';
import { text } from '../../src/input/options.ts';
import { type Carton, type ParsedArea, readCartonArea, readFloorArea } from '../../src/input/parse-area.ts';
import { type Read, type Reading, read } from '../../src/input/reading.ts';
import { reply } from '../../src/reply/reply.ts';
import { ENOUGH } from '../../src/text/floor-text.ts';
import { roundUpRatio } from '../../src/units/length.ts';

/** Common practice for waste, in hundredths of a percent. */
const LEAST = 500n;
const USUAL = 1000n;
const MUCH = 2000n;
const PERCENT = 10_000n;

type Have = { readonly boxes: number } | ParsedArea;

function readHave(typed: string, reading: Reading): Read<Have> {
  const found = /^(\d{1,4})\s*(?:box(?:es)?|cartons?|packs?|cases?)$/i.exec(typed.trim());
  if (found) return read({ boxes: Number(found[1]) });
  return readFloorArea(typed, reading);
}

export default defineCommand({
  group: 'floor',
  name: 'enough',
  summary: 'Are the boxes or square feet you have enough, too few or too many?',
  phrases: [
    'i bought 12 boxes for a 14x15 room is that enough',
    'do i have enough, 9 cartons at 20 sq ft and room is 12x14',
    'will 8 boxes cover a 10x15 bedroom',
    'store told me to get 600 sq ft for a 520 sq ft house, is that right',
    'have 230 sq ft of planks, room is 12x18, will it do',
    'is 15 boxes too many for 280 square feet',
    'the salesman says order 22 boxes for 400 sq ft, sound right?',
    'bought 200 sq feet for a 180 foot room, am i ok',
    'got 11 boxes left over, can i do a 9x12 with those',
    'is 10 cartons enough for the hall and the bedroom',
    'can i get by with 6 boxes for 110 sq ft',
    'did i buy enough flooring',
    'will 300 sq ft do my 14x20 room',
    'i have only 5 extra planks, should i get another box',
    'how much will be left over if i buy 18 boxes for 15x22',
    'am i going to run short with 7 cartons',
    'contractor ordered 1000 sq ft for 850, is he overbuying',
    'is 5 percent over cutting it too close, bought 210 for 200',
    'got 16 packs at 2.1 m2, room is 30 m2, enough?',
    "i'm afraid i bought too much, 40 boxes for 700 sqft",
    'i bought 11 boxes at 19.6 for a 12x16 room, will that do it',
    'store says order 24 boxes for 450 sq ft, sounds like a lot',
    'is 8 cartons enough for the den',
    "got 260 sq ft in the garage, room's 13x18, am i covered",
    'salesman figured 15 percent waste, said 620 feet for 540, is he padding it',
    'my cousin says 9 boxes will do two 10x11 bedrooms, box is 22.5, is he right',
    'have i got too much, 40 cases for 800 square feet',
    'picked up 14 packs at 2.13 m2, lounge and hall come to 27 m2, enough or not',
    'neighbor gave me six leftover boxes, 20 sq ft each, will they cover an 8x12',
    'the website calculator told me 17 boxes for 12x24, does that sound right to you',
    'ordered 190 for a 180 sq ft room',
    'do 5 extra planks count as enough spare for a 15x20',
    'clerk rang up 28 boxes. house measures 590 sq ft and each box has 23.3. should i take some back',
    'will i run out? 10 cartons, 10 planks in each, 7x48, room 14x15',
    'am i short if i own 300 sf and need the hall too, hall 4x17, rooms 11x12 and 10x12',
    "the last 7 boxes in the store at 18.9, and my room's 11x11, grab em or skip",
    "contractor's bid says 1,150 sq ft of plank for 980 sq ft of rooms, fair?",
    'one box too few or just right, 21 boxes of 24.1 for 480 feet',
    "i've 33 boxes sitting in the living room, tell me if that does all three bedrooms 12x13 11x12 10x11 and the hallway 3x20",
    'is buying 5 percent over asking for trouble',
    'enough?  6 boxes, kitchen 9x13',
    "could i return two boxes, bought 16 for 14x19 and they're 20.7 a piece",
    "big box guy wants me to get 10 boxes for a room that's only 150 sq ft",
    'i only bought the exact square feet, 228, with nothing over, will it stretch',
    '12 cartons says my husband, i say 14, the room is 13 ft 9 by 17 ft 4, 20 sq ft boxes',
    'quoted 38 square metres for our 33 m flat, is the fitter taking the mick',
    "how much is left over if i've got 25 boxes at 19.2 and lay 430 feet",
    "they're out of stock and i have 500 sq ft for 487, can i make it work",
    'has the store oversold me, 700 feet for two rooms 15x20 and 14x18',
    'do i have sufficient with 4 and a half boxes for a bathroom and closet, 70 ft total',
    'is 22 enough for 400',
    'my order is 13 boxes and the room is 10x21 with planks 9 x 60 six to a box, okay?',
    'will what i have do the closets as well',
    'bought 3 boxes extra for mistakes on a 600 foot job, overkill?',
    'the quote says 18 boxes, does that agree with your number for my living room',
    'check my order before i pay, 31 ctns x 18.7, rooms total 520',
    'we figure 8 packs of underlay and 16 of plank for 34 sq m, is plank enough',
    'should i buy one more box while they still have the same lot',
    'got a pallet deal of 960 sq ft but we only need 760, too much waste?',
    '10x10 and i have 110 sq ft, good to go?',
  ],
  options: z.object({
    area: text({ summary: 'The area, or rooms by their sides', colons: 'rooms', example: '12 x 14 ft' }, readFloorArea),
    have: text({ summary: 'The boxes or square feet you have', example: '9 boxes' }, readHave),
    box: text(
      {
        summary: 'What a box covers, or the plank size and how many are in a box',
        standard: 'none',
        colons: 'any',
        example: '20 sq ft',
      },
      readCartonArea,
    ),
  }),
  examples: [
    {
      ask: 'enough area: 100 sq ft, have: 125 sq ft',
      headline: 'Yes, and more than you need: 125 sq ft for 100 sq ft is 25% extra.',
    },
    {
      ask: 'enough area: 12x14, have: 9 boxes, box: 20 sq ft',
      headline: 'Yes: 9 boxes (180 sq ft) for 168 sq ft is 7.1% extra.',
    },
    {
      ask: 'enough area: 10x15, have: 8 boxes, box: 18 sq ft',
      headline: 'No: 8 boxes (144 sq ft) for 150 sq ft is 6 sq ft short.',
    },
  ],
  run: ({ area: floor, have, box: carton }, { assumed, preferences }) => {
    const saying: Saying = { units: floor.units, decimal: preferences.decimal };
    const need = floor.area;
    if ('boxes' in have && !carton) return { problems: [boxUnknown()] };
    const got = 'boxes' in have ? (carton as Carton).area * BigInt(have.boxes) : have.area;
    const said = sayArea(got, saying);
    const has = 'boxes' in have ? `${have.boxes === 1 ? '1 box' : `${have.boxes} boxes`} (${said})` : said;
    const whole = sayArea(need, saying);
    const over = ((got - need) * PERCENT) / need;
    const share = `${sayNumber(Number(over) / 100, saying, 1)}%`;
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
        ...(over >= LEAST && over <= MUCH ? [ENOUGH.over(sayArea(got - need, saying))] : []),
        ENOUGH.usual,
        ENOUGH.exact,
      ],
      assumed,
      sources: [COMMON_PRACTICE],
      reasons: [{ entry: 'extra-percent', figure: `${sayNumber(Number(LEAST) / 100, saying)}%` }],
      data: { kind: 'enough', area: Number(need), have: Number(got), extra: Number(over) / 100, enough: over >= LEAST },
    });
  },
});

function boxUnknown() {
  return { option: 'box', got: '', expected: 'What does one box cover, in square feet or square meters?' };
}
