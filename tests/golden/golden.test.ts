/** Whole answers kept as files, text and data: `npm run golden` rewrites them, and the diff is read before it is kept. */

import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { render } from '../../src/platforms/terminal/render.ts';
import { toJson } from '../../src/platforms/terminal/send.ts';
import { answerTo } from '../chat/asked.ts';
import { checkFloor } from '../outside/floor-checker.ts';
import { GOLDEN_ASKS } from './golden-asks.ts';

const FILES = new URL('files/', import.meta.url);
const asks = Object.entries(GOLDEN_ASKS);

/** JSON with one row of pieces, one wall, one fact a line: short enough to be read in a diff. */
function laidOut(value: unknown, indent = ''): string {
  const flat = JSON.stringify(value);
  if (flat.length <= 110 || typeof value !== 'object' || value === null) return flat;
  const deeper = `${indent}  `;
  const [open, close] = Array.isArray(value) ? '[]' : '{}';
  const parts = Array.isArray(value)
    ? value.map((part: unknown) => laidOut(part, deeper))
    : Object.entries(value).map(([key, part]) => `${JSON.stringify(key)}: ${laidOut(part, deeper)}`);
  return `${open}\n${parts.map((part) => deeper + part).join(',\n')}\n${indent}${close}`;
}

describe.each(asks)('%s', (name, ask) => {
  // One after the other: all at once, the last would wait too long for a better answer.
  let started: ReturnType<typeof answerTo> | undefined;
  const answer = () => {
    started ??= answerTo(ask);
    return started;
  };

  it('reads as it did', async () => {
    const text = render(await answer(), { width: 80, colour: false });
    await expect(`> ${ask}\n\n${text}\n`).toMatchFileSnapshot(`files/${name}.txt`);
  });

  it('has the data it had, and a floor in it is legal by the independent checker', async () => {
    const { object } = toJson(await answer());
    const data = object !== null && typeof object === 'object' && 'data' in object ? object.data : object;
    const plain: unknown = JSON.parse(JSON.stringify(data));
    if (JSON.stringify(plain).startsWith('{"kind":"floor"')) expect(checkFloor(plain)).toEqual([]);
    await expect(`${laidOut(plain)}\n`).toMatchFileSnapshot(`files/${name}.json`);
  });
});

describe('the files', () => {
  it('are none but those of the asks', () => {
    // The list of names that may not change has a test of its own.
    const names = ['stored-names.json', ...asks.flatMap(([name]) => [`${name}.json`, `${name}.txt`])];
    expect(readdirSync(FILES).filter((file) => !names.includes(file))).toEqual([]);
  });
});
