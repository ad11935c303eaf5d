/** Progress as people tell it: stages, rooms, states and times. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readProgress } from '../../src/input/parse-progress.ts';

/** Wednesday, 25 November 2026, 12:00 UTC. */
const NOW = Date.UTC(2026, 10, 25, 12);
const HOUR = 3_600_000;
const ROOMS = ['hall', 'living', 'bedroom', 'closet', 'bed'];
const given = (text: string) => readProgress(text, ROOMS, NOW, 'UTC');

describe('progress', () => {
  it.each([
    ['done tear-out bedroom', 'done', ['tear-out'], ['bedroom']],
    ['tore out the carpet in bedroom and hall', 'done', ['tear-out'], ['hall', 'bedroom']],
    ['bedroom tear out done', 'done', ['tear-out'], ['bedroom']],
    ['finished laying the living room', 'done', ['lay'], ['living']],
    ['floor is down in the hall', 'done', ['lay'], ['hall']],
    ['hall is flat', 'done', ['flat'], ['hall']],
    ['subfloor flat and dry in hall', 'done', ['flat', 'dry'], ['hall']],
    ['not flat bedroom', 'blocked', ['flat'], ['bedroom']],
    ['hall is still wet', 'blocked', ['dry'], ['hall']],
    ['bedroom isn’t dry', 'blocked', ['dry'], ['bedroom']],
    ['squeaks fixed hall', 'done', ['subfloor'], ['hall']],
    ['skip caulk closet', 'skipped', ['caulk'], ['closet']],
    ['undo tear-out hall', 'open', ['tear-out'], ['hall']],
    ['painted the trim in the closet', 'done', ['paint'], ['closet']],
    ['done bedroom', 'done', [], ['bedroom']],
    ['baseboards and caulk done', 'done', ['baseboards', 'caulk'], []],
  ])('“%s”', (text, state, stages, rooms) => expect(given(text)).toMatchObject({ state, stages, rooms }));

  it('everywhere is told as such', () => expect(given('clear done everywhere')).toMatchObject({ everywhere: true }));

  it('a wait with its beginning', () => {
    expect(given('acclimating since Friday 18:00')).toMatchObject({
      state: 'waiting',
      stages: ['acclimate'],
      since: Date.UTC(2026, 10, 20, 18),
    });
  });

  it('a wait that lasts, and one with its end', () => {
    expect(given('leveller in bedroom drying since 9am for 24 h')).toMatchObject({
      state: 'waiting',
      stages: ['flat'],
      rooms: ['bedroom'],
      since: Date.UTC(2026, 10, 25, 9),
      lasts: 24 * HOUR,
    });
    expect(given('paint drying hall until Friday 8am')).toMatchObject({
      state: 'waiting',
      stages: ['paint'],
      until: Date.UTC(2026, 10, 27, 8),
    });
  });

  it('what tells neither stage nor state is none', () => {
    expect(given('blah')).toBeUndefined();
    expect(given('how are you')).toBeUndefined();
  });

  it.each(['', 'list', 'bedroom', 'what’s next?'])('“%s” shows', (text) => expect(given(text)?.state).toBe('show'));

  it('nothing typed throws, whatever rooms are called', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 60 }),
        fc.array(fc.string({ unit: 'grapheme' })),
        (text, names) => {
          readProgress(text, names, NOW, 'UTC');
        },
      ),
    );
  });
});
