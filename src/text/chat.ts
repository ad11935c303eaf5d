/** The words around an answer in a chat, the same on every chat platform. */

export const CHAT = {
  assumed: 'How it was read',
  cautions: 'Take care',
  sources: 'Sources',
  noSources: 'No outside figure was used for this answer.',
  problem: 'This could not be answered yet',
  read: 'Read',
  nothing: '(nothing)',
  type: 'For instance',
  refusal: 'This is not safe to work out from here',
  emergency: 'This comes first',
  call: 'Who to call',
  /** Buttons. */
  form: 'Fill in a form',
  suggested: 'Take the suggestion',
  example: 'Try with an example plank',
  again: 'Ask again',
  ask: 'You could also ask',
  change: 'Change a detail',
  show: 'Show to channel',
  poll: 'Ask the channel',
  pollQuestion: 'Which floor?',
  /** The button of what is too long for the first message, by the kind of the answer's data. */
  sheets: { floor: 'Laying guide', trim: 'Cut list', patch: 'Cut list', plan: 'Every step' } as Readonly<
    Record<string, string>
  >,
  otherSheets: 'All details',
  /** `how`: what to type. */
  gone: (how: string) =>
    `This answer is no longer kept, or is not yours. Ask again, such as with ${how}: the buttons of an answer work for a week.`,
  whole: 'The whole answer is in the attached file.',
  tables: 'The tables are attached for a spreadsheet as well.',
  morePictures: (more: number) =>
    `${more} more ${more === 1 ? 'picture is' : 'pictures are'} behind the laying guide of each room.`,
  notDrawn: (title: string) => `“${title}” could not be drawn; the figures stand.`,
  tooLarge: (title: string) => `“${title}” is too large to send here.`,
  restarting: 'The bot is being started again, and this was not finished. Ask again in a minute.',
  working: 'Still being worked on: this answer is replaced when it is whole.',
  missed: 'An earlier answer did not reach you; here it is.',
  menu: 'Work out quantities',
  /** A group of commands, by the names in it. */
  group: (names: readonly string[]) => `One of: ${names.join(', ')}`,
} as const;
