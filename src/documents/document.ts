/** A project's sheets as pages: a table of contents if there are several, then each on its own pages, numbered throughout. */

import { inShort } from '../chat/brief.ts';
import { drawable, textWidth } from '../drawing/text.ts';
import { sayDate } from '../input/moment.ts';
import type { SheetKey, Sheets, Tick } from '../reply/job-sheet.ts';
import type { Block, Caution, Fact } from '../reply/reply.ts';
import { saySource } from '../text/answer-text.ts';
import { cautionsAtSteps } from '../text/caution-text.ts';
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
import { figure, heading, item, linesOf, paragraph, picture, table } from './writing.ts';

// What each sheet says in full, and what it leaves to a page before it.

/** A sheet as it is printed. */
interface Printed {
  readonly title: string;
  readonly headline: string;
  readonly blocks: readonly Block[];
  /** Cautions in full here, and those that were in full before. */
  readonly full: readonly Caution[];
  readonly short: readonly Caution[];
  readonly assumed: readonly string[];
  /** Sources that no sheet before it has. */
  readonly sources: readonly string[];
  readonly ticks: readonly Tick[];
  /** Something to work from with a pencil: every row of a table has a box. */
  readonly worked: boolean;
  /** A list, whose cautions come after it. */
  readonly list: boolean;
  /** Where the steps are that hold for it, by its place among all. */
  readonly see?: number;
}

/** The same steps, cautions and readings of several rooms are printed once, before the rooms. */
function printedOf({ sheets }: Sheets): readonly Printed[] {
  const printed: Printed[] = [];
  const cautioned = new Set<string>();
  const read = new Set<string>();
  const add = (one: Omit<Printed, 'full' | 'short'>, cautions: readonly Caution[]): void => {
    const full = cautions.filter(({ text }) => !cautioned.has(text));
    printed.push({
      ...one,
      full,
      short: cautions.filter((caution) => !full.includes(caution)),
      assumed: one.assumed.filter((line) => !read.has(line)),
      sources: one.sources.filter((line) => !read.has(line)),
    });
    for (const { text } of full) cautioned.add(text);
    for (const line of [...one.assumed, ...one.sources]) read.add(line);
  };
  const groups = new Map<SheetKey, { readonly place: number; readonly blocks: readonly Block[] }>();
  for (const { key, title, reply, ticks = [] } of sheets) {
    const worked = isWorked(key);
    const own = sheets.filter((sheet) => sheet.key === key);
    if (worked && own.length > 1 && !groups.has(key)) {
      const replies = own.map((sheet) => sheet.reply);
      const blocks = sharedBy(replies.map((one) => one.blocks)).filter(({ kind }) => kind === 'steps');
      groups.set(key, { place: printed.length, blocks });
      const about = { title: SHEETS.of(SHEETS.titles[key], PAPER.everyRoom), headline: PAPER.once };
      const assumed = sharedBy(replies.map((one) => one.assumed));
      add(
        { ...about, blocks, assumed, sources: [], ticks: [], worked, list: false },
        sharedBy(replies.map((one) => one.cautions)),
      );
    }
    const group = groups.get(key);
    const shared = new Set(group?.blocks.map((one) => JSON.stringify(one)));
    const later = sheets.filter((sheet) => sheet.key !== 'shopping').flatMap((sheet) => sheet.reply.cautions);
    const elsewhere = new Set(key === 'shopping' ? later.map(({ text }) => text) : []);
    add(
      {
        title,
        headline: reply.headline,
        blocks: reply.blocks.filter((one) => !shared.has(JSON.stringify(one))),
        assumed: reply.assumed,
        sources: [...new Set(reply.sources.map((source) => `${saySource(source)} (${source.standing})`))],
        ticks: key === 'checklist' ? ticks : [],
        worked,
        list: key === 'shopping',
        ...(group && group.blocks.length > 0 && { see: group.place }),
      },
      reply.cautions.filter(({ text }) => !elsewhere.has(text)),
    );
  }
  return printed;
}

function isWorked(key: SheetKey): boolean {
  return key === 'cuts' || key === 'guide';
}

/** What is in every one of the lists. */
function sharedBy<T>(lists: readonly (readonly T[])[]): readonly T[] {
  const [first = [], ...others] = lists.map((list) => list.map((one) => ({ one, text: JSON.stringify(one) })));
  const texts = others.map((list) => new Set(list.map(({ text }) => text)));
  return first.filter(({ text }) => texts.every((known) => known.has(text))).map(({ one }) => one);
}

