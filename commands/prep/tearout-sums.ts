/** What a tear-out adds up to: strips, tack strip, staples, weight, volume, trips, and supplies. */

import type { z } from 'zod';
import type { Cited } from '../../src/figures/cited.ts';
import {
  BAG,
  BLADE_LASTS,
  BUNDLE,
  CARPET_ALONE,
  CARPET_SHARE,
  CONTAINERS,
  DOORWAY,
  LAID_WEIGHT,
  LIFTING_PACE,
  LOOSE_PAD,
  looseVolume,
  MASK_LASTS,
  ONE_PERSON,
  PAD_SHARE,
  PAD_STAPLES,
  PICKUP_BED,
  PICKUP_PAYLOAD,
  STAPLE_PACE,
  STRIP_WIDTH,
  TACK_STRIP_PACE,
} from '../../src/figures/tearout-figures.ts';
import { length, room, text } from '../../src/input/options.ts';
import { readHaul, readTrim } from '../../src/input/parse-house.ts';
import { readLaidWeight, readWeight } from '../../src/input/parse-weight.ts';
import type { Reading } from '../../src/input/reading.ts';
import { doorwaysOf, readDoorways } from '../../src/input/rooms/parse-doorways.ts';
import {
  type Carrier,
  type Covering,
  gatherStrips,
  handLoads,
  hoursOf,
  isRolled,
  KILOGRAMS_PER_POUND,
  kilogramsOf,
  LITRES_PER_CUBIC_YARD,
  perimeterOf,
  placeStrips,
  runsAlongY,
  type Strips,
  smallestContainer,
  staplesIn,
  tackStripLength,
  toHalfHours,
  tripsOf,
} from '../../src/prep/old-floor.ts';
import { doubleArea } from '../../src/units/geometry.ts';
import { type Area, feet, inches, type Length, roundUp, TICKS_PER_FOOT, ticks } from '../../src/units/length.ts';
import { houseOptions } from './prep-options.ts';

/** `least` and `most` are in pounds. */
function weight(
  summary: string,
  { standard, metric, record }: { standard: string; metric: string; record: Cited<unknown> },
  least: number,
  most: number,
) {
  return text({ summary, standard, metric, record, example: standard }, (typed: string, reading: Reading) =>
    readWeight(typed, reading, least * KILOGRAMS_PER_POUND, most * KILOGRAMS_PER_POUND),
  );
}

export const doorsOption = text(
  {
    summary: 'Doorways: “one a room”, how many and how wide, or none',
    example: '2 x 30 in',
    standard: 'one a room',
    record: DOORWAY,
  },
  readDoorways,
);

export const tearoutOptions = {
  room: room({ summary: 'Rooms by their sides, or a walk around the walls, with ; between rooms' }),
  ...houseOptions,
  doors: doorsOption,
  trim: text(
    { summary: 'Painted trim to take off, length x height', example: '40 ft x 3 in; 36 in x 1 in', standard: 'none' },
    readTrim,
  ),
  strip: length({
    summary: 'Width of a strip',
    standard: '3 ft',
    record: STRIP_WIDTH,
    metric: '0.9 m',
    example: '30 in',
    least: inches(6),
    most: feet(6),
  }),
  carry: weight('The most one person lifts', { standard: '35 lb', metric: '16 kg', record: ONE_PERSON }, 5, 100),
  'bundle-length': length({
    summary: 'The hauler’s longest bundle',
    standard: '4 ft',
    record: BUNDLE,
    metric: '1.2 m',
    example: '3 ft',
    least: inches(12),
    most: feet(12),
  }),
  'bundle-weight': weight(
    'The hauler’s heaviest bundle',
    { standard: '50 lb', metric: '23 kg', record: BUNDLE },
    5,
    200,
  ),
  weight: text(
    {
      summary: 'What the floor weighs with its pad or glue, if you know',
      example: '8 lb/sq yd',
      standard: 'usual',
      record: LAID_WEIGHT.carpet,
    },
    readLaidWeight,
  ),
  'carpet-weight': text(
    {
      summary: 'What the carpet alone weighs, without its pad',
      example: '4 lb/sq yd',
      standard: 'usual',
      record: CARPET_ALONE,
    },
    readLaidWeight,
  ),
  vehicle: text(
    {
      summary: 'pickup, container, or trailer with its size',
      example: 'trailer 3 cu yd',
      standard: 'pickup',
      record: PICKUP_BED,
    },
    readHaul,
  ),
  payload: weight(
    'What a pickup or trailer may carry',
    { standard: '1000 lb', metric: '450 kg', record: PICKUP_PAYLOAD },
    100,
    10_000,
  ),
};

export type TearoutAsk = { readonly [O in keyof typeof tearoutOptions]: z.output<(typeof tearoutOptions)[O]> };

interface RoomStrips {
  readonly name: string;
  readonly strips: readonly Strips[];
}

export interface Tearout {
  readonly covering: Covering;
  readonly area: Area;
  readonly rooms: readonly RoomStrips[];
  readonly tackStrip: Length;
  readonly staples: readonly [number, number];
  readonly kilograms: number;
  readonly light: number;
  readonly litres: number;
  readonly trips: number;
  /** In cubic yards; undefined if it isn't hauled in a container. */
  readonly container: number | undefined;
  readonly loads: number;
  readonly bags: number;
  readonly blades: number;
  readonly masks: number;
  /** Not rounded up, for the shopping list. */
  readonly exact: { readonly bags: number; readonly blades: number; readonly masks: number };
  readonly hours: readonly [number, number];
}

