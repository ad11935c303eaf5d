/** The checker of homes takes a sound one and catches every planted wrong. */

import { beforeAll, describe, expect, it } from 'vitest';
import type { FloorResult } from '../../commands/floor/lay.ts';
import { firstFloorTo } from '../chat/asked.ts';
import { checkFloor } from './floor-checker.ts';
import { checkHome } from './home-checker.ts';

/** Our flat upstairs: the hall runs on into the living room and stops at bedroom and closet. */
const FLAT =
  "planks room: hall 3'6\" x 14'; living 13' x 15'; bedroom 11' x 12'6\"; closet 2' x 5', plank: 7 x 48 in, 10 per carton, gap: 3/8 in, " +
  'doorways: hall to living 5 ft, 2 ft from the left of wall 2, 4 ft from the right of wall 4 of living, runs on; hall to bedroom 32 in, 18 in from the left of wall 4, 12 in from the right of wall 2 of bedroom, stops; bedroom to closet 4 ft, wall 1, wall 2 of closet, 6 in from the left, stops, ' +
  "holes: hearth 5 x 1.5 ft at wall 3, 4' from left of living; post 4x4 in, 6' from left, 5 ft from bottom of living";

type Mutable<T> = { -readonly [K in keyof T]: Mutable<T[K]> };
let flat: FloorResult;

beforeAll(async () => {
  flat = await firstFloorTo(FLAT);
});

function changed(change: (data: Mutable<FloorResult>) => void): unknown {
  const data = JSON.parse(JSON.stringify(flat)) as Mutable<FloorResult>;
  change(data);
  return data;
}

describe('our flat', () => {
  it('is sound', () => {
    expect(checkFloor(changed(() => {}))).toEqual([]);
    expect(checkHome(changed(() => {}))).toEqual([]);
    expect(flat.regions.map(({ name }) => name).sort()).toEqual(['bedroom', 'closet', 'hall + living']);
  });
});

describe('planted wrongs', () => {
  const joined = (data: Mutable<FloorResult>) => {
    const region = data.regions.find(({ rooms }) => rooms && rooms.length > 1);
    if (!region) throw new Error('no joined region');
    return region;
  };
  const doorway = (data: Mutable<FloorResult>) => {
    const found = data.doorways?.find(({ runsOn }) => runsOn);
    if (!found?.outline) throw new Error('no doorway');
    return found;
  };

  it.each<[string, (data: Mutable<FloorResult>) => void]>([
    [
      'a doorway elsewhere',
      (data) => {
        doorway(data).outline = doorway(data).outline?.map(([x, y]) => [x, y + 8128]) ?? [];
      },
    ],
    [
      'a room elsewhere',
      (data) => {
        const room = joined(data).rooms?.[1];
        if (room) room.outline = room.outline.map(([x, y]) => [x + 8128, y]);
      },
    ],
    [
      'no floor in the doorway',
      (data) => {
        const { outline = [] } = doorway(data);
        const { frame, rows } = joined(data);
        const [low, high] = [Math.min(...outline.map(([, y]) => y)), Math.max(...outline.map(([, y]) => y))];
        expect(frame.angle).toBe(0);
        for (const row of rows) {
          const y = row.v + frame.origin[1];
          if (y > low && y < high) row.pieces.splice(0, 2);
        }
      },
    ],
    [
      'an opening too near',
      (data) => {
        const bedroom = data.regions.find(({ name }) => name === 'bedroom');
        for (const row of bedroom?.rows ?? []) for (const piece of row.pieces) piece.length += 4000;
      },
    ],
    [
      'a thing that is told and not cut out',
      (data) => {
        joined(data).standing?.push({
          name: 'pipe',
          outline: [
            [9e5, 9e5],
            [9.1e5, 9e5],
            [9.1e5, 9.1e5],
            [9e5, 9.1e5],
          ],
        });
      },
    ],
    [
      'a doorway that runs on and lies in no region',
      (data) => {
        delete doorway(data).region;
      },
    ],
    [
      'a doorway to a room elsewhere',
      (data) => {
        doorway(data).rooms = ['hall', 'closet'];
      },
    ],
    [
      'a doorway not as wide as told',
      (data) => {
        Object.assign(doorway(data), { width: Number(doorway(data).width) + 8128 });
      },
    ],
  ])('%s', (_name, change) => {
    expect(checkHome(changed(change))).not.toEqual([]);
  });
});