// One sheet on paper: what can hurt on top or at its step, then the answer and the checkboxes.

const BAR = 3;
const ASIDE = 10;
const COLUMNS = 4;
/** Largest share of the width that labels take. */
const LABELS = 0.32;

/** The pages that sheets begin on, as far as they are known, by their places. */
type Starts = readonly number[];

/** Everything but the pictures that stand beside it. `root` is where its section goes. */
function task(flow: Flow, one: Printed, starts: Starts, section: Tag, beside?: Block): void {
  const { title, headline, full, short, assumed, sources, ticks, worked, list, see } = one;
  paragraph(flow, title, section, { type: 'title', bold: true }, 'H1');
  paragraph(flow, headline, section, { type: 'headline' });
  const blocks = one.blocks.filter((other) => other !== beside);
  const steps = blocks.find((other) => other.kind === 'steps');
  const { first, at } = cautionsAtSteps(full, steps?.kind === 'steps' ? steps.steps : []);
  if (!list) cautions(flow, first, section);
  const page = see === undefined ? undefined : starts[see];
  if (short.length > 0) strip(flow, PAPER.care(short.map(inShort), page), section);
  const pictures = worked ? blocks.filter(({ kind }) => kind === 'picture') : [];
  for (const other of blocks) {
    if (!pictures.includes(other)) block(flow, other, section, { worked, at: other === steps ? at : [] });
  }
  tickBoxes(flow, ticks, section);
  if (list) cautions(flow, first, section);
  small(flow, SHEET.assumed, assumed, section);
  if (sources.length > 0) {
    heading(flow, SHEET.sources, section, 2 * TYPE.small.line);
    paragraph(flow, `${sources.join('; ')}.`, section, { type: 'small', colour: QUIET });
  }
  for (const other of pictures) block(flow, other, section, { worked, at: [] });
}

/** What can hurt, in a few words each, where a page before has all of it. */
function strip(flow: Flow, text: string, section: Tag): void {
  flow.gap(5);
  const from = flow.y;
  paragraph(flow, text, section, { type: 'small', indent: ASIDE });
  if (flow.y > from)
    flow.ink(undefined, { kind: 'rect', x: flow.left, y: from, width: BAR, height: flow.y - from, fill: INK });
  flow.y += 3;
}

