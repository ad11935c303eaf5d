/** The options of `project room`. */

import { choice, text } from '../../../src/input/options.ts';
import { type Colons, read } from '../../../src/input/reading.ts';

/** What stands where an option is not told. */
export const NOT_TOLD = 'as it is' as const;

const told = (summary: string, example: string, colons?: Colons) =>
  text({ summary, example, standard: NOT_TOLD, ...(colons && { colons }) }, (typed) => read(typed.trim()));

export const roomOptions = {
  room: text(
    {
      summary: 'A room: “bedroom 12x14”, “add bath 5x8”, “remove bath”, “bath out of scope”',
      example: 'bedroom 12 x 14 ft',
      standard: 'list',
      names: 'room',
      colons: 'rooms',
    },
    (typed) => read(typed.trim()),
  ),
  size: told('Its sides, or a walk round its walls', '12 x 14 ft', 'rooms'),
  floor: told('The floor that is on it now', 'carpet'),
  doors: told('Its doors, and where they stand', '32 in on wall 2', 'any'),
  note: told('Something to remember of it', 'squeaks by the window', 'any'),
  scope: choice(['as it is', 'in', 'out'], {
    summary: 'Whether the job is done here: in, or out',
    standard: NOT_TOLD,
    example: 'out',
  }),
  name: told('Its new name', 'study'),
};

export interface RoomAsk {
  readonly room: string;
  readonly size: string;
  readonly floor: string;
  readonly doors: string;
  readonly note: string;
  readonly scope: 'as it is' | 'in' | 'out';
  readonly name: string;
}
