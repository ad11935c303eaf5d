/** Text of the share page: around the sheets, next to what can be checked off or entered, and on pages without a sheet. */

/** Titles of the sheets on the page. */
export const PAGE_SECTIONS = {
  shopping: 'To buy',
  tearout: 'Tear-out',
  repairs: 'Repairs and finishing',
  checklist: 'Checklist',
  guide: 'Laying guide',
  cuts: 'Saw card',
} as const;

/** What someone with the link may do. */
export const PAGE_ROLES = {
  look: 'You can look at it and print it.',
  tick: 'You can tick things off and leave notes.',
  measure: 'You can tick things off, leave notes and send measurements.',
} as const;

export const PAGE = {
  until: (when: string) => `This page is open until ${when}.`,
  made: (when: string) => `Worked out ${when}.`,
  next: 'Do this next',
  back: 'Back to everything',
  pieces: 'Straight to the pieces',
  cautions: 'Safety',
  assumed: 'How it was read',
  sources: 'Where the figures come from',
  refusal: 'This is not safe to work out from here',
  emergency: 'This comes first',
  call: 'Who to call',
  problem: 'That could not be done yet',
  read: 'Read',
  nothing: '(nothing)',
  type: 'Say it like this',
  nothingHere: 'Nothing to show yet. Once there is something to do, you’ll find it here.',
  first: 'Local code and makers’ instructions come first.',
  take: 'Take it with you',
  letter: 'PDF, letter paper',
  a4: 'PDF, A4 paper',
  csv: (list: string) => `${list} as a table (CSV)`,
  json: 'Everything as data (JSON)',
  print: 'For paper, take the PDF: it has every sheet.',
} as const;

export const PAGE_TICKS = {
  by: (who: string | undefined, when: string | undefined) =>
    [who === undefined ? 'ticked' : `ticked by ${who}`, when].filter((part) => part !== undefined).join(', '),
  saving: 'saving…',
  waiting: 'not saved yet: no connection. It is sent when there is one.',
  refused: 'not saved',
  left: (count: number) => (count === 1 ? '1 thing is not saved yet.' : `${count} things are not saved yet.`),
  stale: 'The lists have changed since this page was opened.',
  fresh: 'Show the new ones',
  ended: 'This page has ended or was stopped. What isn’t saved yet can’t be saved anymore.',
  lost: 'not saved: the page has ended. Pass it on to whoever sent the link.',
  others: 'Say something else here',
} as const;

export const PAGE_SAW = {
  intro: {
    plank: 'Face up, as it will lie, seen from above.',
    trim: 'Stands on its foot, its back against the fence, its face to you; seen from above.',
  },
  piece: (no: number, all: number) => `Piece ${no} of ${all}`,
  alike: (count: number) => `${count} alike`,
  longest: { plank: 'Cut to', trim: 'Long point to long point' },
  width: (width: string) => `Ripped to ${width} wide`,
  left: 'Left end',
  right: 'Right end',
  from: 'From',
  back: 'Back',
  next: 'Next',
  start: 'One piece at a time',
  all: 'All pieces at once',
  fence: 'fence',
  you: 'you stand here',
  near: 'side of the row before',
  far: 'side of the next row',
  longSide: {
    back: 'long point at the back, against the fence',
    face: 'long point at the face, toward you',
    near: 'longer on the side of the row before',
    far: 'longer on the side of the next row',
  },
  alt: (what: string, left: string, right: string) =>
    `${what}, seen from above. Left end: ${left}. Right end: ${right}.`,
  scale: 'Ends are drawn to their angle, a dot at each long point; the length is not to scale.',
} as const;

export const PAGE_NOTES = {
  title: 'Leave a note',
  label: 'What should the others know?',
  send: 'Save the note',
  measureTitle: 'To measure',
  measureLabel: 'What the tape says',
  measureKept: (kept: string) => `Kept as ${kept} so far.`,
  measureHint: (example: string) => `For instance ${example}`,
  measureSend: 'Send it',
  saved: 'Saved.',
  empty: { option: 'ask', got: '', expected: 'Nothing was written.', fix: 'Water stain by the window' },
  unknown: {
    option: 'ask',
    got: '',
    expected: 'The page sent something I couldn’t read. Open it again.',
    fix: 'Open the page again',
  },
  noTick: {
    option: 'ask',
    got: '',
    expected: 'This is no longer on the list: it changed after you opened the page.',
    fix: 'Open the page again',
  },
  noQuestion: {
    option: 'ask',
    got: '',
    expected: 'Nobody needs this one anymore.',
    fix: 'Open the page again',
  },
} as const;

/** The handbook as pages that anybody can open. */
export const HANDBOOK_PAGES = {
  title: 'Floor handbook',
  about: (count: number) =>
    `${count} questions about replacing a floor yourself, each with its answer, its figures and where they come from.`,
  named: (title: string) => `${title} · Floor handbook`,
  topics: 'Topics',
  topic: (name: string) => `${name.charAt(0).toUpperCase()}${name.slice(1)}`,
  all: 'All questions',
  units: { us: 'In feet and inches', metric: 'In metric' },
  exact: (question: string) => `To be exact: ${question}`,
  more: 'More on this',
  figures: 'Figures',
  columns: ['Figure', 'Value', 'Standing', 'Source'],
  standing:
    'Published: read in the source. Reported: read in a page that reports it. Common practice: a habit of the trade. From memory: confirm it before you rely on it.',
  near: 'Close to this',
  same: (topic: string) => `More about ${topic}`,
  first: 'Local code and your maker’s instructions come first.',
} as const;

/** The same words whatever the reason. */
export const NO_PAGE = {
  missing: {
    title: 'No page here',
    text: 'This link doesn’t work, or not anymore. Ask whoever sent it for a new one, and mention what you ticked that wasn’t saved yet.',
  },
  noEntry: {
    title: 'No such page',
    text: 'The handbook has no page at this address. Its first page lists all questions: /handbook.',
  },
  moved: { title: 'One slash too many', text: 'The page is at the same address without the slash at its end.' },
  large: { title: 'Too long', text: 'That was too long. Write less.' },
  fault: { title: 'That went wrong', text: 'Something went wrong on our side. Try again in a minute.' },
  instead: 'Nothing to show yet',
  often: { title: 'Too many tries', text: 'That was a lot of tries at once. Wait a minute, then open it again.' },
  method: { title: 'Not here', text: 'Pages here can be opened, ticked and written to, and nothing else.' },
  elsewhere: {
    title: 'Not from this page',
    text: 'That didn’t come from the page itself, so nothing changed. Open the page and do it there.',
  },
  outage: {
    title: 'Not just now',
    text: 'Your project can’t be reached just now, so nothing changed. Try again in a minute.',
  },
} as const;
