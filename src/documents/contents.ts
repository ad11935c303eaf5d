/** The list of a document's sheets on pages before them, and what could not be put on any. */

import type { Sheets } from '../reply/job-sheet.ts';
import { PAPER, SHEETS } from '../text/sheets-text.ts';
import { Flow } from './flow.ts';
import { type Page, type Tag, tagOf } from './page.ts';
import type { Paper } from './paper.ts';
import { table } from './table.ts';
import { heading, item, paragraph } from './writing.ts';

/** What stands before the sheets: nothing where one sheet tells all. */
export interface Contents {
  readonly pages: readonly Page[];
  readonly tags: readonly Tag[];
}

/** `starts`: the page of each sheet, counted from 1 without the contents. */
export function contentsOf(sheets: Sheets, starts: readonly number[], paper: Paper, title: string): Contents {
  if (sheets.sheets.length < 2 && !sheets.missing?.length) return { pages: [], tags: [] };
  // Its own length moves the pages it tells of, and no figure in it is so long that another page would follow.
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
