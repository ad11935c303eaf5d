/** The words of the terminal around an answer. */

export const TERMINAL = {
  assumed: 'How it was read',
  cautions: 'Take care',
  sources: 'Sources',
  actions: 'You could also ask',
  problem: 'This could not be answered yet',
  read: 'Read',
  nothing: '(nothing)',
  type: 'Type instead',
  example: 'Try with an example plank',
  refusal: 'This is not safe to work out from here',
  emergency: 'This comes first',
  call: 'Who to call',
  greeting: 'floorhand works out planks, cartons and cuts for your floor. Here is one answer:',
  prompt: 'Now yours. Type an ask, “help”, or “quit”.',
  otherPort: (port: number, page: string | undefined) =>
    page === undefined
      ? `Share pages cannot be shown: port ${port} cannot be had, nor another.`
      : `Port ${port} is taken: share pages are at ${page} while this is open.`,
  bye: 'Good luck with the floor.',
  usage:
    'Usage: npm run ask -- [--json] "planks room: 12x14, plank: 6 x 48 in, 10 per carton" (or asks on standard input, one a line).',
} as const;
