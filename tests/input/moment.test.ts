/** Moments as people tell them, in the zone they live in, with a clock that stands. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clockOf, momentOf, readLasting, readMoment, sayMoment } from '../../src/input/moment.ts';

/** Wednesday, 25 November 2026, 12:00 UTC. */
const NOW = Date.UTC(2026, 10, 25, 12);
const HOUR = 3_600_000;
const at = (text: string, way: 'past' | 'future' = 'past', zone = 'UTC'): string | undefined => {
  const said = readMoment(text, NOW, zone, way);
  return said && new Date(said.at).toISOString().slice(0, 16);
};

describe('a moment', () => {
  it.each([
    ['since Friday 18:00', '2026-11-20T18:00'],
    ['since friday 6pm', '2026-11-20T18:00'],
    ['since Wed 9:00', '2026-11-25T09:00'],
    ['since Wednesday 15:00', '2026-11-18T15:00'],
    ['yesterday 9am', '2026-11-24T09:00'],
    ['last night', '2026-11-24T21:00'],
    ['this morning', '2026-11-25T08:00'],
    ['since 8:30', '2026-11-25T08:30'],
    ['since 13:00', '2026-11-24T13:00'],
    ['at noon', '2026-11-25T12:00'],
    ['2 hours ago', '2026-11-25T10:00'],
    ['half an hour ago', '2026-11-25T11:30'],
    ['now', '2026-11-25T12:00'],
    ['27 Nov 18:00', '2025-11-27T18:00'],
    ['Nov 20, 18:00', '2026-11-20T18:00'],
    ['2026-11-20 18.00', '2026-11-20T18:00'],
    ['tues 7 p.m.', '2026-11-24T19:00'],
  ])('“%s” was %s', (text, expected) => expect(at(text)).toBe(expected));

  it.each([
    ['until Sunday 10:00', '2026-11-29T10:00'],
    ['until Wednesday 15:00', '2026-11-25T15:00'],
    ['until Wednesday 9:00', '2026-12-02T09:00'],
    ['until tomorrow 8am', '2026-11-26T08:00'],
    ['until 3 Jan', '2027-01-03T12:00'],
    ['till 11:00', '2026-11-26T11:00'],
  ])('“%s” will be %s', (text, expected) => expect(at(text, 'future')).toBe(expected));

  it('is none where none is told, and 31 November is none', () => {
    expect(at('bedroom')).toBeUndefined();
    expect(at('12 x 14')).toBeUndefined();
    expect(at('since 31 Nov')).toBeUndefined();
  });

  it('is told in the zone of the asker: 18:00 in New York is 23:00 UTC in November and 22:00 in July', () => {
    expect(at('since Friday 18:00', 'past', 'America/New_York')).toBe('2026-11-20T23:00');
    expect(at('2026-07-03 18:00', 'past', 'America/New_York')).toBe('2026-07-03T22:00');
  });

  it('said in a zone is the moment that its clock shows', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 4_000_000_000 }),
        fc.constantFrom('UTC', 'Europe/Berlin', 'America/New_York', 'Asia/Kolkata', 'Australia/Lord_Howe'),
        (seconds, zone) => {
          const moment = Math.floor(seconds / 60) * 60_000;
          const again = momentOf(clockOf(moment, zone), zone);
          // An hour that the clock shows twice in autumn may be the other one.
          expect(clockOf(again, zone)).toEqual(clockOf(moment, zone));
          expect(Math.abs(again - moment)).toBeLessThanOrEqual(HOUR);
        },
      ),
    );
  });

  it('is said short', () => expect(sayMoment(NOW, 'Europe/Berlin')).toBe('Wed 25 Nov, 13:00'));
});

describe('how long something lasts', () => {
  it.each([
    ['for 48 h', 48],
    ['for 2 days', 48],
    ['24 hours', 24],
    ['for an hour', 1],
    ['for 1,5 h', 1.5],
    ['for a week', 168],
  ])('“%s” is %i h', (text, hours) => expect((readLasting(text)?.lasts ?? 0) / HOUR).toBe(hours));

  it('is not how long ago something was', () => expect(readLasting('2 hours ago')).toBeUndefined());
});

it('nothing typed throws', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 80 }), (text) => {
      readMoment(text, NOW, 'UTC', 'past');
      readLasting(text);
    }),
  );
});
