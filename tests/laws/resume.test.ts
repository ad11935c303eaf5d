/** A floor begun: whatever is told to be left, the rest is legal, cut from what is there, and never called enough when it is not. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ResumeResult } from '../../commands/floor/resume.ts';
import { answerTo, firstFloorTo, floorTo, problemsOf } from '../chat/asked.ts';
import { type FloorData, readFloor } from '../outside/floor-checker-data.ts';
import { checkResume } from '../outside/resume-checker.ts';

const begun = fc.record({
  wide: fc.integer({ min: 60, max: 240 }),
  deep: fc.integer({ min: 40, max: 180 }),
  notch: fc.constantFrom('', ' - 30 in x 25 in'),
  plank: fc.constantFrom('6 x 48 in, 10 per carton', '7 x 36 in, 12 per carton', '5 x 48 in, 8 per carton, no lock'),
  pattern: fc.constantFrom<string>('stair-step', 'half', 'thirds', 'offcut-first'),
  kerf: fc.constantFrom('0', '1/8 in'),
  share: fc.double({ min: 0, max: 0.99, noNaN: true }),
  end: fc.option(fc.integer({ min: 8, max: 35 })),
  planks: fc.integer({ min: 0, max: 160 }),
  offcuts: fc.array(fc.record({ length: fc.integer({ min: 4, max: 47 }), end: fc.constantFrom('left', 'right', '') }), {
    maxLength: 12,
  }),
});
type Begun = typeof begun extends fc.Arbitrary<infer T> ? T : never;

function floorOf({ wide, deep, notch, plank, pattern, kerf }: Begun): string {
  return `room: bedroom ${wide} in x ${deep} in${notch}, plank: ${plank}, pattern: ${pattern}, kerf: ${kerf}`;
}

async function plannedFor(given: Begun): Promise<FloorData> {
  const read = readFloor(
    JSON.parse(
      JSON.stringify(await (given.pattern === 'scattered' ? floorTo : firstFloorTo)(`planks ${floorOf(given)}`)),
    ),
  );
  if ('faults' in read) throw new Error(read.faults.join('\n'));
  return read.floor;
}

/** The rest of a floor, by what an asker would type; undefined where the row told cannot lie so. */
async function restFor(given: Begun, rows: number): Promise<ResumeResult | undefined> {
  const ended = given.end === null ? 'is laid' : `ended at ${given.end} in`;
  const offcuts = given.offcuts.map(({ length, end }) => `${length} in ${end}`.trim()).join(', ');
  const line = `resume ${floorOf(given)}, so-far: row ${rows} ${ended}; ${given.planks} planks left; ${offcuts === '' ? 'no offcuts' : `offcuts: ${offcuts}`}`;
  const answer = await answerTo(line);
  if ('headline' in answer && answer.data.kind === 'resume') return answer.data as ResumeResult;
  expect(problemsOf(answer).map(({ option }) => option)).toEqual(['so-far']);
  return undefined;
}

describe('the rest of a floor begun', () => {
  it('is legal, from what is there, and enough only where it is', async () => {
    let answered = 0;
    let enough = 0;
    await fc.assert(
      fc.asyncProperty(begun, async (given) => {
        const floor = await plannedFor(given);
        const rows = floor.regions[0]?.rows.length ?? 0;
        const laid = Math.max(1, Math.min(rows - 1, Math.floor(rows * given.share)));
        if (rows < 2) return;
        const rest = await restFor(given, laid);
        if (!rest) return;
        answered++;
        if (rest.suffices) enough++;
        expect(checkResume(JSON.parse(JSON.stringify(rest)), floor)).toEqual([]);
        expect(rest.stock.offcuts).toHaveLength(given.offcuts.length);
      }),
      { numRuns: 45 },
    );
    // Both verdicts were met, and most asks were answered.
    expect(answered).toBeGreaterThan(30);
    expect(enough).toBeGreaterThan(5);
    expect(answered - enough).toBeGreaterThan(5);
  });

  it('is legal in a scattered floor, whose plan is the one that stood in the end', async () => {
    await fc.assert(
      fc.asyncProperty(begun, async (drawn) => {
        const given = {
          ...drawn,
          pattern: 'scattered',
          wide: Math.min(drawn.wide, 130),
          deep: Math.min(drawn.deep, 90),
          end: null,
        };
        const floor = await plannedFor(given);
        if ((floor.regions[0]?.rows.length ?? 0) < 3) return;
        const rest = await restFor(given, 2);
        expect(checkResume(JSON.parse(JSON.stringify(rest)), floor)).toEqual([]);
      }),
      { numRuns: 3 },
    );
  });

  it('takes no more planks when another offcut is at hand', async () => {
    await fc.assert(
      fc.asyncProperty(begun, async (given) => {
        const floor = await plannedFor({ ...given, pattern: 'stair-step' });
        const rows = floor.regions[0]?.rows.length ?? 0;
        if (rows < 2) return;
        const ask: Begun = { ...given, pattern: 'stair-step', end: null, planks: 1000, offcuts: [] };
        const without = await restFor(ask, 1);
        const more = await restFor(
          {
            ...ask,
            offcuts: [
              { length: 34, end: 'right' },
              { length: 34, end: 'left' },
            ],
          },
          1,
        );
        expect(more?.need ?? 0).toBeLessThanOrEqual(without?.need ?? 0);
      }),
      { numRuns: 6 },
    );
  });
});
