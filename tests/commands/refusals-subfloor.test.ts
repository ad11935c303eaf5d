/** What subfloor commands refuse, in many wordings and through every option that takes words; and what they must not refuse. */

import { describe, expect, it } from 'vitest';
import type { Answer } from '../../src/chat/pipeline.ts';
import { answerTo, problemsOf } from '../chat/asked.ts';

const PATCH = `patch damage: 20 x 30 in at 3' from left, 5' from bottom, first-joist: 16 in`;

function callOf(given: Answer): string | undefined {
  return 'why' in given ? given.call : undefined;
}

/** What each hazard is told as, and whom the refusal names. Common practice: who is licensed for what. */
const HAZARDS: readonly (readonly [who: RegExp, wordings: readonly string[]])[] = [
  [
    /licensed contractor or a structural engineer/,
    [
      'rot in a joist',
      'rotten joist',
      'JOIST ROT',
      'the joist is soft',
      "the joist isn't rotten, just soft",
      'joist not rotten but crumbly',
      'joists punky at the end',
      'decay in the beam',
      'termites in the framing',
      'jiost is rotten',
      'rotten plywood and rotten joist',
      'joist and panel rot',
      'wet 2x10',
      'cracked joist',
      'split girder',
      'joist has a big notch',
      'somebody cut the joist',
      'fire damage to rim',
      'sagging',
      'the floor sags',
      'sagging floor, otherwise fine',
      'bouncy',
      'springy floor',
      'saging',
      'it gives way under me',
      'load-bearing wall above',
      'only a little sag, nothing else',
      'r o t in the j o i s t',
      'j.o.i.s.t rot',
      'joist mold',
    ],
  ],
  [
    /restorer/,
    [
      'sewage',
      'Sewage backup',
      'raw sewage, dried long ago',
      'toilet overflowed',
      'the overflowing toilet',
      'overflow of the toilet',
      'drain backed up',
      'septic water',
      'black water',
      'category 3 water',
      'flood water from the creek',
      'feces',
      's e w a g e',
      'sewaqe',
      'sewgae',
      'sewgae',
      's3wage',
      'no smell, only sewage',
      'sewage but it is clean now',
      'water stain and sewage',
    ],
  ],
  [
    /electrician/,
    [
      'live wiring',
      'a cable',
      'wire under the panel',
      'electrical conduit',
      'a junction box',
      'no longer live wires',
      'elektrical cable',
      'power line in the bay',
      'wìre',
    ],
  ],
  [
    /plumber or heating/,
    ['a pipe', 'copper line', 'plumbing in the way', 'heating tubes', 'radiant floor', 'pex', 'a duct', 'drain below'],
  ],
  [/gas/, ['gas line', 'propane pipe']],
  [/asbestos/, ['asbestos', 'old tiles', 'black mastic', 'linoleum', '9x9 tiles', 'vinyl tile on it', 'asbestoss']],
  [/look at it open/, ['unsure', 'not sure', 'I do not know', 'something', 'maybe']],
];

const given = HAZARDS.flatMap(([who, wordings]) => wordings.map((wording) => [wording, who] as const));

describe('patch refuses', () => {
  it.each(given)('found: %s', async (wording, who) => {
    const given = await answerTo(`${PATCH}, found: ${wording}`);
    expect(callOf(given)).toMatch(who);
    if ('why' in given) {
      expect(given.why.length).toBeGreaterThan(30);
      // An emergency is answered alone.
      if (!given.data.emergency) expect(given.cautions.length).toBeGreaterThan(0);
    }
  });

  it.each(given.filter(([wording]) => !/[,:]/.test(wording)))('with the damage: %s', async (wording) => {
    const ask = `patch damage: 20 x 30 in at 3' from left, 5' from bottom, ${wording}, first-joist: 16 in`;
    expect(await answerTo(ask)).toHaveProperty('why');
  });
});

describe('every command with words refuses', () => {
  const asks = [
    (words: string) => `squeaks area: 4 x 6 ft, found: ${words}`,
    (words: string) => `squeaks area: 4 x 6 ft ${words}`,
    (words: string) => `level readings: 1/2 in over 8 ft, found: ${words}`,
    (words: string) => `level readings: 1/2 in over 8 ft ${words}`,
    (words: string) => `level readings: ${words} 1/2 in over 8 ft`,
    (words: string) => `level readings: 1/2 in over 8 ft, area: 4 x 6 ft ${words}`,
    (words: string) => `moisture readings: 10 11 12, found: ${words}`,
    (words: string) => `moisture readings: 10 11 12 ${words}`,
    (words: string) => `moisture readings: 10 11 12, mould: 1 x 1 ft ${words}`,
  ];
  const words = ['rotten joists', 'sewage', 'live wires', 'a gas pipe', 'old tiles', 'sagging', 'unsure'];
  it.each(asks.flatMap((ask) => words.map((said) => [ask(said)])))('%s', async (ask) => {
    expect(await answerTo(ask)).toHaveProperty('why');
  });
});

describe('what is not plain is asked back, and what is offered does not get round it', () => {
  it.each([
    'rot',
    'some decay',
    'a wobbly doohickey',
    'xyzzy',
    'the joist',
    'I think it is fine',
    'joist looks odd',
    'brown goo',
  ])('found: %s', async (wording) => {
    const given = await answerTo(`${PATCH}, found: ${wording}`);
    if ('why' in given) return;
    const problems = problemsOf(given);
    expect(problems.map(({ option }) => option)).toEqual(['found']);
    expect(problems[0]).not.toHaveProperty('fix');
  });

  it.each(['hmm', 'dishwater maybe from upstairs thing', 'liquid'])('water: %s', async (wording) => {
    const given = await answerTo(`moisture readings: 10 11 12, water: ${wording}`);
    if ('why' in given) return;
    const [problem] = problemsOf(given);
    expect(problem?.option).toBe('water');
    expect(problem).not.toHaveProperty('fix');
  });
});

