/** Moments as people type them: Friday 18:00, yesterday 9am, 2 hours ago, 27 Nov 18:00. */

import { plainSigns, withoutHidden } from './rooms/room-text.ts';

/** A calendar day; months count from 1. */
interface ZonedDay {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

interface ZonedTime extends ZonedDay {
  readonly hour: number;
  readonly minute: number;
}

/** This machine's zone, as an IANA name. */
export function hostZone(): string {
  return new Intl.DateTimeFormat('en-US').resolvedOptions().timeZone;
}

/** Date and time in a zone at a moment in milliseconds since 1970. */
export function clockOf(moment: number, zone: string): ZonedTime {
  const parts = new Intl.DateTimeFormat('en-US', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
  }).formatToParts(moment);
  const part = (type: Intl.DateTimeFormatPartTypes): number => Number(parts.find((one) => one.type === type)?.value);
  return { year: part('year'), month: part('month'), day: part('day'), hour: part('hour'), minute: part('minute') };
}

/** The moment at which a zone's clock shows this; a time skipped in spring is taken an hour later. */
export function momentOf(time: ZonedTime, zone: string): number {
  const wanted = utcOf(time);
  const first = wanted + (wanted - utcOf(clockOf(wanted, zone)));
  const off = wanted - utcOf(clockOf(first, zone));
  return first + off;
}

/** Fri 27 Nov, 18:00. */
export function sayMoment(moment: number, zone: string): string {
  const { hour, minute } = clockOf(moment, zone);
  const day = sayDay(moment, zone);
  return `${day}, ${String(hour).padStart(2, '0')}:${String(minute).padStart(2, '0')}`;
}

/** Fri 27 Nov. */
export function sayDay(moment: number, zone: string): string {
  const parts = new Intl.DateTimeFormat('en-GB', { timeZone: zone, weekday: 'short', day: 'numeric', month: 'short' });
  const said = parts.formatToParts(moment);
  const part = (type: Intl.DateTimeFormatPartTypes): string => said.find((one) => one.type === type)?.value ?? '';
  return `${part('weekday')} ${part('day')} ${part('month').slice(0, 3)}`;
}

/** 27 Nov 2026. */
export function sayDate(moment: number, zone: string): string {
  const { year, day } = clockOf(moment, zone);
  const said = new Intl.DateTimeFormat('en-GB', { timeZone: zone, month: 'short' }).format(moment);
  return `${day} ${said.slice(0, 3)} ${year}`;
}

function utcOf({ year, month, day, hour, minute }: ZonedTime): number {
  return Date.UTC(year, month - 1, day, hour, minute);
}

/** Which of the days with a given name is meant. */
type Way = 'past' | 'future';

const DAY = 86_400_000;
const HOUR = 3_600_000;
const MINUTE = 60_000;
const WEEKDAYS = ['sun', 'mon', 'tue', 'wed', 'thu', 'fri', 'sat'];
const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

