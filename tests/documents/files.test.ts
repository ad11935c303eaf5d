/** Sheets as files: what a PDF's text says is what the replies say, and what a spreadsheet reads back is what was written. */

import Papa from 'papaparse';
import { extractText, getDocumentProxy } from 'unpdf';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { csvFiles, csvText } from '../../src/documents/csv.ts';
import { closeFiles, makeFile } from '../../src/documents/make.ts';
import { drawable } from '../../src/drawing/text.ts';
import type { Sheets } from '../../src/reply/job-sheet.ts';
import type { Block } from '../../src/reply/reply.ts';
import { flatSheets, namedSheets } from './gathered.ts';

let sheets: Sheets;
beforeAll(async () => {
  sheets = await flatSheets();
}, 30_000);
afterAll(closeFiles);

/** The words of a text, without the spaces between: a page breaks lines where it likes. */
function bare(text: string): string {
  return drawable(text).normalize('NFKC').replace(/\s+/g, '');
}

function wordsOf(block: Block): readonly string[] {
  switch (block.kind) {
    case 'text':
      return [block.text];
    case 'facts':
      return block.facts.flatMap(({ label, value }) => [label, value]);
    case 'table':
      return block.rows.flat();
    case 'steps':
      return block.steps;
    case 'checklist':
      return block.items;
    case 'picture':
      return block.drawing.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
  }
}

async function textsOf(pdf: Uint8Array): Promise<readonly string[]> {
  const { text } = await extractText(await getDocumentProxy(new Uint8Array(pdf)), { mergePages: false });
  return text;
}

describe('a PDF', () => {
  test('says everything that the replies say, sheet by sheet, and on each what can hurt there', async () => {
    const pages = (await textsOf(await makeFile(sheets, { form: 'pdf' }))).map(bare);
    const all = pages.join('');
    const starts = sheets.sheets.map(({ title, reply }) =>
      pages.findLastIndex((page) => page.includes(bare(`${title}${reply.headline}`))),
    );
    expect(starts).not.toContain(-1);
    sheets.sheets.forEach(({ key, title, reply }, i) => {
      const own = pages.slice(starts[i], (starts[i + 1] ?? pages.length) + 1).join('');
      for (const block of reply.blocks) {
        // The same steps of several rooms are printed once, before the rooms.
        const place = block.kind === 'steps' ? all : own;
        for (const word of wordsOf(block)) expect(inOrder(place, word), `${title}: ${word}`).toBe(true);
      }
      for (const { text, brief = text } of reply.cautions) {
        expect(all, title).toContain(bare(text));
        if (key !== 'shopping')
          expect(own.includes(bare(text)) || own.includes(bare(brief)), `${title}: ${text}`).toBe(true);
      }
    });
    pages.forEach((page, i) => {
      expect(page).toContain(bare(`${i + 1} of ${pages.length}`));
      expect(page).toContain(bare('Upstairs flat · 21 Nov 2026'));
    });
  }, 30_000);

  test.each(['letter', 'a4'] as const)(
    'of a small flat takes at most 14 pages of %s, a room’s plan beside its rows where they fit',
    async (paper) => {
      const pages = (await textsOf(await makeFile(sheets, { form: 'pdf', paper }))).map(bare);
      expect(pages.length).toBeLessThanOrEqual(14);
      for (const room of ['hall', 'bay', 'bedroom', 'closet']) {
        const both = pages.filter((page) => page.includes(`${room}:plan`) && page.includes(`Layingguide:${room}`));
        expect([room, both.length]).toEqual([room, 1]);
      }
    },
    30_000,
  );

  test('of one room alone has every caution in full, each at the step it belongs to', async () => {
    const [guide] = sheets.sheets.filter(({ key }) => key === 'guide');
    if (!guide) throw new Error('no guide');
    const alone: Sheets = { ...sheets, sheets: [guide] };
    const all = (await textsOf(await makeFile(alone, { form: 'pdf' }))).map(bare).join('');
    for (const { text } of guide.reply.cautions) expect(all).toContain(bare(text));
    const steps = guide.reply.blocks.flatMap((block) => (block.kind === 'steps' ? block.steps : []));
    const cut = all.indexOf(bare(steps.find((step) => step.includes('before you cut')) ?? '?'));
    expect(cut).toBeGreaterThan(0);
    expect(all.indexOf(bare('Saw: guard on'))).toBeGreaterThan(cut);
  }, 30_000);

  test('is the same for the same sheets, has a title and a language, and comes on either paper', async () => {
    const [one, again] = [await makeFile(sheets, { form: 'pdf' }), await makeFile(sheets, { form: 'pdf' })];
    expect(one.equals(again)).toBe(true);
    const doc = await getDocumentProxy(new Uint8Array(await makeFile(sheets, { form: 'pdf', paper: 'a4' })));
    const { info } = await doc.getMetadata();
    expect(info).toMatchObject({ Title: 'Upstairs flat: job sheets', Language: 'en-US' });
    // ISO 216: A4 is 210 × 297 mm.
    const [, , width = 0, height = 0] = (await doc.getPage(1)).view;
    expect([(width * 25.4) / 72, (height * 25.4) / 72].map(Math.round)).toEqual([210, 297]);
    expect(await (await doc.getPage(1)).getStructTree()).not.toBeNull();
  }, 30_000);

  test('takes hostile and long names as text', async () => {
    const name = '<b>(x)</b> \\( /JS (app.alert) ‮ =1+1 "q"';
    const flat = await namedSheets(name, 'a'.repeat(60));
    const pdf = await makeFile(flat, { form: 'pdf' });
    const doc = await getDocumentProxy(new Uint8Array(pdf));
    expect([await doc.getJSActions(), await doc.getOpenAction(), await doc.getAttachments()]).toEqual([
      null,
      null,
      null,
    ]);
    const text = bare((await textsOf(pdf)).join(''));
    expect(text).toContain('a'.repeat(60));
    expect(text).toContain(bare('<b>(x)</b> \\( /JS (app.alert)'));
  }, 30_000);
});

