/** The same unsafe facts in other words: by where a thing lies, in a room's name, in a sentence, in a limit. */

import { describe, expect, it } from 'vitest';
import { answerTo, problemsOf } from '../chat/asked.ts';

const PATCH = `patch damage: 20 x 30 in at 3' from left, 5' from bottom, first-joist: 16 in`;

describe('what carries, told by where it lies', () => {
  it.each([
    'rotten wood under the plywood',
    'split board under the subfloor',
    'wooden part under plywood is cut',
    'dry rot in panel and wood under',
    'boards on edge split',
    'soft wood below the panel',
    'large dip, floor low in the middle of the room',
    'floor low in the middle',
  ])('%s', async (found) => {
    expect(await answerTo(`${PATCH}, found: ${found}`)).toMatchObject({ call: expect.stringMatching(/engineer/) });
    expect(await answerTo(`squeaks area: 4 x 6 ft, found: ${found}`)).toHaveProperty('why');
    expect(await answerTo(`level readings: 1/4 in over 6 ft, found: ${found}`)).toHaveProperty('why');
  });

  it.each([
    'water stain under the carpet',
    'plywood under carpet stained',
    'rotten subfloor under the window',
    'washing machine leak, soft plywood',
    'soft in the middle of the panel',
    'low spot at the edge',
  ])('not: %s', async (found) => {
    expect(await answerTo(`${PATCH}, found: ${found}`)).toHaveProperty('headline');
  });
});

describe('a rotten panel', () => {
  it.each(['squeaks area: 4 x 6 ft', 'level readings: 1/4 in over 6 ft, area: 4 x 6 ft'])(
    'is neither screwed nor levelled over: %s',
    async (ask) => {
      expect(await answerTo(`${ask}, found: rotten subfloor`)).toHaveProperty('why');
      expect(await answerTo(`${ask}, found: water stain`)).toHaveProperty('headline');
    },
  );
});

describe('in the name of a room', () => {
  it.each([
    ['joist rotted through', /engineer/],
    ['sewage room', /restorer/],
    ['asbestos tile room', /asbestos/],
  ])('%s', async (name, who) => {
    const given = await answerTo(`${PATCH}, room: ${name} 10' x 12'`);
    expect(given).toMatchObject({ call: expect.stringMatching(who) });
  });

  it.each(['living', 'electrical closet', 'boiler room', 'bath'])('not: %s', async (name) => {
    expect(await answerTo(`${PATCH}, room: ${name} 10' x 12'`)).toHaveProperty('headline');
  });
});

describe('a second floor below, without a name of its own, in an old house', () => {
  it.each([
    'floor: carpet over old floor',
    'floor: carpet on existing flooring',
    'floor: laminate over the old floor',
    'floor: click vinyl plank over old vinyl',
    'floor: click vinyl plank and vinyl below',
    'floor: ceramic tile over old tile',
    'floor: ceramic over tiles',
    'floor: carpet, below: old floor',
    'floor: carpet, below: original',
    'floor: carpet, below: planks',
  ])('%s', async (given) => {
    expect(await answerTo(`tearout room: 10x12, ${given}, built: 1955`)).toHaveProperty('why');
    expect(await answerTo(`plan room: 10x12, ${given}, built: 1955`)).toHaveProperty('why');
  });

  it.each([
    'floor: carpet over old wood floor',
    'floor: old carpet on plywood floor',
    'floor: click vinyl plank',
    'floor: ceramic tile on plywood',
    'floor: carpet, below: old oak floor',
  ])('not: %s', async (given) => {
    expect(await answerTo(`tearout room: 10x12, ${given}, built: 1955`)).toHaveProperty('headline');
  });
});

