/** `prep tearout`, `prep lift`, `prep plan` and `safety` as they are asked, against sums done by hand. */

import { describe, expect, it, test } from 'vitest';
import { TASKS } from '../../src/figures/safety-figures.ts';
import type { Reply } from '../../src/reply/reply.ts';
import { feet, inches, SQUARE_TICKS_PER_SQUARE_FOOT } from '../../src/units/length.ts';
import { answerTo, problemsOf, replyTo } from '../chat/asked.ts';

const POUND = 0.453_592_37;
const YARD = 764.554_857_984;

interface TearoutData {
  readonly kind: string;
  readonly area: number;
  readonly strips: readonly { width: number; length: number; count: number; kilograms: number }[];
  readonly tackStrip: number;
  readonly kilograms: number;
  readonly litres: number;
  readonly trips: number;
  readonly staples: readonly [number, number];
}

async function tearout(rest: string): Promise<TearoutData> {
  const { data } = await replyTo(`tearout room: ${rest}`);
  return data as unknown as TearoutData;
}

function textOf(reply: Reply): string {
  return JSON.stringify(reply.blocks);
}

describe('a carpet of 12 x 14 ft', () => {
  // By hand, at 10 lb a square yard: 168 ft² = 18.67 yd² = 186.7 lb; at 105 lb a loose cubic yard 1.78 yd³ (US EPA, 2016).
  it('strips, weight, volume, tack strip, staples', async () => {
    const data = await tearout('12x14, built: 1995');
    expect(Object.keys(data)).toEqual([
      'kind',
      'area',
      'rooms',
      'strips',
      'tackStrip',
      'kilograms',
      'litres',
      'trips',
      'staples',
    ]);
    expect(data.kind).toBe('tearout');
    expect(data.area).toBe(168 * Number(SQUARE_TICKS_PER_SQUARE_FOOT));
    expect(data.kilograms / POUND).toBeCloseTo((168 / 9) * 10, 9);
    expect(data.litres / YARD).toBeCloseTo(((168 / 9) * 10) / 105, 9);
    expect(data.trips).toBe(1);
    expect(data.strips).toHaveLength(1);
    // Carpet alone at 4.5 lb a square yard: a strip of 3 x 14 ft is 21 lb, and the pad is bagged apart.
    expect(data.strips[0]).toMatchObject({ width: feet(3), length: feet(14), count: 4 });
    expect((data.strips[0]?.kilograms ?? 0) / POUND).toBeCloseTo((42 / 9) * 4.5, 9);
    // Four walls of 52 ft less one doorway of 32 in.
    expect(data.tackStrip).toBe(feet(52) - inches(32));
    // Two rows along 6 ft every 12 in are one in 3 ft²; three rows every 6 in are one in 1 ft².
    expect(data.staples).toEqual([56, 168]);
  });

  it('lighter rolls are shorter, and a strong back cuts fewer', async () => {
    const count = async (rest: string) =>
      (await tearout(`12x14, ${rest}`)).strips.reduce((n, strip) => n + strip.count, 0);
    expect(await count('carry: 20 lb')).toBe(8);
    expect(await count('carry: 10 lb')).toBe(12);
    expect(await count('carry: 50 lb')).toBe(4);
    expect(await count('strip: 2 ft')).toBe(6);
    expect(await count('weight: 5 lb/sq yd')).toBe(4);
    expect(await count('carpet-weight: 9 lb/sq yd')).toBe(8);
  });

  it('rolls and bags come to the whole: carpet alone in rolls, its pad in bags', async () => {
    const weight = (strips: TearoutData['strips']) =>
      strips.reduce((sum, one) => sum + one.kilograms * one.count, 0) / POUND;
    for (const [given, carpet, whole] of [
      ['', 84, 186.667],
      [', weight: 6 lb/sq yd', 84, 112],
      [', weight: 20 lb/sq yd', 168, 373.333],
      [', weight: 4 lb/sq yd', 74.667, 74.667],
      [', carpet-weight: 6 lb/sq yd', 112, 186.667],
    ] as const) {
      const data = await tearout(`12x14, built: 1995${given}`);
      expect(weight(data.strips), given).toBeCloseTo(carpet, 3);
      expect(data.kilograms / POUND, given).toBeCloseTo(whole, 3);
    }
    expect(textOf(await replyTo('tearout room: 12x14'))).toContain('carpet 84 lb in rolls, pad 103 lb in bags');
  });

  // A US city's collection rule (City of DeKalb FAQ, published): at most 10 rolls a week, cans of at most 32 gallons.
  it('tells how many weeks of rolls there are, and what cans are taken', async () => {
    expect(textOf(await replyTo('tearout room: 35x20'))).toContain('14 rolls are 2 weeks at 10 a week');
    expect(textOf(await replyTo('tearout room: 12x14'))).not.toContain('a week');
    expect(textOf(await replyTo('tearout room: 12x14'))).toContain('32 gallons');
  });

  // CRI 104/105 §11.1 (published): in rooms over 30 ft strip 1 3/4 in wide, or doubled.
  it('looks further out for strip in a room over 30 ft', async () => {
    expect(textOf(await replyTo('tearout room: 30x12'))).toContain('up to 1 3/8');
    expect(textOf(await replyTo(`tearout room: 30'1" x 12'`))).toMatch(/up to 2 3\/8.*|may lie doubled, then up to/);
    expect(textOf(await replyTo(`tearout room: 30'1" x 12'`))).toContain('may lie doubled');
  });

  it('tells whether rolls keep to the hauler’s rule', async () => {
    expect(textOf(await replyTo('tearout room: 12x14'))).toContain('rolls are at most 4');
    expect(textOf(await replyTo('tearout room: 12x14, strip: 6 ft'))).toContain('some rolls are over 4');
    expect(textOf(await replyTo('tearout room: 12x14, carry: 60 lb'))).toContain('rolls are at most 4');
    expect(textOf(await replyTo('tearout room: 12x14, carry: 60 lb, bundle-weight: 20 lb'))).toContain(
      'some rolls are over 4',
    );
  });

  it('on concrete has no staples', async () => {
    expect((await tearout('12x14, below: concrete')).staples).toEqual([0, 0]);
  });

  it('photographs come first when an insurer pays', async () => {
    const { blocks } = await replyTo('tearout room: 12x14, insurer: yes');
    const steps = blocks.find((block) => block.kind === 'steps');
    expect(steps?.kind === 'steps' && steps.steps[0]).toContain('Photograph');
  });

  it('says that the tack strip’s gully is at most 3/8 in', async () => {
    expect(textOf(await replyTo('tearout room: 12x14'))).toMatch(
      /up to 1 3\/8\\" out from the wall \(it is set at most 3\/8\\"/,
    );
  });
});

