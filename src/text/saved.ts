/** The words of saved answers: shown as they were, and how today's answer differs. */

import { capital } from './asks.ts';
import { counted } from './floor.ts';

/** One saved answer, by its number in the list and its day. */
const which = (no: number, day: string): string => `saved answer ${no} (${day})`;

export const SAVED = {
  title: 'Saved answers, as they were',
  columns: ['No.', 'Day', 'Answer', 'Request'],
  differs: (no: number, day: string, today: string) => `${capital(which(no, day))} is different today: ${today}`,
  unanswered: (no: number, day: string, why: string) =>
    `${capital(which(no, day))} can't be worked out again today: ${why}`,
  gone: (no: number, day: string) =>
    `${capital(which(no, day))} isn't about the rooms of this job as they are now: it's in no list and no total.`,
  unread: (no: number, day: string) =>
    `${capital(which(no, day))} can't be read any more: it's in no list and no total.`,
  show: 'Saved answers',
  button: (no: number) => `Today's answer for no. ${no}`,
  /** In lists: which saved answers are not what the lists say. */
  lists: (saved: readonly (readonly [no: number, day: string])[]) =>
    `worked out from your rooms and choices as they are now; ${saved.map(([no, day]) => which(no, day)).join(', ')} ${saved.length === 1 ? 'differs' : 'differ'}`,
  /** Behind a change of rooms or picks. */
  stay: (count: number) =>
    `${counted(count, 'saved answer')} ${count === 1 ? 'stays as it was' : 'stay as they were'}; lists and totals use your rooms and choices as they are now`,
  use: (option: string) => `Use its ${option.replace(/^\S+ (?=\S)/, '').replaceAll('-', ' ')}`,
  outside: 'it was worked out for sizes of its own, not for your rooms, so it is in no list and no total',
  addRoom: 'Add its room to the project',
  inRoom: (headline: string, room: string) => `“${headline}” is about ${room}`,
} as const;
