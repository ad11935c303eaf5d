/** Sharing as people tell it: what, with whom, what they may do, until when; and what it is not taken for. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSharing } from '../../src/input/parse-share.ts';

/** Wednesday, 25 November 2026, 12:00 UTC. */
const NOW = Date.UTC(2026, 10, 25, 12);
const ROOMS = ['hall', 'living', 'bedroom', 'closet'];
const DAY = 86_400_000;

const said = (text: string) => {
  const given = readSharing(text, ROOMS, NOW, 'UTC');
  if (!('given' in given)) return given;
  const { until, ...rest } = given.given;
  const end =
    until === undefined ? {} : { until: until === 'always' ? until : new Date(until).toISOString().slice(0, 16) };
  return { ...(given.do === 'change' ? { id: given.id } : {}), ...rest, ...end };
};

describe('what is told of sharing', () => {
  it.each([
    ['shopping list', { what: 'shopping', rest: '' }],
    ['my shopping list for 3 days', { what: 'shopping', until: '2026-11-28T12:00', rest: '' }],
    ['the laying guide of the bedroom', { what: 'guide', room: 'bedroom', rest: '' }],
    ['the living room’s guide, with a link', { what: 'guide', room: 'living', to: 'link', rest: '' }],
    ['cut list to Sam', { what: 'cuts', label: 'Sam', rest: '' }],
    [
      'checklist with “Big Al” for two weeks, they may look',
      { what: 'checklist', label: 'Big Al', role: 'look', until: '2026-12-09T12:00', rest: '' },
    ],
    ['tear-out until friday', { what: 'tearout', until: '2026-11-27T23:59', rest: '' }],
    ['tear out until Friday 6pm', { what: 'tearout', until: '2026-11-27T18:00', rest: '' }],
    [
      'everything with the installer for a month',
      { what: 'project', label: 'the installer', until: '2026-12-25T12:00', rest: '' },
    ],
    [
      'whole project with <@100000000000000002>, may measure',
      { what: 'project', to: { member: '100000000000000002' }, role: 'measure', rest: '' },
    ],
    ['shopping list with <@U0EXAMPLE|sam>', { what: 'shopping', to: { member: 'U0EXAMPLE' }, rest: '' }],
    ['cut list, with a code', { what: 'cuts', to: 'code', rest: '' }],
    [
      'shopping list with Sam, until tomorrow, may tick',
      { what: 'shopping', label: 'Sam', role: 'tick', until: '2026-11-26T23:59', rest: '' },
    ],
    ['shopping list with: Sam, name: Dana', { what: 'shopping', label: 'Dana', rest: '' }],
    ['shopping list for good', { what: 'shopping', until: 'always', rest: '' }],
    ['2 until 2026-12-01', { id: '2', until: '2026-12-01T23:59', rest: '' }],
    ['share 2 may look', { id: '2', role: 'look', rest: '' }],
    ['guide of the kitchen', { what: 'guide', rest: 'kitchen' }],
    ['bananas', { rest: 'bananas' }],
  ])('%s', (text, given) => {
    expect(said(text)).toEqual(given);
    // Capitals and spaces change nothing but a name.
    if (!('label' in given) && !text.includes('<@')) expect(said(`  ${text.toUpperCase()}  `)).toEqual(given);
  });

  it.each([
    ['', { do: 'list' }],
    ['Who can see it?', { do: 'list' }],
    ['stop', { do: 'stop', which: '' }],
    ['stop 2', { do: 'stop', which: '2' }],
    ['Stop sharing with Sam', { do: 'stop', which: 'with Sam' }],
    ['leave', { do: 'leave' }],
  ])('%j is no new share', (text, given) => {
    expect(said(text)).toEqual(given);
  });

  it('is read without a throw, and a name is a piece of what was typed', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 80, unit: 'grapheme' }),
        fc.constantFrom('', 'shopping list with ', 'until ', 'stop '),
        (text, before) => {
          const given = readSharing(`${before}${text}`, ROOMS, NOW, 'UTC');
          if (!('given' in given)) return;
          const { label, until } = given.given;
          if (label !== undefined)
            expect(`${before}${text}`.normalize('NFC').replace(/\s+/gu, ' ')).toContain(label.split(' ')[0]);
          if (typeof until === 'number') expect(Number.isFinite(until) && until < NOW + 5000 * DAY).toBe(true);
        },
      ),
    );
  });
});
