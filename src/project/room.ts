/** The rooms of a project: kept as text that the readers read, and what else is known of them. */

import { z } from 'zod';
import { roomTold } from '../input/rooms/rooms-apart.ts';
import { LIMITS } from './limits.ts';

const roomSchema = z
  .object({
    name: z.string().min(1).max(LIMITS.name),
    /** Its shape as told, without its name: `12 x 14 ft + bay 6 x 2 ft`, `walk …`. */
    text: z.string().min(1).max(LIMITS.room),
    /** The floor that is on it now. */
    floor: z.string().min(1).max(LIMITS.note).optional(),
    /** Its doors as told: `32 in on wall 2`. */
    openings: z.string().min(1).max(LIMITS.note).optional(),
    notes: z.array(z.string().min(1).max(LIMITS.note)).max(LIMITS.notes).readonly(),
    /** Whether the job is done here; a bath that stays as it is, is not. */
    inScope: z.boolean(),
  })
  .readonly();

export const roomsSchema = z.array(roomSchema).max(LIMITS.rooms).readonly();

export type Room = z.infer<typeof roomSchema>;
export type Rooms = z.infer<typeof roomsSchema>;

/** Names are the same whatever their capitals and spaces. */
export function sameName(one: string, other: string): boolean {
  return folded(one) === folded(other);
}

export function folded(name: string): string {
  return name.normalize('NFKC').toLowerCase().replace(/[’‘]/g, "'").replace(/\s+/g, ' ').trim();
}

export function roomNamed(rooms: Rooms, name: string): Room | undefined {
  return rooms.find((room) => sameName(room.name, name));
}

/** With a room in place of the one of its name, or behind the others. Throws a RangeError past the most that are kept. */
export function withRoom(rooms: Rooms, room: Room): Rooms {
  if (roomNamed(rooms, room.name)) return rooms.map((one) => (sameName(one.name, room.name) ? room : one));
  if (rooms.length >= LIMITS.rooms) throw new RangeError('too many rooms');
  return [...rooms, room];
}

/** With some facts of a room told anew; the same where there is no such room. */
export function changedRoom(rooms: Rooms, name: string, facts: Partial<Room>): Rooms {
  return rooms.map((one) => (sameName(one.name, name) ? { ...one, ...facts } : one));
}

export function withoutRoom(rooms: Rooms, name: string): Rooms {
  return rooms.filter((one) => !sameName(one.name, name));
}

/** The rooms where the job is done. */
export function inScope(rooms: Rooms): Rooms {
  return rooms.filter((room) => room.inScope);
}

/** Several rooms as one text for the option `room`. */
export function roomsText(rooms: Rooms): string {
  return rooms.map(roomTold).join('; ');
}
