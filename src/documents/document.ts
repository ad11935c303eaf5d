/** Sheets of a project as pages: a list of them where there are several, then each on pages of its own, numbered all through. */

import { drawable, textWidth } from '../drawing/font.ts';
import { sayDate } from '../input/moment.ts';
import type { Sheets } from '../reply/job-sheet.ts';
import { PAPER } from '../text/sheets-text.ts';
import { contentsOf } from './contents.ts';
import { Flow } from './flow.ts';
import { type Page, type Pages, sizeOf } from './page.ts';
import { FOOTER, MARGIN, type Paper, QUIET, TYPE } from './paper.ts';
import { task } from './task.ts';
import { linesOf, paragraph } from './writing.ts';

/** The pages of all sheets; one that says so where there are none. Pure: the same sheets give the same pages. */
export function pagesOf(sheets: Sheets, paper: Paper): Pages {
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

/** Project and day at the left, the page at the right; a long name is cut, for it stands on every page. */
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
  const room = width - 2 * MARGIN - textWidth(day, size, false) - textWidth(pageNo, size, false) - 20;
  const [name = '', ...more] = linesOf(project, size, false, room - 8);
  const said = `${name}${more.length > 0 ? '…' : ''}${day} `;
  const common = { kind: 'text', y, size, bold: false, colour: QUIET } as const;
  page.marked.push({
    tag: undefined,
    inks: [
      { ...common, x: MARGIN, text: said },
      { ...common, x: width - MARGIN, text: pageNo, anchor: 'end' },
    ],
  });
}
