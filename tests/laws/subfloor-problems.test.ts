/** Laws of subfloor asks typed wrong: no fault, no long wait, and what is offered as a mend mends. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerTo, problemsOf } from '../chat/asked.ts';

const ASKS = {
  squeaks: { area: '4 x 6 ft' },
  patch: { damage: `20 x 30 in at 3' from left, 5' from bottom`, 'first-joist': '16 in' },
  level: { readings: '3/16 in over 10 ft' },
  moisture: { readings: '10 11 12' },
} as const;

const OPTIONS = {
  squeaks: ['area', 'spacing', 'thickness', 'joists', 'apart', 'pack', 'found'],
  patch: [
    'damage',
    'first-joist',
    'spacing',
    'thickness',
    'joists',
    'room',
    'margin',
    'notch',
    'sheet',
    'tube',
    'bead',
    'found',
  ],
  level: ['readings', 'rule', 'area', 'ramp', 'bag', 'pour', 'line', 'floor', 'found'],
  moisture: ['readings', 'method', 'limit', 'area', 'flooring', 'boards', 'leak', 'water', 'mould', 'found'],
} as const;

const odd = fc.oneof(
  fc.constantFrom(
    'banana',
    '-3',
    '0',
    '1,234',
    '12 x',
    '9999 ft',
    '½',
    '3m8',
    '400%',
    'rh',
    '3 lb 90% rh',
    'grid',
    'grid 2 ft: 0 1; 0',
    'grid 2 ft: 0 x; 0 1',
    'grid 2 ft: 0 1 1/4; 0 1 2',
    '20 x 30 in at 3 ft from right, 5 ft from top',
    '20 x 30 ft at 3, 5',
    '20 x 30 in',
    '1 in over 1 in',
    '1 x 2 ft',
    'constructor',
    '__proto__',
    '5 in x 5 in',
    '3 x 4 ft, 9 ft',
    '10 L per 900 kg',
  ),
  fc.string({ maxLength: 14 }).map((text) => text.replace(/[:,;]/g, ' ')),
  fc.string({ unit: 'grapheme', maxLength: 10 }).map((text) => text.replace(/[:,;]/g, ' ')),
);

describe.each(Object.keys(ASKS) as (keyof typeof ASKS)[])('%s typed wrong', (command) => {
  it('is answered without a fault, and every mend leaves no problem where there was one', async () => {
    let met = 0;
    const typed = fc.dictionary(fc.constantFrom(...OPTIONS[command]), odd, {
      minKeys: 1,
      maxKeys: 3,
      noNullPrototype: true,
    });
    await fc.assert(
      fc.asyncProperty(typed, async (given) => {
        const line = Object.entries({ ...ASKS[command], ...given }).map(([option, text]) => `${option}: ${text}`);
        const problems = problemsOf(await answerTo(`${command} ${line.join(', ')}`));
        met += problems.length;
        for (const { fix, option, expected } of problems) {
          expect(expected).toMatch(/[.?]$/);
          if (fix !== undefined) expect(problemsOf(await answerTo(fix)), `${option}: ${fix}`).toEqual([]);
        }
      }),
      { numRuns: 90 },
    );
    expect(met).toBeGreaterThan(60);
  });
});

it('long texts are answered, or told what is missing', async () => {
  const long = [
    '1/2 '.repeat(700),
    '9'.repeat(3000),
    'a '.repeat(1500),
    '1 x '.repeat(900),
    '0, '.repeat(1200),
    `${'1/'.repeat(1500)}`,
    'over '.repeat(700),
  ];
  for (const text of long) {
    for (const [command, ask] of Object.entries(ASKS)) {
      const [first = ''] = Object.keys(ask);
      const answer = await answerTo(`${command} ${first}: ${text}, found: ${text}`.slice(0, 3900));
      if ('problems' in answer) expect(answer.problems[0].expected, `${command} ${text.slice(0, 12)}`).not.toBe('');
    }
  }
});
