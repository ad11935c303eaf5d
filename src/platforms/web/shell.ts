/** The frame of every page: its head, its one style sheet and one script, both from here. */

import { html } from 'hono/html';
import { PAGE_NOTES, PAGE_TICKS } from '../../text/page-text.ts';
import { assetPath } from './assets.ts';
import { type Html, NOTHING } from './markup.ts';

/** What the script is told of a page. */
export interface ForScript {
  /** Changes with what stands in the lists, and not with what is ticked. */
  readonly lists: string;
  readonly name: string;
}

/** A page with this title and body. Without `script` none is loaded. */
export function shell(title: string, body: Html, script?: ForScript): Html {
  const told = script ? html`<script type="module" src="${assetPath('page.js')}"></script>` : NOTHING;
  const data = script
    ? html` data-lists="${script.lists}" data-page="${script.name}" data-words="${JSON.stringify(WORDS)}"`
    : NOTHING;
  return html`<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><meta name="robots" content="noindex, nofollow, noarchive"><meta name="referrer" content="no-referrer"><meta name="format-detection" content="telephone=no"><meta name="color-scheme" content="light dark"><title>${title}</title><link rel="icon" href="${assetPath('icon.svg')}"><link rel="stylesheet" href="${assetPath('page.css')}">${told}</head>
<body${data}>${body}</body></html>`;
}

/** What the script says: it has no words of its own. */
const WORDS = {
  saving: PAGE_TICKS.saving,
  waiting: PAGE_TICKS.waiting,
  refused: PAGE_TICKS.refused,
  one: PAGE_TICKS.left(1),
  many: PAGE_TICKS.left(0).replace('0', '{n}'),
  stale: PAGE_TICKS.stale,
  fresh: PAGE_TICKS.fresh,
  ended: PAGE_TICKS.ended,
  lost: PAGE_TICKS.lost,
  unknown: PAGE_NOTES.unknown.expected,
} as const;
