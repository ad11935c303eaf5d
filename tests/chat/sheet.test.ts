/** Answers as files: nothing left out, and no cell that a spreadsheet would run. */

import { describe, expect, it } from 'vitest';
import { sheetCsv, sheetText } from '../../src/chat/files.ts';
import { replyTo } from './asked.ts';

const table = (rows: readonly (readonly string[])[]) =>
  ({ kind: 'table', title: 'T', columns: ['A', 'B'], rows }) as const;

describe('CSV', () => {
  it('quotes what must be quoted', () => {
    expect(sheetCsv(table([['12" x 4', 'a, b']]))).toBe('A,B\r\n"12"" x 4","a, b"\r\n');
  });

  it.each(['=1+1', '+1', '@SUM(A1)', ' =1', '-cmd|x', '-2+3', '\t=1'])('takes %j as text', (evil) => {
    expect(sheetCsv(table([[evil, 'x']]))).toContain(`'${evil}`);
  });

  it('leaves figures alone', () => {
    expect(sheetCsv(table([['-12.5', '-3 in']]))).toBe('A,B\r\n-12.5,-3 in\r\n');
  });
});

describe('the whole text', () => {
  it('tells every cell, caution, assumption and source', async () => {
    const reply = await replyTo(`planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`);
    const text = sheetText(reply);
    expect(text.startsWith(`${reply.headline}\n`)).toBe(true);
    for (const { text: caution } of reply.cautions) expect(text).toContain(caution);
    for (const line of reply.assumed) expect(text).toContain(line);
    for (const block of reply.blocks)
      if (block.kind === 'table') for (const cell of block.rows.flat()) expect(text).toContain(cell);
    for (const { title } of reply.sources) expect(text).toContain(title);
  });

  it('keeps a cell on its own line whatever is in it', async () => {
    const reply = await replyTo('tape 1 + 2');
    const text = sheetText({ ...reply, blocks: [table([['a\nTake care\u202e', 'b']])] });
    expect(text).toContain('a Take care');
    expect(text).not.toMatch(/\u202e|^Take care/m);
  });
});
