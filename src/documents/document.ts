/** A project's sheets as pages: a table of contents if there are several, then each on its own pages, numbered throughout. */

import { drawable, textWidth } from '../drawing/font.ts';
import { sayDate } from '../input/moment.ts';
import type { JobSheet, Sheets, Tick } from '../reply/job-sheet.ts';
import type { Block, Fact, Reply } from '../reply/reply.ts';
import { saySource } from '../text/help-text.ts';
import { PAPER, SHEET, SHEETS } from '../text/sheets-text.ts';
import {
  Flow,
  FOOTER,
  INK,
  PAPER_MARGIN,
  type Page,
  type Pages,
  type Paper,
  QUIET,
  sizeOf,
  type Tag,
  TYPE,
  tagOf,
} from './document-page.ts';
import { table, tableHeight } from './table.ts';
import { heading, item, linesOf, paragraph, picture } from './writing.ts';

// The contents page, and what couldn't be included.

/** Empty if a single sheet says everything. */
interface Contents {
  readonly pages: readonly Page[];
  readonly tags: readonly Tag[];
}

/** `starts`: the page of each sheet, counted from 1 without the contents. */
function contentsOf(sheets: Sheets, starts: readonly number[], paper: Paper, title: string): Contents {
  if (sheets.sheets.length < 2 && !sheets.missing?.length) return { pages: [], tags: [] };
  // The contents pages shift the page numbers they list, but no number gets long enough to add another page.
  const before = listed(sheets, starts, paper, title).pages.length;
  const flow = listed(
    sheets,
    starts.map((start) => start + before),
    paper,
    title,
  );
  return { pages: flow.pages, tags: flow.root.parts };
}

function listed({ sheets, missing = [] }: Sheets, starts: readonly number[], paper: Paper, title: string): Flow {
  const flow = new Flow(paper);
  const section = tagOf('Sect', flow.root);
  flow.turn();
  paragraph(flow, title, section, { type: 'title', bold: true }, 'H1');
  const rows = sheets.map((sheet, i) => [sheet.title, sheet.reply.headline, String(starts[i] ?? '')]);
  const columns = [...SHEETS.columns, PAPER.pageHead];
  if (rows.length > 0) table(flow, { title: SHEETS.title, columns, rows, boxes: false }, section);
  if (missing.length === 0) return flow;
  heading(flow, SHEETS.missing, section, 40);
  const list = tagOf('L', section);
  for (const text of missing) item(flow, { kind: 'text', text: '–' }, text, list);
  return flow;
}

// One sheet on paper: cautions on top, then the answer, the checkboxes, and the sources.

const BAR = 3;
const ASIDE = 10;
const COLUMNS = 3;
/** Largest share of the width that labels take. */
const LABELS = 0.32;

function task(flow: Flow, sheet: JobSheet): void {
  const { title, reply, ticks = [], key } = sheet;
  const section = tagOf('Sect', flow.root);
  flow.turn();
  paragraph(flow, title, section, { type: 'title', bold: true }, 'H1');
  paragraph(flow, reply.headline, section, { type: 'headline' });
  cautions(flow, reply, section);
  const worked = key === 'cuts' || key === 'guide';
  if (worked) workedBlocks(flow, reply.blocks, section);
  else for (const one of reply.blocks) block(flow, one, section, false);
  if (key === 'checklist') tickBoxes(flow, ticks, section);
  small(flow, SHEET.assumed, reply.assumed, section);
  const sources = [...new Set(reply.sources.map((source) => `${saySource(source)} (${source.standing})`))];
  small(flow, SHEET.sources, sources, section);
}

/**
 * Instructions first, then the pictures, then the tables to work from, which go before the pictures if they still fit
 * there.
 */
function workedBlocks(flow: Flow, blocks: readonly Block[], section: Tag): void {
  const tables = blocks.filter((one) => one.kind === 'table');
  const pictures = blocks.filter((one) => one.kind === 'picture');
  for (const one of blocks) if (one.kind !== 'table' && one.kind !== 'picture') block(flow, one, section, true);
  const height = tables.reduce((sum, one) => sum + tableHeight(flow, { ...one, boxes: true }), 0);
  const order = height <= flow.rest ? [...tables, ...pictures] : [...pictures, ...tables];
  for (const one of order) block(flow, one, section, true);
}

/** On the first page of a task, before any instructions. */
function cautions(flow: Flow, reply: Reply, section: Tag): void {
  if (reply.cautions.length === 0) return;
  flow.gap(6);
  const style = { type: 'small', indent: ASIDE } as const;
  const from = { y: flow.y };
  const bar = (top: number, bottom: number): void =>
    flow.ink(undefined, { kind: 'rect', x: flow.left, y: top, width: BAR, height: bottom - top, fill: INK });
  paragraph(flow, SHEET.cautions, section, { ...style, type: 'body', bold: true }, 'H2');
  const list = tagOf('L', section);
  for (const { text } of reply.cautions) {
    const lines = linesOf(text, TYPE.small.size, false, flow.width - ASIDE - TYPE.small.size * 1.9);
    if (lines.length * TYPE.small.line > flow.rest) {
      bar(from.y, flow.y);
      flow.turn();
      from.y = flow.top;
    }
    item(flow, { kind: 'text', text: '!' }, text, list, style);
  }
  bar(from.y, flow.y);
  flow.y += 4;
}

