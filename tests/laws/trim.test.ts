/** Laws of trim over many rooms: corners make a full turn, pieces and openings make the perimeter, fixes read. */

import fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import type { TrimResult } from '../../commands/trim/trim-results.ts';
import { stickPiece, type TrimRules, trimPieces } from '../../src/trim/pieces.ts';
import { firstSticks } from '../../src/trim/sticks.ts';
import { type Bay, placeDoors, stretchesOf, trimWalls, turning, wallName } from '../../src/trim/walls.ts';
import { wallLength } from '../../src/units/geometry.ts';
import { inches, type Length, millimetres, ticks } from '../../src/units/length.ts';
import { closeWorkers } from '../../src/workers/pool.ts';
import { randomRooms } from '../bench/random-rooms.ts';
import { answerTo, problemsOf } from '../chat/asked.ts';
import { trimFaults } from '../outside/baseboard-checker.ts';
import { region } from '../outside/laid.ts';

afterAll(closeWorkers);

const STOCK: readonly [Length, ...Length[]] = [inches(96), inches(144), inches(192)];

const drawn = fc.record({
  seed: fc.nat(100_000),
  shape: fc.nat(3),
  doors: fc.array(fc.record({ width: fc.integer({ min: 20, max: 40 }), wall: fc.nat(9) }), { maxLength: 3 }),
  bay: fc.option(
    fc.record({
      wall: fc.nat(9),
      side: fc.integer({ min: 6, max: 20 }),
      front: fc.integer({ min: 6, max: 30 }),
      angle: fc.constantFrom(90, 120, 135, 150),
    }),
  ),
  thickness: fc.integer({ min: 64, max: 320 }),
  inside: fc.constantFrom<TrimRules['inside']>('miter', 'cope', 'as measured'),
});

type Drawn = typeof drawn extends fc.Arbitrary<infer T> ? T : never;

/** A room with its walls, doors and pieces, and its result data, as the rules of the drawing have them. */
function made({ seed, shape, doors, bay, thickness, inside }: Drawn) {
  const room = randomRooms(seed, shape + 1)[shape];
  const here = region('den', room?.outline ?? []);
  const numbers = here.outline.length;
  const bays: Bay[] = bay
    ? [
        {
          room: undefined,
          wall: String((bay.wall % numbers) + 1),
          front: inches(bay.front),
          side: inches(bay.side),
          angle: bay.angle,
        },
      ]
    : [];
  const { walls } = trimWalls([here], bays, []);
  const { openings } = placeDoors(
    walls,
    doors.map(({ width, wall }) => ({ width: inches(width), wall: String((wall % numbers) + 1) })),
    inches(2.25),
  );
  const stretches = stretchesOf(walls, openings);
  const rules: TrimRules = {
    thickness: ticks(thickness * 16),
    longest: ticks(inches(192) - inches(1)),
    glueUp: inches(6),
    reach: 50,
    inside,
    studs: { first: inches(16), spacing: inches(16) },
  };
  const { pieces, troubles } = trimPieces(stretches, rules);
  const kerf = inches(0.125);
  const stock = STOCK.map((length, i) => ({ length, cents: 700 + 400 * i }));
  const plan = firstSticks({ pieces: pieces.map((piece) => stickPiece(piece, kerf)), stock, endTrim: inches(0.5) });
  const data: TrimResult = {
    kind: 'trim',
    units: 'imperial',
    ticksPerInch: 8128,
    kerf,
    endTrim: inches(0.5),
    thickness: rules.thickness,
    stock,
    walls: walls.map((wall) => ({
      name: wallName(wall),
      length: wall.length,
      corners: [wall.left.interior, wall.right.interior],
    })),
    pieces,
    glueUp: [],
    ...plan,
  };
  return { here, walls, openings, stretches, pieces, troubles, data };
}

