/** Clock and calendar of a time zone. */

/** A day of the calendar; months count from 1. */
export interface ZonedDay {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

export interface ZonedTime extends ZonedDay {
  readonly hour: number;
  readonly minute: number;
}

/** The zone of this machine, as an IANA name. */
export function hostZone(): string {
  return new Intl.DateTimeFormat('en-US').resolvedOptions().timeZone;
}

/** What clock and calendar show in a zone at a moment, in milliseconds since 1970. */
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

/** The moment at which a zone's clock shows this; an hour that is left out in spring is taken as the one after. */
export function momentOf(time: ZonedTime, zone: string): number {
  const wanted = utcOf(time);
  const first = wanted + (wanted - utcOf(clockOf(wanted, zone)));
  const off = wanted - utcOf(clockOf(first, zone));
  return first + off;
}

/** A moment as it is said: Fri 27 Nov, 18:00. */
export function sayMoment(moment: number, zone: string): string {
  const { hour, minute } = clockOf(moment, zone);
  const day = sayDay(moment, zone);
  return `${day}, ${String(hour).padStart(2, '0')}:${String(minute).padStart(2, '0')}`;
}

/** A day as it is said: Fri 27 Nov. */
export function sayDay(moment: number, zone: string): string {
  const parts = new Intl.DateTimeFormat('en-GB', { timeZone: zone, weekday: 'short', day: 'numeric', month: 'short' });
  const said = parts.formatToParts(moment);
  const part = (type: Intl.DateTimeFormatPartTypes): string => said.find((one) => one.type === type)?.value ?? '';
  return `${part('weekday')} ${part('day')} ${part('month').slice(0, 3)}`;
}

/** A day with its year: 27 Nov 2026. */
export function sayDate(moment: number, zone: string): string {
  const { year, day } = clockOf(moment, zone);
  const said = new Intl.DateTimeFormat('en-GB', { timeZone: zone, month: 'short' }).format(moment);
  return `${day} ${said.slice(0, 3)} ${year}`;
}

function utcOf({ year, month, day, hour, minute }: ZonedTime): number {
  return Date.UTC(year, month - 1, day, hour, minute);
}
