/** The words of a whole home: doorways, things in rooms, offcuts from room to room, what is left. Figures come in already said. */

import { counted } from './floor.ts';

export const HOME_TAKEN = {
  wall: (doorway: string, room: string, wall: number) =>
    `doorway ${doorway}: taken to be in wall ${wall} of ${room}, its longest wall that faces the other room`,
  middle: (doorway: string, room: string, wall: number) =>
    `doorway ${doorway}: taken to be in the middle of wall ${wall} of ${room}; add “12 in from the left of wall ${wall} of ${room}” where it is not`,
  turned: (room: string, angle: number) =>
    `${room}: turned ${angle === 180 ? 'half round' : `a quarter to the ${angle === 90 ? 'left' : 'right'}`} against how it was told, so that its doorway meets the other one`,
  unplaced: (doorway: string, room: string) =>
    `doorway ${doorway}: its wall in ${room} was not told, so the floor in it is not counted there`,
} as const;

export const HOME = {
  doorways: 'Doorways',
  runsOn: (rooms: string, width: string) => `${rooms} ${width}: the floor runs on`,
  stops: (rooms: string, width: string, gap: string) =>
    `${rooms} ${width}: stops at a transition, gap ${gap} on each side`,
  transitions: 'Transition strips',
  strips: (count: number, lengths: string) => `${counted(count, 'piece')}: ${lengths}`,
  areas: 'Area, room by room',
  between: 'in doorways',
  standing: 'Planks go round',
  keepTitle: 'Offcuts to keep from room to room',
  order: (names: readonly string[], most: number) =>
    `Lay in this order: ${names.join(', then ')}. At most ${counted(most, 'offcut')} wait${most === 1 ? 's' : ''} for a later room.`,
  keep: (length: string, end: string, plank: number, from: string, room: string, row: string) =>
    `From ${from}: keep the ${length} ${end} of plank ${plank} for ${room} row ${row}.`,
  left: 'left end',
  right: 'right end',
  middle: 'rest',
  leftTitle: 'What is left at the end',
  leftWhole: 'Whole planks',
  leftWholeOf: (planks: number) => `${counted(planks, 'plank')}, if no mistake is made`,
  leftOffcuts: 'Offcuts of 8 in and more',
  leftOffcutsMetric: 'Offcuts of 200 mm and more',
  leftOf: (count: number, list: string) => `${count}: ${list}`,
  leftNone: 'none',
  times: (count: number, said: string) => `${count} × ${said}`,
  shorter: (count: number) => `${count} shorter`,
  leftRips: 'Strips',
  stripOf: (count: number, width: string, length: string) => `${count} of ${width} wide, ${length} in all`,
} as const;