/** Before any instructions. */
function cautions(flow: Flow, all: readonly Caution[], section: Tag): void {
  if (all.length === 0) return;
  flow.gap(6);
  const style = { type: 'small', indent: ASIDE } as const;
  flow.need(TYPE.body.line + 3 * TYPE.small.line);
  const from = { y: flow.y };
  const bar = (top: number, bottom: number): void =>
    flow.ink(undefined, { kind: 'rect', x: flow.left, y: top, width: BAR, height: bottom - top, fill: INK });
  paragraph(flow, SHEET.cautions, section, { ...style, type: 'body', bold: true }, 'H2');
  const list = tagOf('L', section);
  for (const { text } of all) {
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

function block(
  flow: Flow,
  one: Block,
  section: Tag,
  { worked, at }: { readonly worked: boolean; readonly at: readonly (readonly Caution[])[] },
): void {
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
      for (const [i, step] of one.steps.entries()) {
        item(flow, { kind: 'text', text: `${i + 1}.` }, step, list);
        for (const { text } of at[i] ?? []) {
          item(flow, { kind: 'text', text: '!' }, text, list, {
            type: 'small',
            indent: TYPE.body.size * 1.9,
            bold: true,
          });
        }
      }
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

// Where each sheet goes: beside its plan, below the sheet before, or on a page of its own.

/** A plan stands beside its rows at one of these scales, the largest at which all of it fits on one page. */
const BESIDE = [0.7, 0.62, 0.58] as const;
const BETWEEN = 16;
/** Narrower than this a table is no table. */
const NARROWEST = 225;
/** A list of pieces begins below another sheet where this share of a page is left. */
const BEGINNING = 0.2;
/** Between two sheets on one page. */
const APART = 12;

interface Fit {
  /** Height on a page of its own; undefined where it takes more than one. */
  readonly height?: number;
  /** The plan beside the rest, and its scale. */
  readonly beside?: { readonly picture: Extract<Block, { kind: 'picture' }>; readonly scale: number };
}

function fitOf(one: Printed, paper: Paper): Fit {
  const tried = (aside: number, without?: Block): Flow => {
    const flow = new Flow(paper, aside);
    flow.turn();
    task(flow, one, [], tagOf('Sect', undefined), without);
    return flow;
  };
  const plain = tried(0);
  if (plain.pages.length === 1) return { height: plain.y - plain.top };
  const [picture, ...more] = one.blocks.filter((block) => block.kind === 'picture');
  if (!one.worked || picture?.kind !== 'picture' || more.length > 0) return {};
  const { width, height } = picture.drawing;
  for (const scale of BESIDE) {
    const aside = width * scale + BETWEEN;
    if (height * scale > plain.full || plain.width - aside < NARROWEST) continue;
    if (tried(aside, picture).pages.length === 1) return { height: plain.full, beside: { picture, scale } };
  }
  return {};
}

/** Puts a sheet where it fits, and gives the page it begins on; a long list may begin below another sheet. */
function placed(flow: Flow, one: Printed, starts: Starts, { height, beside }: Fit): number {
  const section = tagOf('Sect', flow.root);
  const onOwn = !(one.worked && one.blocks.every(({ kind }) => kind === 'table' || kind === 'steps'));
  const needed = Math.min(height ?? flow.full, onOwn ? flow.full : flow.full * BEGINNING);
  if (flow.rest < needed + APART) flow.turn();
  else flow.gap(APART);
  const start = flow.pages.length;
  if (!beside) {
    task(flow, one, starts, section);
    return start;
  }
  const { picture, scale } = beside;
  const column = new Flow(flow.paper, picture.drawing.width * scale + BETWEEN, flow.pages);
  task(column, one, starts, section, picture);
  figure(flow, picture.drawing, section, { x: flow.left, y: flow.top, scale });
  flow.y = flow.bottom;
  return start;
}

interface Laid {
  readonly flow: Flow;
  readonly starts: Starts;
}

/** The list of sheets if there are several, and the sheets. */
function laidOut(
  sheets: Sheets,
  printed: readonly Printed[],
  { fits, starts, paper }: { readonly fits: readonly Fit[]; readonly starts: Starts; readonly paper: Paper },
): Laid {
  const flow = new Flow(paper);
  if (printed.length > 1 || sheets.missing?.length) contents(flow, sheets, printed, starts);
  const began = printed.map((one, i) => placed(flow, one, starts, fits[i] ?? {}));
  return { flow, starts: began };
}

function contents(flow: Flow, sheets: Sheets, printed: readonly Printed[], starts: Starts): void {
  const section = tagOf('Sect', flow.root);
  flow.turn();
  paragraph(flow, titleOf(sheets), section, { type: 'title', bold: true }, 'H1');
  const rows = printed.map(({ title, headline }, i) => [title, headline, String(starts[i] ?? '')]);
  const columns = [...SHEETS.columns, PAPER.pageHead];
  if (rows.length > 0) table(flow, { title: SHEETS.title, columns, rows, boxes: false }, section);
  // What the list says already isn't said twice.
  const said = new Set(
    printed.flatMap(({ blocks }) => blocks.flatMap((one) => (one.kind === 'checklist' ? one.items : []))),
  );
  const missing = (sheets.missing ?? []).filter((text) => !said.has(text));
  if (missing.length === 0) return;
  heading(flow, SHEETS.missing, section, 40);
  const list = tagOf('L', section);
  for (const text of missing) item(flow, { kind: 'text', text: '–' }, text, list);
}

/** The pages of all sheets, or one page saying that there are none. Pure: the same sheets give the same pages. */
export function documentPages(sheets: Sheets, paper: Paper): Pages {
  const printed = printedOf(sheets);
  const fits = printed.map((one) => fitOf(one, paper));
  // The first time the page numbers are not known yet; two digits take the room of any.
  const once = laidOut(sheets, printed, { fits, starts: printed.map(() => 10), paper });
  const { flow } = laidOut(sheets, printed, { fits, starts: once.starts, paper });
  if (flow.pages.length === 0) {
    flow.turn();
    paragraph(flow, PAPER.none, flow.root);
  }
  const said = { project: sheets.project, day: ` · ${sayDate(sheets.made, sheets.zone)}` };
  for (const [i, page] of flow.pages.entries()) footer(page, said, i + 1, flow.pages.length, paper);
  return { paper, title: titleOf(sheets), made: sheets.made, root: flow.root, pages: flow.pages };
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