describe('a sentence that tells of a hazard is refused for it', () => {
  it.each([
    'tear out 10x12 carpet over old vinyl in my 1960 house',
    "tear out 10 x 12 carpet, house 1960, there's black stuff under",
    'rip out 10x12 carpet from 1955, old floor under it',
    "there's toilet overflow under the carpet, patch 20 x 30 in at 3' from left, 5' from bottom",
    'my joist is rotten, how do I patch a 20 by 30 inch hole 3 feet from left 5 ft from bottom, first joist 16 in',
    'squeaky 4x6 area, the joist is cracked',
  ])('%s', async (sentence) => {
    expect(await answerTo(sentence)).toHaveProperty('why');
  });

  it.each([
    'how do i fix a squeaky floor 4 by 6 feet with wires below',
    'i found an old wire under the squeaky board, how long should the screws be',
  ])('leads what is said of the work: %s', async (sentence) => {
    const answer = await answerTo(sentence);
    expect('headline' in answer && answer.headline).toMatch(/^Leave (?:wires|pipes) alone/);
    expect(answer).toHaveProperty('data.kind', 'hazard');
  });

  it('and none for a sound one', async () => {
    expect(await answerTo('tear out 10x12 carpet in my 2001 house')).toHaveProperty('headline');
  });
});

describe('what is offered for words that are not plain keeps the doubt', () => {
  it.each([
    'level readings: high 1/2 in over 8 ft on vinyl',
    'level readings: 1/4 in over 6 ft of gooey stuff',
    'moisture readings: 10 11 12 black mould everywhere',
  ])('%s', async (ask) => {
    const [problem] = problemsOf(await answerTo(ask));
    expect(problem?.option).toBe('readings');
    expect(problem).not.toHaveProperty('fix');
  });
});

it('hears of asbestos beside the year, too', async () => {
  expect(await answerTo('tearout room: 10x12, built: 1955 with asbestos in it')).toHaveProperty('why');
  expect(await answerTo('tearout room: 10x12, built: about 1955')).toHaveProperty('headline');
});

it('takes a hand that is not one of two for no two-handed lift', async () => {
  expect(problemsOf(await answerTo('lift 45 lb, way: box, hand'))).toHaveLength(1);
  expect(await answerTo('lift 45 lb, way: box, two hand')).toHaveProperty('headline');
  expect(await answerTo('lift 45 lb, way: boxes, both hands')).toHaveProperty('headline');
});

describe('a limit at which wood decays', () => {
  it.each(['20', '25%', '40'])('%s', async (limit) => {
    const problems = problemsOf(await answerTo(`moisture readings: 19%, limit: ${limit}`));
    expect(problems.map(({ option }) => option)).toEqual(['limit']);
  });

  it('does not stand against the limits of concrete', async () => {
    expect(await answerTo('moisture readings: 82% RH, limit: 85')).toHaveProperty('headline');
  });
});

describe('safety of a task told in other words', () => {
  it.each([
    ['safety tearout', 'tear-out'],
    ['safety lifting cartons upstairs', 'lifting'],
    ['safety when painting', 'painting'],
    ['safety', 'laying'],
  ])('%s', async (ask, task) => {
    expect(await answerTo(ask)).toMatchObject({ data: { task } });
  });

  it.each(['safety electricity', 'safety xyzzy'])('asks back: %s', async (ask) => {
    expect(problemsOf(await answerTo(ask)).map(({ option }) => option)).toEqual(['task']);
  });
});

it.each(['0 x 30 in', '20 x 0 in', '0 in x 0 in'])('asks back a damage without a size: %s', async (size) => {
  const ask = PATCH.replace('20 x 30 in', size);
  expect(problemsOf(await answerTo(ask)).map(({ option }) => option)).toEqual(['damage']);
});

it('takes click vinyl for planks, which are stacked and not rolled', async () => {
  expect(await answerTo('tearout room: 10x12, built: 1995, floor: click vinyl')).toMatchObject({
    data: { strips: [] },
  });
});

it('answers a lift in the units of its weight', async () => {
  expect(await answerTo('lift 20 kg')).toMatchObject({ headline: expect.stringMatching(/^20 kg .* kg /) });
});

it('reads a name told with a space for its hyphen', async () => {
  const ask = PATCH.replace('first-joist', 'first joist');
  expect(await answerTo(ask)).toMatchObject({ data: { kind: 'patch' } });
});
