/** The law of a follow-up: it is answered as the whole request said at once. */

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { replyTo } from './asked.ts';
import { portsInMemory } from './demo-flat.ts';

const side = fc.integer({ min: 8, max: 20 });
const room = fc.tuple(side, side).map(([one, other]) => `${one}x${other}`);
const box = fc.integer({ min: 180, max: 270 }).map((tenths) => `${tenths / 10} sq ft a box`);
const price = fc.integer({ min: 105, max: 595 }).map((cents) => `$${(cents / 100).toFixed(2)} a sq ft`);
const share = fc.integer({ min: 4, max: 18 }).map((percent) => `${percent}% extra`);
const doors = fc.integer({ min: 1, max: 3 }).map((count) => `${count} doors 30 in`);
const stock = fc.constantFrom(8, 10, 12, 16).map((feet) => `${feet} foot sticks`);
const spacing = fc.constantFrom(12, 16, 24).map((inches) => `joists ${inches} in on center`);

/** A first message of a room, and two details of which either may come later. */
const REQUESTS = [
  { first: 'how much flooring for', details: [box, price] },
  { first: 'how much flooring for', details: [box, share] },
  { first: 'how much flooring for', details: [share, price] },
  { first: 'how much baseboard for', details: [doors, stock] },
  { first: 'squeaky floor', details: [spacing, spacing] },
] as const;

function conversation() {
  const ports = portsInMemory((_reference, cause) => {
    throw cause;
  });
  return (text: string) => replyTo(text, { ports });
}

it('a detail said later gives what it gives in the first message', { timeout: 120_000 }, async () => {
  const drawn = fc.constantFrom(...REQUESTS).chain(({ first, details: [one, other] }) =>
    fc.record({
      begin: fc.constant(first),
      room,
      early: one,
      late: other,
      opening: fc.constantFrom('', 'and ', 'with '),
    }),
  );
  await fc.assert(
    fc.asyncProperty(drawn, async ({ begin, room: size, early, late, opening }) => {
      const squeaks = begin.startsWith('squeaky');
      const start = squeaks ? `${begin} ${size}` : `${begin} ${size}, ${early}`;
      const say = conversation();
      await say(start);
      const after = await say(`${opening}${late}`);
      const whole = await conversation()(`${start}, ${late}`);
      expect(after.data, `${start} | ${opening}${late}`).toEqual(whole.data);
    }),
    { seed: 19, numRuns: 60 },
  );
});

it('a corrected room gives what it gives when it is said first', { timeout: 120_000 }, async () => {
  const correction = fc.constantFrom('no, ', 'actually ', 'sorry, ', 'i meant ', 'what about ');
  await fc.assert(
    fc.asyncProperty(room, room, box, correction, async (before, after, carton, words) => {
      const say = conversation();
      await say(`how many boxes for ${before}, ${carton}`);
      const corrected = await say(`${words}${after}`);
      const whole = await conversation()(`how many boxes for ${after}, ${carton}`);
      expect(corrected.data, `${before} | ${words}${after}`).toEqual(whole.data);
    }),
    { seed: 19, numRuns: 40 },
  );
});

it('“in metric” says the same floor in meters, and “in feet” in feet again', async () => {
  const say = conversation();
  const before = await say('how much flooring for 12x15, 22 sq ft a box');
  const metric = await say('in metric');
  expect(metric.headline).toContain('16.72 m²');
  expect(metric.headline).not.toContain('sq ft');
  expect((await say('in feet')).headline).toBe(before.headline);
});
