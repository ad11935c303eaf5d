/** The few lines that are seen first with a floor. Figures arrive already formatted. */

import { counted } from './floor-text.ts';

const NAMES: Readonly<Record<string, string>> = { half: 'half-offset', thirds: 'third-offset' };

export const FLOOR_BRIEF = {
  room: (sides: string, planks: string, pattern: string) => `${sides} room, ${planks}, ${pattern}.`,
  rooms: (count: number, area: string, planks: string, pattern: string) =>
    `${count === 1 ? `${area} room` : `${count} rooms, ${area}`}, ${planks}, ${pattern}.`,
  /** A pattern as people say it. */
  named: (pattern: string) => NAMES[pattern] ?? pattern,
  planks: (width: string, length: string) => `${width} x ${length} planks`,
  boards: (width: string, length: string) => `${width} x ${length} boards`,
  /** `undefined` is a whole plank. */
  strips: (first: string | undefined, last: string | undefined) => {
    if (first === undefined) return last === undefined ? 'Last row is a full plank wide.' : `Last row is ${last} wide.`;
    if (last === undefined) return `First row is ripped to ${first}; the last is a full plank wide.`;
    return first === last
      ? `First and last row are ripped to ${first}.`
      : `First row is ripped to ${first}, the last to ${last}.`;
  },
  evened: (both: string, sliver: string) =>
    `First and last row are ripped to ${both}, or the last would be ${sliver} wide.`,
  evenedApart: (first: string, last: string, sliver: string) =>
    `First row is ripped to ${first}, the last to ${last}, or it would be ${sliver} wide.`,
  oneRow: (width: string) => `One row, ripped to ${width}.`,
  narrowest: (width: string, room: string) => `Narrowest row along a wall: ${width} wide, in ${room}.`,
  start: (wall: string, length: string) => `Start at wall ${wall} (${length}); the rows run along it.`,
  broken: (places: number) => `${counted(places, 'place')} can’t keep the rules for joints and ends: see “details”.`,
  pattern: (cartons: number, name: string) =>
    name === 'scattered'
      ? `${counted(cartons, 'carton')} if scattered.`
      : `${counted(cartons, 'carton')} with the ${NAMES[name] ?? name} pattern.`,
  turned: (cartons: number) => `${counted(cartons, 'carton')} if the rows run the other way.`,
  cuts: (whole: number, cut: number) => `${counted(whole, 'whole board')} and ${counted(cut, 'cut piece')}.`,
  herringbone: (border: number) => `herringbone${border > 0 ? ` with a border of ${counted(border, 'board')}` : ''}`,
  hands: (a: number, b: number) => `A boards: ${a}, B boards: ${b}.`,
  choice: (name: string, cartons: number, planks: number, waste: string, cost: string | undefined) =>
    `${name}: ${counted(cartons, 'carton')}, ${counted(planks, 'plank')}, ${waste} waste${cost === undefined ? '' : `, ${cost}`}.`,
  rest: (laid: string, planks: number, offcuts: number) =>
    `Laid: ${laid}. The rest takes ${counted(planks, 'plank')}${offcuts === 0 ? '' : ` and ${counted(offcuts, 'offcut')}`}.`,
  lastRow: (room: string, row: number, pieces: string) => `${room} row ${row} as it lies: ${pieces}.`,
  spoiled: (broken: number) => `${counted(broken, 'plank')} broken so far.`,
} as const;
