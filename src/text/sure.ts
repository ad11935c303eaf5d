/** The words of “how sure?”. */

import { counted } from './floor.ts';

export const SURE = {
  title: 'How sure',
  holds: 'Holds',
  all: 'If every wall is off',
  again: 'Worth measuring again',
  still: (cartons: number, doubt: string) =>
    `still ${counted(cartons, 'carton')} with walls up to ${doubt} longer or shorter`,
  untried: 'not worked out: the doorways and things told fit no other walls',
  cartons: (cartons: number, by: string) => `${counted(cartons, 'carton')} if ${by}`,
  by: (length: string, longer: boolean) => `${length} ${longer ? 'longer' : 'shorter'}`,
  wall: (wall: number, room: string, length: string) => `wall ${wall} of ${room} (${length})`,
} as const;
