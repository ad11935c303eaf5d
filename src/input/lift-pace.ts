/** How often and for how long something is lifted, and how far the body twists. */

import type { LiftDuration } from '../prep/lifting.ts';
import { notAPace, notAStretch, notATwist } from '../text/prep-problems-text.ts';
import { type Read, type Reading, read, unread } from './reading.ts';
import { figureOf } from './weight.ts';

const PACE_FIGURE = '(\\d{1,3}(?:[.,]\\d{1,2})?)';
const EACH = new RegExp(
  `^${PACE_FIGURE}(?: ?(?:lifts?|times|x|cartons?))? ?(?:(?:a|per|each|every|/) ?min(?:utes?)?)?$`,
);
const EVERY = new RegExp(`^every ${PACE_FIGURE}? ?(min(?:utes?)?|s|sec(?:onds?)?)$`);
const HOURS = new RegExp(
  `^(?:(?:${PACE_FIGURE}|(\\d{1,2} )?(1/2|1/4|3/4)) ?(?:h|hrs?|hours?))? ?(?:and )?(?:(\\d{1,3}) ?(?:m|mins?|minutes?))?$`,
);

/** Lifts a minute: `1 a minute`, `3/min`, `every 5 minutes`, `every 20 seconds`, or a bare number of them. */
export function readLiftPace(text: string, reading: Reading): Read<number> {
  const plain = text
    .trim()
    .toLowerCase()
    .replace(/\s+/g, ' ')
    .replace(/^once /, '');
  const each = EACH.exec(plain);
  const every = EVERY.exec(plain);
  const seconds = figureOf(every?.[1] ?? '1') * (every?.[2]?.startsWith('s') ? 1 : 60);
  const pace = each?.[1] ? figureOf(each[1]) : every ? 60 / seconds : Number.NaN;
  if (!(pace > 0 && pace <= 30)) return unread(notAPace({ option: reading.option, got: text }));
  return read(pace);
}

/** Hours of lifting in a stretch, as the table's class: up to 1, up to 2, up to 8. */
export function readStretch(text: string, reading: Reading): Read<LiftDuration> {
  const hours = readHours(text);
  if (hours === undefined || hours <= 0 || hours > 8) return unread(notAStretch({ option: reading.option, got: text }));
  return read(hours <= 1 ? 1 : hours <= 2 ? 2 : 8);
}

/** Hours in `2 h`, `45 min`, `1 h 30 min`, `1.5 hours`, `1 1/2 h`; undefined for anything else. */
export function readHours(text: string): number | undefined {
  const plain = text.trim().toLowerCase().replace(/½/g, ' 1/2').replace(/\s+/g, ' ').trim();
  const match = HOURS.exec(plain);
  if (!match || plain === '') return undefined;
  const [, figure, whole, fraction, minutes] = match;
  const [top, bottom] = (fraction ?? '0/1').split('/').map(Number);
  const hours = figure === undefined ? Number(whole ?? 0) + (top ?? 0) / (bottom ?? 1) : figureOf(figure);
  return hours + Number(minutes ?? 0) / 60;
}

/** Degrees of twist from straight ahead, 0 to 180. */
export function readTwist(text: string, reading: Reading): Read<number> {
  const match = /^(\d{1,3})(?: ?(?:°|deg(?:rees)?))?$/.exec(
    text
      .trim()
      .toLowerCase()
      .replace(/^none$/, '0'),
  );
  const twist = match ? Number(match[1]) : Number.NaN;
  if (!(twist <= 180)) return unread(notATwist({ option: reading.option, got: text }));
  return read(twist);
}