/** Cells of a row share lines, so that a long text may be broken by another: its words come in order. */
function inOrder(page: string, text: string): boolean {
  if (page.includes(bare(text))) return true;
  let from = 0;
  return drawable(text)
    .normalize('NFKC')
    .split(/\s+/)
    .filter((word) => word !== '')
    .every((word) => {
      const at = page.indexOf(word, from);
      from = at < 0 ? from : 0;
      return at >= 0;
    });
}

describe('spreadsheets', () => {
  const read = (text: string): readonly (readonly string[])[] =>
    Papa.parse<string[]>(text, { header: false, skipEmptyLines: true }).data;

  test('are read back as they were written: every piece to cut, every thing to buy, every stage', () => {
    const files = new Map(csvFiles(sheets).map(({ list, text }) => [list, read(text)]));
    const pieces = sheets.sheets.flatMap((sheet) => sheet.pieces ?? []);
    const cuts = files.get('cuts')?.slice(1) ?? [];
    // An inch is 8128 ticks.
    expect(cuts.map((row) => Math.round(Number(row[6]) * 8128 * 16) / 16)).toHaveLength(pieces.length);
    cuts.forEach((row, i) => {
      expect(Math.abs(Number(row[6]) * 8128 - (pieces[i]?.ticks ?? 0))).toBeLessThan(1);
      expect([row[8], row[10], row[12]]).toEqual([pieces[i]?.left.said, pieces[i]?.right.said, pieces[i]?.from]);
    });
    const ticks = (key: string) => sheets.sheets.filter((one) => one.key === key).flatMap((one) => one.ticks ?? []);
    expect(files.get('shopping')?.length).toBe(ticks('shopping').length + 1);
    expect(
      files
        .get('checklist')
        ?.slice(1)
        .map((row) => row[1]),
    ).toEqual(ticks('checklist').map(({ label }) => label));
    expect(files.get('rows')?.length).toBeGreaterThan(50);
  });

  // OWASP, “CSV Injection”: = + - @ tab and carriage return, and their full-width forms.
  test.each([
    '=1+1',
    '+1',
    '-1+2',
    '@SUM(A1)',
    '\t=1',
    '\r=1',
    '＝1',
    '＋1',
    '－1',
    '＠x',
    '  =1',
    '=HYPERLINK("http://x";"y")',
  ])('keep %j from being run', (text) => {
    const [, [cell = ''] = []] = read(csvText(['Head'], [[text]]));
    expect(cell).toMatch(/^'/);
    expect(cell.slice(1)).toBe(text.trim());
  });

  test('keep a negative number a number, and begin as UTF-8', () => {
    const text = csvText(['Figure'], [[-3.5]]);
    expect(text.startsWith('\ufeff')).toBe(true);
    expect(text).toContain('\r\n-3.5\r\n');
  });
});

test('JSON holds the sheets and their data', async () => {
  const given = JSON.parse((await makeFile(sheets, { form: 'json' })).toString());
  expect(given).toMatchObject({ kind: 'sheets', project: 'Upstairs flat', ticksPerInch: 8128 });
  expect(given.sheets.map(({ title }: { title: string }) => title)).toEqual(sheets.sheets.map(({ title }) => title));
  expect(given.sheets[0].data).toEqual(JSON.parse(JSON.stringify(sheets.sheets[0]?.reply.data)));
});
