/** What Discord takes: its documented limits of Nov 2026, with a margin where it counts otherwise than we do. */

/** Characters of all texts of a message; 4,000 are taken, and escapes must never tip it over. */
export const MESSAGE_TEXT = 3800;
/** UTF-8 bytes of all texts of a message; reported to fail from about 10,170 on, from memory. */
export const MESSAGE_BYTES = 8500;
/** Components of a message, nested ones counted. */
export const MESSAGE_COMPONENTS = 40;
/** Pictures of a gallery, and files of a message. */
export const MESSAGE_FILES = 10;
/** Bytes of one file where the interaction does not tell its own limit. */
export const FILE_BYTES = 10 * 1024 * 1024;
/** Bytes of a whole request. */
export const REQUEST_BYTES = 25 * 1024 * 1024;
/** Messages of a problem or a refusal: five follow-ups are taken where only a person installed the app, and one is kept for a later word. */
export const ANSWER_MESSAGES = 3;
/** Parts that somebody would leaf through; what is longer is a file. */
export const MOST_PARTS = 9;
/** Buttons, and buttons and lists together, under an answer: what a thumb finds without looking for it. */
export const CARD_BUTTONS = 4;

/**
 * A phone 390 px wide, in px as measured in a mock of one: what a first message may take up with the name above it
 * and the card's edges, a line and its characters, those of the headline, the widest and the highest a picture is
 * shown, what the rows under an answer take as a rule, a row of buttons, a list, and how much wider than its
 * characters a button is.
 */
export const PHONE = {
  screen: 640,
  name: 80,
  line: 22,
  characters: 36,
  head: { line: 24, characters: 28 },
  width: 288,
  picture: 288,
  rows: 190,
  row: 40,
  list: 48,
  button: { around: 38, character: 8 },
} as const;

export const ROW_BUTTONS = 5;
export const BUTTON_LABEL = 80;
export const SELECT_OPTIONS = 25;
/** Label and description of a select's option. */
export const SELECT_TEXT = 100;
export const SELECT_PLACEHOLDER = 150;
export const CUSTOM_ID = 100;
export const ALT_TEXT = 1024;

export const MODAL_FIELDS = 5;
export const MODAL_TITLE = 45;
export const FIELD_LABEL = 45;
export const FIELD_DESCRIPTION = 100;
export const FIELD_PLACEHOLDER = 100;
export const FIELD_VALUE = 4000;

export const POLL_QUESTION = 300;
export const POLL_ANSWER = 55;
export const POLL_ANSWERS = 10;
/** A day. */
export const POLL_HOURS = 24;

export const COMMAND_DESCRIPTION = 100;
export const COMMAND_OPTIONS = 25;
export const COMMAND_CHOICES = 25;
/** Name, descriptions and choices of one command, its subcommands counted in. */
export const COMMAND_CHARACTERS = 8000;
export const AUTOCOMPLETE_CHOICES = 25;
export const CHOICE_TEXT = 100;

/** Milliseconds. A first response is taken for 3 s, of which the store is waited for so long: once for whether this is the first delivery, once for what a press is about. */
export const CLAIM_TIME = 900;
export const LOOK_UP_TIME = 1400;
/** What nobody waits for may take longer: the store gives up by itself before. */
export const KEEP_TIME = 10_000;
/** How long a token is good for further messages. */
export const TOKEN_TIME = 15 * 60 * 1000;
/** Discord sends a request once or a few times, within seconds: older ones are somebody else's. */
export const REPLAY_WINDOW = 5 * 60 * 1000;