describe('what is harmless is answered', () => {
  it.each([
    'none',
    'water stain',
    'old pet stains',
    'dry rot in the plywood only, joists are sound and dry',
    'rotten subfloor, joists solid',
    'swollen particle board',
    'hole in the panel',
    'no rot, no sewage',
    'no wires or pipes',
    'joists look good',
    'crack in the plywood, nothing else',
    'burn marks from an iron',
    'soft spot between the joists',
    'staples and nails',
    'mold spot',
  ])('found: %s', async (wording) => {
    expect(await answerTo(`${PATCH}, found: ${wording}`)).toHaveProperty('headline');
  });
});

// Joist limits (reported: International Residential Code, R502.8.1): 2×10: notch 1.54 in, hole 3.08 in.
describe('a notch or hole past its limit is referred', () => {
  const deep = `${PATCH}, joist-depth: 9 1/4 in`;
  it.each([
    [`${deep}, notch: 1 9/16 in, notch-length: 2 in, notch-place: outer`],
    [`${deep}, notch: 40 mm, notch-length: 2 in, notch-place: outer`],
    [`${deep}, notch: 1/2 in, notch-length: 2 in, notch-place: middle`],
    [`${deep}, notch: 1/2 in, notch-length: 4 in, notch-place: outer`],
    [`${deep}, notch: 1/2 in, notch-place: outer`],
    [`${deep}, notch: 1/2 in, notch-length: 2 in`],
    [`${deep}, hole: 3 1/8 in, hole-edge: 3 in`],
    [`${deep}, hole: 1 in, hole-edge: 1 in`],
    [`${deep}, hole: 1 in`],
    [`${PATCH}, notch: 1 in, notch-length: 1 in, notch-place: outer`],
  ])('%s', async (ask) => {
    expect(callOf(await answerTo(ask))).toMatch(/structural engineer/);
  });

  it('with limits said no wider than they are', async () => {
    const given = await answerTo(`${deep}, hole: 4 in, hole-edge: 2 in`);
    expect('why' in given ? given.why : '').toContain('notch 1 1/2", at an end 2 5/16", hole 3 1/16"');
  });

  it.each([
    [`${deep}, notch: 1 1/2 in, notch-length: 3 in, notch-place: outer`],
    [`${deep}, notch: 2 1/4 in, notch-length: 3 in, notch-place: end`],
    [`${deep}, hole: 3 in, hole-edge: 2 in`],
  ])('%s is within', async (ask) => {
    expect(await answerTo(ask)).toHaveProperty('headline');
  });
});

describe('where no patch lands on joists a contractor is named', () => {
  it.each([
    [`patch damage: 20 x 30 in at 0 from left, 5' from bottom, first-joist: 16 in`],
    [`${PATCH}, room: 5' x 14'`],
    [`patch damage: 6 x 10 in at 18 in from left, 5' from bottom, first-joist: 16 in, room: 3'4" x 14'`],
  ])('%s', async (ask) => {
    expect(callOf(await answerTo(ask))).toMatch(/contractor/);
  });
});

// Mould under about 10 ft² is a homeowner's (reported: US EPA); sewage is a professional's (published: EPA 402-K-02-003).
describe('after water', () => {
  it.each(['3 x 4 ft', '10 sq ft', '1 m²', '4 ft', '2 x 5 ft'])('mould of %s is referred', async (mould) => {
    expect(callOf(await answerTo(`moisture readings: 10 11 12, mould: ${mould}`))).toMatch(/remediator/);
  });

  it('less is not, nor in a patch', async () => {
    expect(await answerTo('moisture readings: 10 11 12, mould: 3 x 3 ft')).toHaveProperty('headline');
    expect(await answerTo(`${PATCH}, found: mold`)).toHaveProperty('headline');
    const large = `patch damage: 40 x 50 in at 3' from left, 5' from bottom, first-joist: 16 in, found: mildew`;
    expect(callOf(await answerTo(large))).toMatch(/remediator/);
  });

  it.each([
    'sewage',
    'toilet',
    'the toilet leaked',
    'dirty water',
    'clean sewage',
    'drain',
    'black water',
    'flood',
    'river water',
    'unsure',
    'maybe clean',
    'tap water and sewage',
    'not sewage but toilet',
  ])('water: %s is referred', async (water) => {
    expect(callOf(await answerTo(`moisture readings: 10 11 12, water: ${water}`))).toMatch(/restorer|look at it open/);
  });

  it.each(['clean', 'rain', 'supply line', 'grey', 'washing machine', 'dishwasher leak', 'none'])(
    'water: %s is answered',
    async (water) => {
      expect(await answerTo(`moisture readings: 10 11 12, water: ${water}`)).toHaveProperty('headline');
    },
  );
});

// Old resilient flooring up to 1980 is presumed to hold asbestos, and not sanded (published: RFCI; reported: OSHA).
it('high spots on an old floor are not sanded', async () => {
  for (const readings of ['high 1/4 in over 6 ft', 'hump 1/16 in over 6 ft', 'grid 2 ft: 0 -1/8; 0 0']) {
    expect(callOf(await answerTo(`level readings: ${readings}, floor: old`))).toMatch(/abatement/);
  }
  expect(await answerTo('level readings: 1/4 in over 6 ft, floor: old')).toHaveProperty('headline');
});
