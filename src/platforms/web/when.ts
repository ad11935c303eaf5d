/** A moment in words, in the zone in which the project's times are told. */

/** Such as `Wed, Nov 25, 14:05`. A zone that the machine does not know is told as UTC. */
export function when(at: number, zone: string): string {
  return format(at, zone, { weekday: 'short', month: 'short', day: 'numeric', hour: '2-digit', minute: '2-digit' });
}

/** Such as `Wed, Nov 25, 2026, 14:05`, for what lies further away. */
export function whenInYear(at: number, zone: string): string {
  return format(at, zone, {
    weekday: 'short',
    year: 'numeric',
    month: 'short',
    day: 'numeric',
    hour: '2-digit',
    minute: '2-digit',
  });
}

function format(at: number, zone: string, parts: Intl.DateTimeFormatOptions): string {
  const timeZone = isZone(zone) ? zone : 'UTC';
  return new Intl.DateTimeFormat('en-US', { ...parts, hourCycle: 'h23', timeZone }).format(at);
}

function isZone(zone: string): boolean {
  try {
    new Intl.DateTimeFormat('en-US', { timeZone: zone });
    return true;
  } catch {
    return false;
  }
}
