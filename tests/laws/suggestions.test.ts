/** Every line that is suggested is answered, holds all that was typed and nothing that was not: over examples, whole answers and mutations. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { type Answer, answer } from '../../src/chat/pipeline.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { mutatedLines } from '../bench/mutate.ts';
import { ASKER, answerTo, problemsOf } from '../chat/asked.ts';
import { demoPorts } from '../chat/demo-flat.ts';
import { GOLDEN_ASKS } from '../golden/golden-asks.ts';
import { invented, lost, suggestionFlaws } from '../outside/suggestion-checker.ts';

/** Here a share of them all is tried; `npm run bench -- suggestions` tries every one, and 2,000 mutated lines. */
const LINES = 250;
const EVERY = 3;

const EXAMPLES = commands.flatMap(({ examples }) => examples.map(({ ask }) => ask));
const SEEDS = [...EXAMPLES.filter((ask) => !ask.startsWith('project ')), ...Object.values(GOLDEN_ASKS)];

/** The first answer to a line: what is suggested stands in it, and better ones have the same. */
async function firstAnswer(text: string): Promise<Answer> {
  const request = { asker: ASKER, preferences: DEFAULT_PREFERENCES, text } as const;
  const fault = (reference: string, cause: unknown): never => {
    throw new Error(`fault ${reference} at “${text}”`, { cause });
  };
  for await (const first of answer(request, commands, { fault })) return first;
  throw new Error(`no answer to “${text}”`);
}

const known = new Map<string, Promise<boolean>>();
function isAnswered(line: string): Promise<boolean> {
  const answered = known.get(line) ?? firstAnswer(line).then((given) => 'headline' in given);
  known.set(line, answered);
  return answered;
}

function suggesting(given: Answer): Parameters<typeof suggestionFlaws>[1] {
  return 'problems' in given || 'actions' in given ? given : {};
}

describe('every line suggested', () => {
  it.each([
    ['examples and whole answers', SEEDS.filter((_, i) => i % EVERY === 0), 50],
    ['mutations of them', [...mutatedLines(17, LINES, SEEDS)], 10],
  ])('is answered and true to what was typed: %s', async (_name, lines, least) => {
    let suggested = 0;
    for (const line of lines) {
      const { lines: count, flaws } = await suggestionFlaws(line, suggesting(await firstAnswer(line)), isAnswered);
      expect(flaws).toEqual([]);
      suggested += count;
    }
    expect(suggested).toBeGreaterThan(least);
  });

  it('is answered in a project, from what stands in it', async () => {
    const asker = { platform: 'terminal', id: 'suggestions' } as const;
    const fault = (_reference: string, cause: unknown): never => {
      throw cause;
    };
    let suggested = 0;
    for (const ask of EXAMPLES.filter((line) => line.startsWith('project ')).filter((_, i) => i % EVERY === 0)) {
      const ports = await demoPorts(asker, fault);
      const given = await answerTo(ask, { asker, ports });
      // What a line does must not be done to the next: each is tried where this one left the project.
      const before = new Map(ports.store.records);
      const own = 'blocks' in given ? [given.headline, JSON.stringify(given.blocks), ...before.values()] : [];
      const { lines, flaws } = await suggestionFlaws(
        ask,
        suggesting(given),
        async (line) => {
          const answer = await answerTo(line, { asker, ports });
          ports.store.records.clear();
          for (const [key, record] of before) ports.store.records.set(key, record);
          return 'headline' in answer;
        },
        own,
      );
      expect(flaws).toEqual([]);
      suggested += lines;
    }
    expect(suggested).toBeGreaterThan(25);
  });
});