it.each([
  'hall',
  'loft',
  'bath',
  'den',
  'bed',
  'attic',
  'study',
  'stairs',
  'closet',
  'landing',
  'living',
  'bay',
  'foyer',
])('a room named “%s:” is no misspelt option', async (name) => {
  for (const command of ['tearout', 'plan'])
    expect(await answerTo(`${command} room: ${name}: 3x11; kitchen: 10x10`)).toHaveProperty('headline');
});

describe('doorways', () => {
  test.each([
    ['none', 52 * 12],
    ['1', 52 * 12 - 32],
    ['2 x 30 in', 52 * 12 - 60],
    ['30 in, 36 in', 52 * 12 - 66],
    ['30 in and 3 ft', 52 * 12 - 66],
    ['one a room x 40 in', 52 * 12 - 40],
    ['3 doors', 52 * 12 - 96],
  ])('%s', async (doors, left) => {
    expect((await tearout(`12x14, doors: ${doors}`)).tackStrip).toBe(inches(left));
  });

  it('one a room counts the rooms', async () => {
    expect((await tearout('12x14; 10x10')).tackStrip).toBe(inches((52 + 40) * 12 - 64));
  });

  test.each(['seven', '99', '-2', '2 x', ''])('“%s” is asked back or left to its standard', async (doors) => {
    const given = await answerTo(`tearout room: 12x14, doors: ${doors}`);
    if (doors === '') expect('headline' in given).toBe(true);
    else expect(problemsOf(given)).toEqual([{ option: 'doors', got: doors, expected: expect.any(String) }]);
  });

  it('wider than all walls are a problem', async () => {
    expect(problemsOf(await answerTo('tearout room: 3x3, doors: 20 x 3 ft'))[0]?.option).toBe('doors');
  });
});

