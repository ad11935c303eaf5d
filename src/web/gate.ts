/** What every answer of the page carries, and what is let in: nothing from elsewhere, nothing that is kept or passed on. */

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
 * Whether what is sent comes from a page of ours. A page that sends no referrer has its forms sent with the origin `null`
 * (Fetch, “append a request Origin header”): then the browser's own word on the site decides.
 */
export function isFromHere(request: Request, address: string | undefined): boolean {
  const site = request.headers.get('sec-fetch-site');
  const origin = request.headers.get('origin');
  if (site !== null && site !== 'same-origin') return false;
  if (origin === null || origin === 'null') return site === 'same-origin';
  const host = hostOf(origin);
  return host !== undefined && (host === hostOf(request.url) || (address !== undefined && host === hostOf(address)));
}

function hostOf(url: string): string | undefined {
  return URL.canParse(url) ? new URL(url).host : undefined;
}
