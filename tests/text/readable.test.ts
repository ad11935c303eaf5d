/** Texts read as easily as eighth grade: a sentence fails that most readability formulas of retext-readability call hard. */

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from '@babel/parser';
import retextEnglish from 'retext-english';
import retextReadability from 'retext-readability';
import { unified } from 'unified';
import { describe, expect, it } from 'vitest';
import { ENTRIES } from '../../src/handbook/all-entries.ts';
import { entryText } from '../../src/handbook/answer.ts';

const TEXTS = 'src/text';
/** Years of age of an eighth grader. */
const AGE = 14;

/** Names that nothing shorter stands for, so they count as a short word: a reader who doesn't know them needs them. */
const NAMES =
  /\b(?:asbestos|abatement|accredited|certified|licensed|structural|contractor|engineer|electrician|plumber|inspector|laboratory|emergency|disinfect(?:ant|ed)|dehumidifier|respirator|professional|remediator|restorer|resilient|silica|insurer|herringbone|calcium (?:sulfate|chloride)|anhydrite)s?\b/gi;

/** Sentences that may be hard, by what they contain, each with why. */
const EXCUSED: readonly (readonly [RegExp, string])[] = [
  [/^(?:Floor: planks|Readings are figures|Rows run long|Tear-out is worked out for)/, 'lists what can be typed'],
  [/poison control/, 'whom to call, by name and number'],
  [/^A respirator with organic-vapor/, 'the name on the cartridge to buy'],
  [/^A notch or hole in a joist/, 'the limits of the code, with their figures'],
  [/^up to 6 sq ft in a room/, 'the limits of the lead rule'],
  [/^Measure each wall at the floor/, 'holds a line to type'],
];

interface Node {
  readonly type?: string;
  readonly value?: unknown;
  readonly source?: unknown;
  readonly id?: { readonly name?: string };
  readonly quasis?: readonly { readonly value: { readonly cooked: string } }[];
}

/** Texts of a file without those in other languages; `12` stands for each inserted value. */
function textsOf(path: string): readonly string[] {
  const found: string[] = [];
  const walk = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return;
    const { type, value, source, id, quasis } = node as Node;
    if (source || id?.name === 'LINES') return;
    if (type === 'StringLiteral') found.push(String(value));
    if (quasis) found.push(quasis.map((one) => one.value.cooked).join('12'));
    for (const one of Object.values(node)) walk(one);
  };
  walk(parse(readFileSync(path, 'utf8'), { sourceType: 'module', plugins: ['typescript'] }).program);
  return found;
}

const reading = unified()
  .use(retextEnglish)
  .use(retextReadability, { age: AGE, minWords: 7 })
  .use(function nothingPrinted() {
    this.compiler = () => '';
  });

async function hardIn(text: string): Promise<readonly string[]> {
  const { messages } = await reading.process(text.replace(NAMES, 'name'));
  return messages.map(({ actual }) => actual ?? '');
}

async function hardOf(texts: readonly string[]): Promise<readonly string[]> {
  const hard: string[] = [];
  for (const text of texts) if ((await hardIn(text)).length > 0) hard.push(text);
  return hard;
}

describe('what people read', () => {
  it('is found hard where it is hard', async () => {
    expect(
      await hardIn(
        'The determination of the applicable moisture-limitation methodology necessitates consultation of manufacturer documentation.',
      ),
    ).toHaveLength(1);
    expect(await hardIn('Lay the first row along the long wall and keep the gap.')).toEqual([]);
  });

  it('reads easily: questions, problems and the words around figures', async () => {
    const texts = readdirSync(TEXTS).flatMap((name) => (name.endsWith('.ts') ? textsOf(join(TEXTS, name)) : []));
    expect(texts.length).toBeGreaterThan(1500);
    const hard = await hardOf(texts);
    expect(hard.filter((text) => !EXCUSED.some(([pattern]) => pattern.test(text)))).toEqual([]);
    for (const [pattern, why] of EXCUSED)
      expect(
        hard.some((text) => pattern.test(text)),
        why,
      ).toBe(true);
  });

  it('reads easily: the handbook', async () => {
    const texts = ENTRIES.flatMap((entry) => {
      const { lead, lines } = entryText(entry, false);
      return [lead, ...lines];
    });
    const hard = await hardOf(texts);
    expect(hard.length / texts.length).toBeLessThan(0.05);
  });
});