describe('hauls', () => {
  // 40 x 40 ft of carpet at 10 lb/yd²: 1,777.8 lb, 16.93 yd³: 9 beds of 2 yd³, 5.6 trailers of 3 yd³, one 20 yd³ container.
  test.each([
    ['pickup', 9],
    ['trailer 3 cu yd', 6],
    ['trailer 3 x 3 x 9 ft', 6],
    ['trailer 2 m³', 7],
    ['container', 1],
  ])('%s: %i', async (haul, trips) => expect((await tearout(`40x40, vehicle: ${haul}`)).trips).toBe(trips));

  it('the smallest container', async () => {
    expect((await replyTo('tearout room: 40x40, vehicle: container')).headline).toContain('a 20 cu yd container');
    expect((await replyTo('tearout room: 12x14, vehicle: container')).headline).toContain('a 10 cu yd container');
    expect((await replyTo('tearout room: 70x70, vehicle: container')).headline).toContain('2 40 cu yd containers');
  });

  // 168 ft² of tile at 10 lb are 1,680 lb: two loads by a payload of 1,000 lb, though 1.95 yd³ fit one bed.
  it('a payload counts before the bed is full', async () => {
    expect((await tearout('12x14, floor: ceramic tile')).trips).toBe(2);
    expect((await tearout('12x14, floor: ceramic tile, payload: 2000 lb')).trips).toBe(1);
  });

  it('a trailer without its size is asked back', async () => {
    const [problem] = problemsOf(await answerTo('tearout room: 12x14, vehicle: trailer'));
    expect(problem).toEqual({ option: 'vehicle', got: 'trailer', expected: expect.stringContaining('trailer') });
  });
});

describe('weights that no roll has', () => {
  test.each(['12x14, strip: 6 ft, carry: 5 lb, weight: 40 lb/sq ft', '200x250, carry: 5 lb, weight: 20 lb/sq ft'])(
    '%s is asked back, and no other weight is made up',
    async (rest) => {
      const [problem] = problemsOf(await answerTo(`tearout room: ${rest}`));
      expect(problem?.option).toBe('weight');
      expect(problem).not.toHaveProperty('fix');
    },
  );

  test.each([
    ['8 lb/sq yd', 8 / 9],
    ['8 lb per square yard', 8 / 9],
    ['1.5 lb/sq ft', 1.5],
    ['1,5 lb/ft²', 1.5],
    ['4 kg/m²', 4 / 4.882_427_636],
  ])('%s is read', async (weight, perSquareFoot) => {
    expect((await tearout(`12x14, weight: ${weight}`)).kilograms / POUND / 168).toBeCloseTo(perSquareFoot, 6);
  });

  test.each(['heavy', '8 lb', '0 kg/m²', '900 kg/m²'])('%s is asked back', async (weight) => {
    expect(problemsOf(await answerTo(`tearout room: 12x14, weight: ${weight}`))[0]?.option).toBe('weight');
  });
});

describe('other floors', () => {
  it('laminate has no strips, no tack strip, no staples', async () => {
    const data = await tearout('12x14, floor: laminate, built: 1995');
    expect([data.strips, data.tackStrip, data.staples]).toEqual([[], 0, [0, 0]]);
    expect(data.kilograms / POUND).toBeCloseTo(168 * 2.2, 9);
  });

  it('metric rooms are said in metric', async () => {
    const { headline } = await replyTo('tearout room: 3.8 x 4.2 m, built: 1995');
    expect(headline).toMatch(/mm x .* m, .* kg a roll/);
  });
});

