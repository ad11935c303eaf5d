/** Text of the share page: around the sheets, beside what can be ticked or entered, and where there is no page. */

/** What each sheet is called on the page. */
export const PAGE_SECTIONS = {
  shopping: 'To buy',
  tearout: 'Tear-out',
  repairs: 'Repairs and finishing',
  checklist: 'Checklist',
  guide: 'Laying guide',
  cuts: 'Saw card',
} as const;

/** What somebody with the page may do. */
export const PAGE_ROLES = {
  look: 'You can look at it and print it.',
  tick: 'You can tick things off and leave notes.',
  measure: 'You can tick things off, leave notes and send measurements.',
} as const;

export const PAGE = {
  until: (when: string) => `This page is open until ${when}.`,
  made: (when: string) => `Worked out ${when}.`,
  sections: 'On this page',
  top: 'Up to the list',
  pieces: 'Straight to the pieces',
  cautions: 'Take care',
  assumed: 'How it was read',
  sources: 'Where the figures come from',
  refusal: 'This is not safe to work out from here',
  emergency: 'This comes first',
  call: 'Who to call',
  problem: 'That could not be done yet',
  read: 'Read',
  nothing: '(nothing)',
  type: 'Tell it like this',
  nothingHere: 'There is nothing to show yet. Once there is something to do, it is here.',
  first: 'Local code and makers’ instructions come first.',
  take: 'Take it with you',
  letter: 'PDF, letter paper',
  a4: 'PDF, A4 paper',
  csv: (list: string) => `${list} as a table (CSV)`,
  json: 'Everything as data (JSON)',
  print: 'To keep it on paper, print this page.',
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
  ended: 'This page has ended or was stopped. What is not saved yet cannot be saved any more.',
  lost: 'not saved: the page has ended. Tell it to whoever sent the link.',
  others: 'Something else can be told here',
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
    face: 'long point at the face, towards you',
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
    expected: 'The page sent something that is not understood here. Open it again.',
    fix: 'Open the page again',
  },
  noTick: {
    option: 'ask',
    got: '',
    expected: 'This is no longer on the list: the list has changed since the page was opened.',
    fix: 'Open the page again',
  },
  noQuestion: {
    option: 'ask',
    got: '',
    expected: 'This is not asked for any more.',
    fix: 'Open the page again',
  },
} as const;

/** Pages for whoever has no page: the same words whatever the reason. */
export const NO_PAGE = {
  missing: {
    title: 'No page here',
    text: 'This link leads nowhere, or not any more. Ask whoever sent it for a new one, and tell them what you ticked that was not saved yet.',
  },
  moved: { title: 'Over there', text: 'The page is at the same address without the slash at its end.' },
  large: { title: 'Too long', text: 'That was longer than anything the page sends. Write less.' },
  fault: { title: 'That went wrong', text: 'Something went wrong on our side. Try again in a minute.' },
  instead: 'Nothing to show yet',
  often: { title: 'Too often', text: 'That was very often. Wait a minute, then open it again.' },
  method: { title: 'Not here', text: 'Pages here can be opened, ticked and written to, and nothing else.' },
  elsewhere: {
    title: 'From elsewhere',
    text: 'That did not come from the page itself, so nothing was changed. Open the page and do it there.',
  },
  outage: {
    title: 'Not just now',
    text: 'What is kept cannot be reached at the moment, so nothing was changed. Try again in a minute.',
  },
} as const;
