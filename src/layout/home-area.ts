/** What each room of a region comes to, wall to wall. */

import { doubleArea } from '../units/geometry.ts';
import type { Area } from '../units/length.ts';
import type { Region } from './floor.ts';
import { doubleShared } from './home-ground.ts';

/** Rooms by name with their square ticks, and what the doorways beside them come to. */
export interface RoomAreas {
  readonly rooms: readonly { readonly name: string; readonly area: Area }[];
  readonly doorways: Area;
}

/** Square ticks of each room of a region, what stands in it left out; together with the doorways they are the region's. */
export function roomAreas(region: Region): RoomAreas {
  const whole = [region.outline, ...region.holes].reduce((sum, path) => sum + doubleArea(path), 0n);
  if (!region.rooms) return { rooms: [{ name: region.name, area: whole / 2n }], doorways: 0n };
  const doubled = region.rooms.map(({ name, outline }) => {
    const things = (region.standing ?? []).reduce((sum, thing) => sum + doubleShared(thing.outline, outline), 0n);
    return { name, area: doubleArea(outline) - things };
  });
  return {
    rooms: doubled.map(({ name, area }) => ({ name, area: area / 2n })),
    doorways: (whole - doubled.reduce((sum, { area }) => sum + area, 0n)) / 2n,
  };
}