describe('any room', () => {
  test('its corners turn through 360° in all, bay or not, and each wall ends where the next begins', () => {
    fc.assert(
      fc.property(drawn, (one) => {
        const { walls } = made(one);
        expect(turning(walls.map(({ left }) => left.interior))).toBe(360);
        walls.forEach(({ right }, i) => {
          expect(right).toEqual(walls[(i + 1) % walls.length]?.left);
        });
      }),
    );
  });

  test('walls without a bay come to the perimeter; trim and openings come to the walls', () => {
    fc.assert(
      fc.property(drawn, (one) => {
        const { here, walls, openings, pieces } = made(one);
        const sum = (parts: readonly number[]): number => parts.reduce((total, part) => total + part, 0);
        const around = sum(walls.map(({ length }) => length));
        if (!one.bay) expect(around).toBe(sum(here.outline.map((_, i) => wallLength(here.outline, i))));
        const covered = sum(pieces.map(({ from, to }) => to - from));
        expect(covered + sum(openings.map(({ from, to }) => to - from))).toBe(around);
      }),
    );
  });

  test('pieces fit their walls and sticks hold them, as an outside checker sees it', () => {
    fc.assert(
      fc.property(drawn, (one) => {
        const { data, walls, openings, troubles } = made(one);
        expect(troubles).toEqual([]);
        const free = new Map(
          walls.map((wall) => {
            const taken = openings.filter((opening) => opening.wall === wallName(wall));
            return [
              wallName(wall),
              taken.reduce((left, { from, to }) => left - (to - from), wall.length as number),
            ] as const;
          }),
        );
        expect(trimFaults(data, free)).toEqual([]);
      }),
    );
  });

  test('the checker catches a piece too short, a wrong setting, a piece left out and a stick too full', () => {
    const { data, walls, openings } = made({
      seed: 7,
      shape: 1,
      doors: [],
      bay: null,
      thickness: 200,
      inside: 'miter',
    });
    const free = new Map(walls.map((wall) => [wallName(wall), wall.length as number]));
    expect(openings).toEqual([]);
    expect(trimFaults(data, free)).toEqual([]);
    const [first, ...others] = data.pieces;
    if (!first) throw new Error('a room without trim');
    const faults = (change: Partial<TrimResult>): number => trimFaults({ ...data, ...change }, free).length;
    expect(faults({ pieces: [{ ...first, length: first.length - 100 }, ...others] })).toBeGreaterThan(0);
    expect(faults({ pieces: [{ ...first, left: { cut: 'miter', setting: 30 } }, ...others] })).toBeGreaterThan(0);
    expect(faults({ pieces: others })).toBeGreaterThan(0);
    expect(faults({ endTrim: millimetres(9000) })).toBeGreaterThan(0);
    expect(faults({ cents: data.cents + 1 })).toBeGreaterThan(0);
  });
});

const odd = fc.oneof(
  fc.constantFrom(
    'banana',
    '',
    '99 ft on wall 1',
    '32 in on wall 77',
    '2 doors 32 in on wall 1',
    'corner 99: 88',
    'corner 1: 5',
    'corner 1: 271',
    'corner 2: 60',
  ),
  fc.constantFrom(
    'have 8 ft',
    '8 ft $5; 10 ft 5 €',
    '1 in',
    'wall 1: front 90 ft, sides 3 ft',
    'wall 9: front 3 ft, sides 2 ft',
    '12 x banana',
    'bath 30 in to tile 99 ft',
  ),
  fc.string({ maxLength: 30 }).map((text) => text.replace(/[:,;\n]/g, ' ')),
);

describe('every fix of a Problem is answered', () => {
  const asks: readonly (readonly [string, readonly string[]])[] = [
    [`trim list room: 12' x 14'`, ['doors', 'bay', 'corners', 'stock', 'saw-reach', 'casing', 'kerf']],
    [`trim finish room: 12' x 14'`, ['doors', 'tube', 'coverage', 'nail', 'corners']],
    [`trim reset room: 12' x 14'`, ['shoe', 'breaks', 'stock', 'doors']],
    ['trim edges', ['doorways', 'stock', 'stairs', 'floor']],
  ];
  test.each(asks)('%s', async (ask, options) => {
    let problems = 0;
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...options), odd, async (option, text) => {
        const line = ask === 'trim edges' && option !== 'doorways' ? `${ask} doorways: 30 in to carpet` : ask;
        for (const { fix } of problemsOf(await answerTo(`${line}, ${option}: ${text}`))) {
          problems++;
          if (fix !== undefined) expect(problemsOf(await answerTo(fix)), fix).toEqual([]);
        }
      }),
      { numRuns: 60 },
    );
    expect(problems).toBeGreaterThan(10);
  });
});
