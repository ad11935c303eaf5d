/** The frame of every page: its head, its one style sheet and one script, both from here. */

import { createHmac, timingSafeEqual } from 'node:crypto';
import { html } from 'hono/html';
import { PAGE_NOTES, PAGE_TICKS } from '../../text/page-text.ts';
import { assetPath } from './assets.ts';
import { type Html, NOTHING } from './render.ts';

/** What the script is told of a page. */
interface ForScript {
  /** Changes with what stands in the lists, and not with what is ticked. */
  readonly lists: string;
  readonly name: string;
}

/** A page with this title and body. Without `script` none is loaded; search engines may list only a `listed` one. */
export function shell(title: string, body: Html, script?: ForScript, listed = false): Html {
  const given = script ? html`<script type="module" src="${assetPath('page.js')}"></script>` : NOTHING;
  const data = script
    ? html` data-lists="${script.lists}" data-page="${script.name}" data-words="${JSON.stringify(WORDS)}"`
    : NOTHING;
  return html`<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">${listed ? NOTHING : html`<meta name="robots" content="noindex, nofollow, noarchive">`}<meta name="referrer" content="no-referrer"><meta name="format-detection" content="telephone=no"><meta name="color-scheme" content="light dark"><title>${title}</title><link rel="icon" href="${assetPath('icon.svg')}"><link rel="stylesheet" href="${assetPath('page.css')}">${given}</head>
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

// What every answer of the page carries, and what is let in: nothing from elsewhere, nothing that is kept or
// passed on.

/** The strictest that the page runs under: its own script, style, icon and forms, and nothing else from anywhere. */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self'",
  "connect-src 'self'",
  "form-action 'self'",
  "base-uri 'none'",
  "frame-ancestors 'none'",
  "require-trusted-types-for 'script'",
].join('; ');

/** Headers of everything that is behind a link. */
export const SEALED: Readonly<Record<string, string>> = {
  'Content-Security-Policy': POLICY,
  'Cache-Control': 'private, no-store',
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
  'X-Robots-Tag': 'noindex, nofollow, noarchive',
  'X-Frame-Options': 'DENY',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': 'camera=(), microphone=(), geolocation=(), screen-wake-lock=(self)',
};

/** Headers of the style sheet, the script and the icon, which are nobody's secret. */
export const OPEN: Readonly<Record<string, string>> = {
  'Cache-Control': 'public, max-age=31536000, immutable',
  'X-Content-Type-Options': 'nosniff',
  'Cross-Origin-Resource-Policy': 'same-origin',
};

/**
 * Where what is sent comes from. A page that sends no referrer has its forms sent with the origin `null` (Fetch, “append a
 * request Origin header”): then the browser's own word on the site decides. Browsers give none over plain HTTP in a house's
 * network, and old ones give none at all: it is `untold` then, and the form's key decides.
 */
export function cameFrom(request: Request, address: string | undefined): 'here' | 'elsewhere' | 'untold' {
  const site = request.headers.get('sec-fetch-site');
  const origin = request.headers.get('origin');
  if (site !== null && site !== 'same-origin') return 'elsewhere';
  if (origin === null || origin === 'null') return site === null ? 'untold' : 'here';
  const host = hostOf(origin);
  const ours =
    host !== undefined && (host === hostOf(request.url) || (address !== undefined && host === hostOf(address)));
  return ours ? 'here' : 'elsewhere';
}

/** What the forms of a link's page carry, known only to whoever sees that page; the link cannot be told from it. */
export function formKey(id: string): string {
  return createHmac('sha256', id).update('form').digest('base64url').slice(0, 22);
}

/** Whether a form carries the key of its link. */
export function hasKey(form: URLSearchParams, id: string): boolean {
  const [given, key] = [Buffer.from(form.get('key') ?? ''), Buffer.from(formKey(id))];
  return given.length === key.length && timingSafeEqual(given, key);
}

function hostOf(url: string): string | undefined {
  return URL.canParse(url) ? new URL(url).host : undefined;
}
