/** The one question that is asked back, and the words around what was heard. */

/** By the option that is open. */
export const ASK_FOR: Readonly<Record<string, string>> = {
  room: 'What are the room’s length and width?',
  area: 'How large is the floor? Give its length and width, or square feet.',
  box: 'What does one box cover, or how many planks are in it?',
  plank: 'Which plank? Give its width and length, and what is in a box.',
  planks: 'Which planks? Give each one’s size and what is in a box, with “;” between them.',
  have: 'How many boxes, or square feet, do you have?',
  doorways: 'How wide is each doorway, and what floor is on the other side?',
  readings: 'How deep is the low spot, and over what length? For example 1/4 in over 6 ft.',
  squeaks: 'How large is the noisy area? Give its two sides.',
  moisture: 'What did the meter or test read, and on what: wood, or concrete?',
  weight: 'What does one box weigh?',
  damage: 'How large is the bad spot, and how far from the left and bottom walls?',
  sum: 'Which lengths? For example 12 ft 6 in + 3 ft 4 1/2 in.',
};

export const READER = {
  anyCount: (count: number) => `Assuming ${count} planks a box; the rows are the same with any number.`,
  unclear: 'I’m not sure which one you mean:',
  maybe: 'Did you mean one of these?',
  nothing: 'I didn’t understand that. Say it with the sizes, or pick one of these:',
  change: (what: string) => `Should I do this: ${what}?`,
  examples: [
    { label: 'Boxes for a room', ask: 'help planks' },
    { label: 'Questions and answers', ask: 'handbook' },
    { label: 'Help', ask: 'help' },
  ],
} as const;
