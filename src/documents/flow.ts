/** Where writing goes on: down a page, then on to the next. */

import { type Ink, type Page, type Tag, tagOf } from './page.ts';
import { MARGIN, PAPERS, type Paper } from './paper.ts';

/** Room kept free at the bottom for the footer. */
const FOOT = 14;

export class Flow {
  readonly paper: Paper;
  readonly pages: Page[] = [];
  readonly root: Tag = tagOf('Document', undefined);
  readonly left = MARGIN;
  readonly width: number;
  readonly top = MARGIN;
  readonly bottom: number;
  /** Where the next thing begins. */
  y = MARGIN;

  constructor(paper: Paper) {
    this.paper = paper;
    this.width = PAPERS[paper].width - 2 * MARGIN;
    this.bottom = PAPERS[paper].height - MARGIN - FOOT;
  }

  /** Height that a whole page offers. */
  get full(): number {
    return this.bottom - this.top;
  }

  /** Height left on this page. */
  get rest(): number {
    return this.pages.length === 0 ? 0 : this.bottom - this.y;
  }

  turn(): void {
    this.pages.push({ marked: [] });
    this.y = this.top;
  }

  /** A new page where less than this is left, and a whole page offers it. */
  need(height: number): void {
    if (this.rest < Math.min(height, this.full)) this.turn();
  }

  /** Space between things; none at the top of a page. */
  gap(height: number): void {
    if (this.pages.length > 0 && this.y > this.top) this.y += height;
  }

  ink(tag: Tag | undefined, ...inks: readonly Ink[]): void {
    this.pages.at(-1)?.marked.push({ tag, inks });
  }
}