function block(flow: Flow, one: Block, section: Tag, worked: boolean): void {
  switch (one.kind) {
    case 'text':
      flow.gap(6);
      paragraph(flow, one.text, section);
      break;
    case 'facts':
      if (one.title === undefined) flow.gap(6);
      else heading(flow, one.title, section, 2 * TYPE.body.line);
      facts(flow, one.facts, section);
      break;
    case 'table':
      if (one.rows.length > 0) table(flow, { ...one, boxes: worked }, section);
      break;
    case 'steps': {
      heading(flow, one.title, section, 2 * TYPE.body.line);
      const list = tagOf('L', section);
      for (const [i, step] of one.steps.entries()) item(flow, { kind: 'text', text: `${i + 1}.` }, step, list);
      break;
    }
    case 'checklist': {
      heading(flow, one.title, section, 2 * TYPE.body.line);
      const list = tagOf('L', section);
      for (const text of one.items) item(flow, { kind: 'box', ticked: false }, text, list);
      break;
    }
    case 'picture':
      picture(flow, one.drawing, section);
      break;
  }
}

/** Short labels get a column of their own, with the values beside them. */
function facts(flow: Flow, all: readonly Fact[], section: Tag): void {
  const { size, line } = TYPE.body;
  const widest = Math.max(...all.map(({ label }) => textWidth(label, size, true)));
  const indent = Math.min(widest + 10, flow.width * LABELS);
  for (const { label, value } of all) {
    const labels = linesOf(label, size, true, indent - 8).length;
    flow.need(Math.max(labels, 1) * line);
    const { y } = flow;
    const page = flow.pages.length;
    paragraph(flow, label, section, { bold: true, short: flow.width - indent + 8 });
    const below = flow.y;
    flow.y = y;
    paragraph(flow, value, section, { indent });
    if (flow.pages.length === page) flow.y = Math.max(flow.y, below);
    flow.y += 1;
  }
}

function tickBoxes(flow: Flow, ticks: readonly Tick[], section: Tag): void {
  const width = flow.width / COLUMNS;
  for (const group of new Set(ticks.map((one) => one.group))) {
    const own = ticks.filter((one) => one.group === group);
    const rows = Math.ceil(own.length / COLUMNS);
    heading(flow, group, section, rows * (TYPE.body.line + 1.5));
    const list = tagOf('L', section);
    const top = flow.y;
    let lowest = top;
    own.forEach(({ label, ticked }, i) => {
      const column = Math.floor(i / rows);
      if (i % rows === 0) flow.y = top;
      item(flow, { kind: 'box', ticked }, label, list, {
        indent: column * width,
        short: flow.width - (column + 1) * width + 8,
      });
      lowest = Math.max(lowest, flow.y);
    });
    flow.y = lowest;
  }
}

function small(flow: Flow, title: string, items: readonly string[], section: Tag): void {
  if (items.length === 0) return;
  heading(flow, title, section, 2 * TYPE.small.line);
  const list = tagOf('L', section);
  for (const text of items) item(flow, { kind: 'text', text: '–' }, text, list, { type: 'small', colour: QUIET });
}

/** The pages of all sheets, or one page saying that there are none. Pure: the same sheets give the same pages. */
export function documentPages(sheets: Sheets, paper: Paper): Pages {
  const flow = new Flow(paper);
  const title = titleOf(sheets);
  const starts = sheets.sheets.map((sheet) => {
    const start = flow.pages.length + 1;
    task(flow, sheet);
    return start;
  });
  if (flow.pages.length === 0) {
    flow.turn();
    paragraph(flow, PAPER.none, flow.root);
  }
  const said = { project: sheets.project, day: ` · ${sayDate(sheets.made, sheets.zone)}` };
  const front = contentsOf(sheets, starts, paper, title);
  const pages = [...front.pages, ...flow.pages];
  for (const [i, page] of pages.entries()) footer(page, said, i + 1, pages.length, paper);
  const root = { ...flow.root, parts: [...front.tags, ...flow.root.parts] };
  return { paper, title, made: sheets.made, root, pages };
}

function titleOf({ project, sheets: [first, ...more] }: Sheets): string {
  const name = drawable(project.replace(/\s+/g, ' ').trim());
  return first && more.length === 0 ? PAPER.title(name, drawable(first.title)) : PAPER.title(name, PAPER.all);
}

/** Project and date on the left, page on the right; a long name is truncated, since it is on every page. */
function footer(
  page: Page,
  { project, day }: { readonly project: string; readonly day: string },
  no: number,
  all: number,
  paper: Paper,
): void {
  const { width, height } = sizeOf(paper);
  const { size } = TYPE.footer;
  const y = height - FOOTER;
  const pageNo = PAPER.page(no, all);
  const room = width - 2 * PAPER_MARGIN - textWidth(day, size, false) - textWidth(pageNo, size, false) - 20;
  const [name = '', ...more] = linesOf(project, size, false, room - 8);
  const said = `${name}${more.length > 0 ? '…' : ''}${day} `;
  const common = { kind: 'text', y, size, bold: false, colour: QUIET } as const;
  page.marked.push({
    tag: undefined,
    inks: [
      { ...common, x: PAPER_MARGIN, text: said },
      { ...common, x: width - PAPER_MARGIN, text: pageNo, anchor: 'end' },
    ],
  });
}
