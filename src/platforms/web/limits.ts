/** The share page's own limits. */

/** Characters of a token: 132 bits in base64url. */
export const TOKEN = /^[A-Za-z0-9_-]{22}$/;

/** Bytes of what a form sends: its longest text in the longest encoding, with room for its names. */
export const LARGEST_FORM = 16 * 1024;

/** Bytes of what is sent that are looked at for an emergency, however much there is. */
export const MOST_SCREENED = 128 * 1024;

/** Characters of a note, and of what the tape says. */
export const LONGEST_PAGE_NOTE = 1000;
export const LONGEST_MEASURE = 60;

/** Milliseconds for which a note is known by its name, so that one sent again is kept once. */
export const NOTE_KNOWN = 7 * 24 * 3600 * 1000;

/** Milliseconds for which what came of a form is kept for the page that shows it. */
export const NOTIFIED_KEPT = 10 * 60 * 1000;

/** Pages that are kept as they were worked out, and for how many milliseconds: waits and dates go on meanwhile. */
export const PAGES_KEPT = 200;
export const PAGE_GOOD = 5 * 60 * 1000;

/** Stages shown first of all: as many as fit on a phone's first screen. */
export const MOST_NEXT = 5;

/** Pieces to saw that a page of several sheets shows itself; more are on a page of their own. */
export const MOST_PIECES = 24;

/** Requests a minute for one link and from one address, and of those of a link what sends something: more than hands can tick. */
export const A_MINUTE = { link: 240, address: 600, permission: 120 } as const;

/** Seconds after which somebody who came too often may come again. */
export const COME_AGAIN = 60;
