/** What Slack takes: its published limits, and a few that are only known from use (marked so). */

/** A message: 50 blocks are taken, and a few are left for rows of buttons. */
export const MESSAGE = {
  blocks: 50,
  /** Blocks before the rows of buttons. */
  body: 42,
  /** Characters of all texts; about 13,200 are taken before `msg_blocks_too_long` (known from use). */
  characters: 11_500,
  /** One table a message (known from use). */
  tables: 1,
  /** The fallback and notification text; longer ones are cut by Slack. */
  text: 3000,
  /** A heading. */
  header: 150,
} as const;

/** A rich text block of ours: lines and characters, so that none is longer than a screen or two. */
export const RICH = { characters: 2500, lines: 60 } as const;

/** A table block: 100 rows with its head, 20 columns, 10,000 characters in its cells (the last known from use). */
export const TABLE = { rows: 100, columns: 20, characters: 9000 } as const;

/** A table as narrow as this is lined up in fixed-width characters: it fits a phone. */
export const MONOSPACE = { columns: 40, characters: 2400 } as const;

/** A file's description and its title. */
export const IMAGE = { alt: 1000, title: 2000 } as const;
export const BUTTON = { text: 75, aRow: 5 } as const;
/** Buttons and lists under an answer. */
export const MOST_CONTROLS = 6;
export const SELECT = { options: 100, text: 75, value: 150, placeholder: 150 } as const;

/** Boxes to tick in one element. */
export const CHECKBOXES = 10;

export const VIEW = {
  blocks: 100,
  title: 24,
  metadata: 3000,
  label: 2000,
  hint: 2000,
  input: 3000,
  placeholder: 150,
  error: 500,
} as const;

/** Characters of the Home tab: our own measure, for Slack publishes none. */
export const HOME_CHARACTERS = 20_000;

/** A response_url: so many answers, for so long. */
export const RESPONSE = { uses: 5, milliseconds: 30 * 60_000 } as const;

/** Milliseconds: how long a call or an upload may take, the longest rate limits that a message, a file and a form wait for, of which Slack opens none after three seconds; how often one is waited for. */
export const TIME = {
  call: 10_000,
  upload: 30_000,
  limited: 30_000,
  limitedFile: 5_000,
  limitedForm: 2_000,
  tries: 3,
} as const;

/** Messages of an answer in a row; what is longer comes as a file. */
export const MOST_MESSAGES = 3;

/** How far a request's clock may be from ours: Bolt refuses older ones, and this one newer ones. */
export const CLOCK_MILLISECONDS = 5 * 60_000;