describe('lift', () => {
  it('gives the limit that counts in kilograms, and the index', async () => {
    const { data } = await replyTo(
      'lift 26 lb, from: 22 in, to: 59 in, reach-end: 20 in, often: 3 a minute, grip: fair',
    );
    const { kind, limit, index } = data as unknown as { kind: string; limit: number; index: number };
    expect(kind).toBe('lift');
    expect((limit / POUND).toFixed(1)).toBe('15.3');
    expect(index).toBeCloseTo((26 * POUND) / limit, 12);
  });

  it('leaves the end out where the load is let go', async () => {
    const { data } = await replyTo(
      'lift 26 lb, from: 22 in, to: 59 in, reach-end: 20 in, often: 3 a minute, grip: fair, set-down: loose',
    );
    expect(((data as unknown as { limit: number }).limit / POUND).toFixed(1)).toBe('34.8');
  });

  test.each([
    ['often: every 5 minutes', 'often: 0.2 a minute'],
    ['often: every 20 seconds', 'often: 3/min'],
    ['stretch: 45 min', 'stretch: 1 h'],
    ['stretch: 1 h 30 min', 'stretch: 2 hours'],
    ['stretch: 2 1/2 h', 'stretch: 8 h'],
    ['twist: none', 'twist: 0°'],
  ])('%s is %s', async (one, other) => {
    const limit = async (rest: string) => (await replyTo(`lift 30 lb, ${rest}`)).data;
    expect(await limit(one)).toEqual(await limit(other));
  });

  test.each(['often: sometimes', 'stretch: 9 h', 'stretch: long', 'twist: 200', 'weight: heavy', 'weight: 0 lb'])(
    '%s is asked back, and nothing is made up',
    async (rest) => {
      const problems = problemsOf(await answerTo(rest.startsWith('weight') ? `lift ${rest}` : `lift 30 lb, ${rest}`));
      expect(problems.map(({ option }) => option)).toEqual([rest.split(':')[0]]);
      expect(problems[0]).not.toHaveProperty('fix');
    },
  );
});

describe('plan', () => {
  it('puts tear-out before the subfloor, dry and flat before the floor, trim after it', async () => {
    const { data } = await replyTo('plan room: 12x14, acclimate: 48');
    expect((data as unknown as { stages: string[] }).stages).toEqual([
      'Before anything moves',
      'Tear-out',
      'Subfloor',
      'Dry and flat',
      'Cartons in the room',
      'Floor',
      'Trim and thresholds',
      'Finish',
    ]);
  });

  it('leaves the cartons’ rest out unless their maker asks for it, and adds up what must be waited', async () => {
    const data = async (rest: string) =>
      (await replyTo(`plan room: 12x14${rest}`)).data as unknown as { stages: string[]; waitHours: number };
    expect((await data('')).stages).not.toContain('Cartons in the room');
    expect((await data('')).waitHours).toBe(0);
    expect((await data(', level: yes, leveller-dry: 36, acclimate: 48')).waitHours).toBe(84);
  });

  it('tells an old house to look below and to test its paint, a young one not', async () => {
    const old = textOf(await replyTo('plan room: 12x14, built: 1962'));
    const young = textOf(await replyTo('plan room: 12x14, built: 1995'));
    for (const note of ['lift a corner first', 'test painted trim']) {
      expect(old).toContain(note);
      expect(young).not.toContain(note);
    }
  });

  it('offers asks that are answered', async () => {
    for (const ask of ['plan room: 12x14, built: 1995', 'tearout room: 12x14, built: 1995, doors: 2 x 30 in']) {
      const { actions } = await replyTo(ask);
      expect(actions.length).toBeGreaterThan(0);
      for (const action of actions) expect(await answerTo(action.ask)).toHaveProperty('headline');
    }
  });
});

describe('safety', () => {
  test.each(TASKS)('%s: every hazard has words and a source', async (task) => {
    const { cautions, blocks } = await replyTo(`safety task: ${task}`);
    expect(cautions.length).toBeGreaterThan(0);
    for (const { text, source } of cautions) {
      expect(text.length).toBeGreaterThan(30);
      expect(source?.standing).toBeDefined();
    }
    expect(JSON.stringify(blocks)).toContain('Local code');
  });

  test.each([
    ['tear-out', ['asbestos', 'lead', 'tack-strip', 'tetanus']],
    ['nailing', ['nail-gun', 'hidden-lines', 'noise']],
    ['cutting', ['hidden-lines', 'saw', 'dust', 'noise']],
    ['levelling', ['silica', 'fumes', 'lifting']],
    ['painting', ['lead', 'fumes']],
    ['leak', ['leak-water', 'hidden-lines', 'mould']],
  ])('%s warns of %s', async (task, topics) => {
    const { cautions } = await replyTo(`safety task: ${task}`);
    expect(cautions.map(({ topic }) => topic)).toEqual(expect.arrayContaining(topics));
  });

  test.each(['saw', 'saw 2 h', 'saw at 100', 'saw 25 h at 90', 'saw 2 h at 900', 'loud'])(
    'a day of “%s” is asked back, and no hours or noise are made up',
    async (day) => {
      const [problem] = problemsOf(await answerTo(`safety day: ${day}`));
      expect(problem?.option).toBe('day');
      expect(problem).not.toHaveProperty('fix');
    },
  );
});