/** In square ticks, without the holes. */
export function areaOfRooms(rooms: TearoutAsk['room']['rooms']): Area {
  const doubled = rooms.flatMap(({ outline, holes }) => [outline, ...holes]).map(doubleArea);
  return doubled.reduce((sum, area) => sum + area, 0n) / 2n;
}

/** Undefined if the doorways are longer than the walls. */
export function tackStripOf(ask: Pick<TearoutAsk, 'room' | 'doors'>): Length | undefined {
  const walls = ask.room.rooms.reduce((sum, { outline, holes }) => sum + perimeterOf(outline, holes), 0);
  return tackStripLength(ticks(walls), doorwaysOf(ask.doors, ask.room.rooms.length));
}

/** Person-hours, from the fast pace to the slow one. */
export function tearoutHours(covering: Covering, area: Area, tackStrip: Length, staples: readonly [number, number]) {
  const pace = LIFTING_PACE[covering].value;
  const [least, most] = hoursOf([
    { amount: Number(area) / TICKS_PER_FOOT ** 2, ...pace },
    { amount: tackStrip / TICKS_PER_FOOT, ...TACK_STRIP_PACE.value },
  ]);
  const { slow, fast } = STAPLE_PACE.value;
  return toHalfHours([least + staples[0] / fast, most + staples[1] / slow]);
}

/** Least and most. Only a pad on wood is stapled. */
export function staplesOf(covering: Covering, area: Area, ground: TearoutAsk['below']['ground']): [number, number] {
  if (covering !== 'carpet' || ground === 'concrete') return [0, 0];
  const { breadth, least, most } = PAD_STAPLES.value;
  return [staplesIn(area, breadth, least), staplesIn(area, breadth, most)];
}

/** Assumes the heaviest the floor may be. `walls` is the tack strip there would be if every floor were carpet. */
export function sumTearout(ask: TearoutAsk, covering: Covering, walls: Length): Tearout {
  const { light, heavy } = LAID_WEIGHT[covering].value;
  const perSquareMetre = ask.weight ?? heavy;
  const area = areaOfRooms(ask.room.rooms);
  const rolled = rolledWeight(ask, covering);
  const rule = { width: ask.strip, limit: ask.carry, perSquareMetre: rolled };
  const rooms = isRolled(covering)
    ? ask.room.rooms.map(({ name, outline, holes }) => {
        const strips = placeStrips(outline, holes, rule);
        return { name, strips: gatherStrips(strips, rolled, runsAlongY(outline)) };
      })
    : [];
  const kilograms = kilogramsOf(area, perSquareMetre);
  const litres = looseVolume(covering, kilograms, kilogramsOf(area, 1));
  const tackStrip = covering === 'carpet' ? walls : ticks(0);
  const staples = staplesOf(covering, area, ask.below.ground);
  const hours = tearoutHours(covering, area, tackStrip, staples);
  const { carrier, container } = carrierOf(ask, litres);
  const exact = {
    bags: bagsOf(covering, kilograms - kilogramsOf(area, covering === 'carpet' ? rolled : 0), litres, ask.carry),
    blades: Math.max(2, cutLength(rooms) / BLADE_LASTS.value),
    masks: hours[1] / MASK_LASTS.value,
  };
  return {
    covering,
    area,
    rooms,
    tackStrip,
    staples,
    kilograms,
    light: kilogramsOf(area, ask.weight ?? light),
    litres,
    trips: tripsOf(kilograms, litres, carrier),
    container,
    loads: handLoads(kilograms, ask.carry),
    bags: roundUp(exact.bags),
    blades: roundUp(exact.blades),
    masks: roundUp(exact.masks),
    exact,
    hours,
  };
}

function carrierOf(ask: TearoutAsk, litres: number): { carrier: Carrier; container: number | undefined } {
  if (ask.vehicle.kind === 'container') {
    const [first, ...more] = CONTAINERS.value;
    const inLitres = (yards: number) => yards * LITRES_PER_CUBIC_YARD;
    const size = smallestContainer(litres, [inLitres(first), ...more.map(inLitres)]);
    return { carrier: { litres: size }, container: Math.round(size / LITRES_PER_CUBIC_YARD) };
  }
  const bed = ask.vehicle.kind === 'trailer' ? ask.vehicle.litres : PICKUP_BED.value;
  return { carrier: { litres: bed, kilograms: ask.payload }, container: undefined };
}

/** In kg/m². Carpet counts without its pad, which goes into bags. */
export function rolledWeight({ weight, 'carpet-weight': alone }: TearoutAsk, covering: Covering): number {
  const whole = weight ?? LAID_WEIGHT[covering].value.heavy;
  if (covering !== 'carpet') return whole;
  return Math.min(whole, alone ?? Math.max(CARPET_ALONE.value.heavy, (weight ?? 0) * CARPET_SHARE.value));
}

/**
 * Carpet: bags for the pad and scraps, by volume and by the weight of a bag, with the heavier of two estimates for the pad.
 * Tile: by weight and volume. Anything else: one bag for sweepings.
 */
function bagsOf(covering: Covering, kilograms: number, litres: number, limit: number): number {
  if (covering === 'carpet') {
    const pad = litres * PAD_SHARE.value;
    return Math.max(pad / BAG.value, (pad * LOOSE_PAD.value) / limit, kilograms / limit);
  }
  return covering === 'tile' ? Math.max(kilograms / limit, litres / BAG.value) : 1;
}

/** In ticks. Counts two sides of each strip, because neighbors share a cut. */
function cutLength(rooms: readonly RoomStrips[]): number {
  const each = rooms.flatMap(({ strips }) => strips.map(({ width, length, count }) => (width + length) * count));
  return each.reduce((sum, cut) => sum + cut, 0);
}