/** Homes of up to eight rooms: names with figures, a bay at its angle, a corner left out, a closet joined. */
const feet = fc.integer({ min: 8, max: 19 });
const room = fc
  .tuple(fc.constantFrom('living', 'office', 'den', 'kitchen'), feet, feet, fc.integer({ min: 0, max: 11 }))
  .map(([name, wide, deep, inches]) => `${name} ${wide}' x ${deep}'${inches === 0 ? '' : `${inches}"`}`);
const shaped = fc
  .tuple(room, fc.constantFrom('', ' less 3 x 4', ' with a bay 6 x 2 at 45°', ' + 2 x 5 closet'))
  .map(([one, shape]) => one + shape);
const home = fc.record({
  rooms: fc.array(shaped, { minLength: 1, maxLength: 7 }),
  numbered: fc.tuple(fc.integer({ min: 2, max: 5 }), feet, feet),
  plank: fc.constantFrom('7 x 48 in, 10 per carton', '6 x 36 in, 18 sq ft per carton, $2.89/sq ft'),
});

/** Slips that are mended without a guess, each with what was meant. */
const SLIPS: Readonly<
  Record<string, (rooms: readonly string[], plank: string) => readonly [typed: string, meant: string]>
> = {
  'a command misspelt': (rooms, plank) => [
    `plnks room: ${rooms.join('; ')}, plank: ${plank}`,
    `planks room: ${rooms.join('; ')}, plank: ${plank}`,
  ],
  'an option misspelt': (rooms, plank) => [
    `planks room: ${rooms.join('; ')}, plnk: ${plank}`,
    `planks room: ${rooms.join('; ')}, plank: ${plank}`,
  ],
  'a name with a figure and no colon': (rooms, plank) => [
    `planks room: ${rooms.join('; ').replace(/(bedroom \d):/, '$1')}, plank: ${plank}`,
    `planks room: ${rooms.join('; ')}, plank: ${plank}`,
  ],
  'a pattern misspelt': (rooms, plank) => [
    `planks room: ${rooms.join('; ')}, plank: ${plank}, pattern: hafl`,
    `planks room: ${rooms.join('; ')}, plank: ${plank}, pattern: half`,
  ],
  'a price without its mark': (rooms, plank) => [
    `planks room: ${rooms.join('; ')}, plank: ${plank.replace('$', '')}`,
    `planks room: ${rooms.join('; ')}, plank: ${plank}`,
  ],
};

describe('a slip in a home', () => {
  it.each(Object.keys(SLIPS))('%s: the line suggested is what was meant, whole', async (slip) => {
    let mended = 0;
    await fc.assert(
      fc.asyncProperty(home, async ({ rooms, numbered: [number, wide, deep], plank }) => {
        const all = [...rooms, `bedroom ${number}: ${wide}' x ${deep}'`];
        const [typed, meant] = SLIPS[slip]?.(all, plank) ?? ['', ''];
        if (typed === meant) return;
        const fixes = problemsOf(await answerTo(typed)).map(({ fix }) => fix);
        expect(new Set(fixes), typed).toEqual(new Set([meant]));
        mended += fixes.length;
      }),
      { numRuns: 12 },
    );
    expect(mended).toBeGreaterThan(0);
  });
});

describe('the checker', () => {
  it.each([
    ['planks room: 12x14', 'planks room: 12x14, plank: 6 x 48 in', ['6', '48']],
    ['planks room: 12½ x 14', 'planks room: 12 1/2 x 14', []],
    ['planks room: 3,8 m x 4 m', 'planks room: 3.8 m x 4 m', []],
  ])('of %s → %s sees %j made up', (typed, line, figures) => expect(invented(line, [typed])).toEqual(figures));

  it.each([
    ['bedroom 2 10x12 + 2x5 closet', 'bedroom 10x12 + 2x5 closet', ['2']],
    ['den 9x9 with a bay 6x2 at 45°', 'den 9x9 with a bay 6x2', ['45', '45']],
    ['den 9x9 with a bay 6x2', 'den 9x9; 6x2', ['bay']],
    ['hall 3x11; bath 5x8', 'hall 3x11; 5x8', ['bath']],
  ])('of %s → %s sees %j left out', (typed, line, what) => expect(lost(line, typed)).toEqual(what));

  it('sees a line that is not answered', async () => {
    const { flaws } = await suggestionFlaws('x', { problems: [{ fix: 'y' }] }, async () => false);
    expect(flaws).toEqual(['"x" → "y" is not answered']);
  });
});