const WEEKDAY = /(?<![a-z])(?:last |this |next |on )?(sun|mon|tue|wed|thu|fri|sat)(?:s|nes|rs|ur)?(?:day)?(?![a-z])/;
const DAY_MONTH =
  /(?<!\d)(\d{1,2})(?:st|nd|rd|th|\.)? ?(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\.?(?: (\d{4}))?/;
const MONTH_DAY =
  /(?<![a-z])(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\.? (\d{1,2})(?:st|nd|rd|th)?(?:,? (\d{4}))?(?!\d|:)/;
const ISO = /(?<!\d)(\d{4})-(\d{1,2})-(\d{1,2})(?!\d)/;
const CLOCK = /(?<![\d.,])(\d{1,2})(?:[:.h](\d{2}))? ?(am|pm|a\.m\.|p\.m\.|o'?clock)?(?![\d:])/g;
const AGO = /(?<![\d.,])(\d{1,3}|an?|half an) ?(hours?|hrs?|h|minutes?|mins?|days?) ago(?![a-z])/;
const FOR =
  /(?<![a-z])for (\d{1,3}(?:[.,]\d)?|an?) ?(hours?|hrs?|h|minutes?|mins?|days?|weeks?)(?![a-z])|(?<![\d.,])(\d{1,3}) ?(hours?|hrs?|h|days?)(?![a-z])(?! ago)/;

interface MomentSaid {
  readonly at: number;
  readonly rest: string;
}

/** The moment a text mentions, at noon if it gives no time; undefined if it mentions none. Never throws. */
export function readMoment(text: string, now: number, zone: string, way: Way): MomentSaid | undefined {
  const plain = plainSigns(withoutHidden(text, ' ')).replace(/\s+/g, ' ');
  const ago = AGO.exec(plain);
  if (ago) return { at: now - lasting(ago[1] ?? '', ago[2] ?? ''), rest: without(plain, ago) };
  if (/(?<![a-z])(?:right )?now(?![a-z])/.test(plain)) {
    return { at: now, rest: plain.replace(/(?:right )?now/, ' ') };
  }
  const day = dayIn(plain, now, zone, way);
  const rest = day?.rest ?? plain;
  const clock = clockIn(rest);
  if (!day && !clock) return undefined;
  const [hour, minute] = clock ? [clock.hour, clock.minute] : [12, 0];
  const date = day?.date ?? clockOf(now, zone);
  let at = momentOf({ ...date, hour, minute }, zone);
  if (!day && way === 'past' && at > now) at -= DAY;
  if (!day && way === 'future' && at <= now) at += DAY;
  if (day?.weekday) at = nearestWeek(at, now, way);
  return { at, rest: clock ? clock.rest : rest };
}

/** A duration such as "for 48 h" or "48 hours" in milliseconds, and the text without it. */
export function readLasting(text: string): { readonly lasts: number; readonly rest: string } | undefined {
  const plain = plainSigns(withoutHidden(text, ' ')).replace(/\s+/g, ' ');
  const match = FOR.exec(plain);
  if (!match) return undefined;
  return { lasts: lasting(match[1] ?? match[3] ?? '', match[2] ?? match[4] ?? ''), rest: without(plain, match) };
}

function lasting(figure: string, unit: string): number {
  const count = figure.startsWith('half') ? 0.5 : figure.startsWith('a') ? 1 : Number(figure.replace(',', '.'));
  const each = unit.startsWith('w') ? 7 * DAY : unit.startsWith('d') ? DAY : unit.startsWith('m') ? MINUTE : HOUR;
  return Math.round(count * each);
}

interface DaySaid {
  readonly date: ZonedDay;
  readonly rest: string;
  readonly weekday: boolean;
}

function dayIn(plain: string, now: number, zone: string, way: Way): DaySaid | undefined {
  const today = clockOf(now, zone);
  const shifted = (days: number): ZonedDay =>
    clockOf(momentOf({ ...today, hour: 12, minute: 0 }, zone) + days * DAY, zone);
  const named =
    /(?<![a-z])(today|tonight|this (?:morning|evening|afternoon)|yesterday|last night|tomorrow)(?![a-z])/.exec(plain);
  if (named) {
    const days = /^(?:yest|last)/.test(named[1] ?? '') ? -1 : named[1] === 'tomorrow' ? 1 : 0;
    // A part of the day counts as its time.
    const part = /morning|afternoon|evening|night/.exec(named[1] ?? '')?.[0] ?? '';
    return { date: shifted(days), rest: `${without(plain, named)} ${part}`, weekday: false };
  }
  const iso = ISO.exec(plain);
  if (iso) return dated(plain, iso, Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const dayMonth = DAY_MONTH.exec(plain);
  const monthDay = dayMonth ? undefined : MONTH_DAY.exec(plain);
  const match = dayMonth ?? monthDay;
  if (match) {
    const [day, month] = dayMonth ? [match[1], match[2]] : [match[2], match[1]];
    const given = match[3] === undefined ? undefined : Number(match[3]);
    const number = MONTHS.indexOf(month ?? '') + 1;
    const year = given ?? yearNear(today, number, Number(day), way);
    return dated(plain, match, year, number, Number(day));
  }
  const weekday = WEEKDAY.exec(plain);
  if (!weekday) return undefined;
  const wanted = WEEKDAYS.indexOf(weekday[1] ?? '');
  const noon = momentOf({ ...today, hour: 12, minute: 0 }, zone);
  const ahead = (wanted - new Date(Date.UTC(today.year, today.month - 1, today.day)).getUTCDay() + 7) % 7;
  return { date: clockOf(noon + ahead * DAY, zone), rest: without(plain, weekday), weekday: true };
}

/** A day of a date; undefined if the month has no such day. */
function dated(plain: string, match: RegExpExecArray, year: number, month: number, day: number): DaySaid | undefined {
  const real = new Date(Date.UTC(year, month - 1, day));
  if (real.getUTCMonth() !== month - 1 || real.getUTCDate() !== day) return undefined;
  return { date: { year, month, day }, rest: without(plain, match), weekday: false };
}

function yearNear(today: ZonedDay, month: number, day: number, way: Way): number {
  const [then, here] = [month * 100 + day, today.month * 100 + today.day];
  if (way === 'past') return then > here ? today.year - 1 : today.year;
  return then < here ? today.year + 1 : today.year;
}

/** Moves a week if the weekday is on the wrong side of now. */
function nearestWeek(at: number, now: number, way: Way): number {
  if (way === 'past') return at > now ? at - 7 * DAY : at;
  return at <= now ? at + 7 * DAY : at;
}

function clockIn(plain: string): { hour: number; minute: number; rest: string } | undefined {
  for (const match of plain.matchAll(CLOCK)) {
    const [, hour = '', minute, half] = match;
    // A bare number is a time only after "at" or "from".
    const before = plain.slice(0, match.index);
    if (minute === undefined && half === undefined && !/(?<![a-z])(?:at|from|since|until|till|by) $/.test(before))
      continue;
    const twelve = half?.startsWith('a') || half?.startsWith('p');
    const value = Number(hour);
    if (Number(minute ?? 0) > 59 || value > (twelve ? 12 : 24)) continue;
    const full = twelve ? (value % 12) + (half?.startsWith('p') ? 12 : 0) : value % 24;
    return { hour: full, minute: Number(minute ?? 0), rest: without(plain, match) };
  }
  const word = /(?<![a-z])(noon|midday|midnight|morning|afternoon|evening|night)(?![a-z])/.exec(plain);
  if (!word) return undefined;
  const hours: Readonly<Record<string, number>> = { morning: 8, afternoon: 15, evening: 18, night: 21, midnight: 0 };
  return { hour: hours[word[1] ?? ''] ?? 12, minute: 0, rest: without(plain, word) };
}

function without(plain: string, match: RegExpExecArray | RegExpMatchArray): string {
  const at = match.index ?? 0;
  return `${plain.slice(0, at)} ${plain.slice(at + match[0].length)}`;
}
