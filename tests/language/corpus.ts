/** All messages of the corpus. */

import { CHATTER } from './corpus-chatter.ts';
import { FLOORS } from './corpus-floors.ts';
import { GAPS } from './corpus-gaps.ts';
import { HURRIED } from './corpus-hurried.ts';
import { LAST } from './corpus-last.ts';
import { LATE } from './corpus-late.ts';
import { MORE } from './corpus-more.ts';
import { TOPICS } from './corpus-topics.ts';
import { TRAPS } from './corpus-traps.ts';
import type { Message } from './message.ts';

export const CORPUS: readonly Message[] = [
  ...FLOORS,
  ...HURRIED,
  ...GAPS,
  ...TOPICS,
  ...CHATTER,
  ...MORE,
  ...LATE,
  ...TRAPS,
  ...LAST,
];
