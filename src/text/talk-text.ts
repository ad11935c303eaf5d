/** What is said to hello, thanks and anger, and to questions that aren't about floors. */

export const SMALL_TALK = ['hello', 'thanks', 'angry', 'other-trade', 'chat', 'start-over', 'nothing-open'] as const;
export type SmallTalk = (typeof SMALL_TALK)[number];

interface Said {
  readonly lead: string;
  readonly line: string;
  readonly label?: string;
  readonly request?: string;
}

export const TALK_TEXT: Readonly<Record<SmallTalk, Said>> = {
  hello: {
    lead: 'Hi. I work out planks, trim and subfloor repairs for your floor.',
    line: 'Try: how many boxes for a 12x14 room, planks 7x48, 23 sq ft a box?',
  },
  thanks: {
    lead: 'You’re welcome. Good luck with the floor.',
    line: 'Type “help” for what else I can work out.',
    label: 'Help',
    request: 'help',
  },
  angry: {
    lead: 'Sorry, that missed. What did you want to know?',
    line: 'Say it in one sentence with the sizes, for example: boxes for 12x14, 24 sq ft a box.',
    label: 'Help',
    request: 'help',
  },
  'other-trade': {
    lead: 'That’s another trade’s work, so I don’t have an answer I’d stand behind.',
    line: 'I do floors: tear-out, subfloor, planks, trim. Type “help” to see how.',
    label: 'Help',
    request: 'help',
  },
  chat: {
    lead: 'I only know floors: tear-out, subfloor, planks and trim.',
    line: 'Try: which way should planks run in a hallway?',
    label: 'Help',
    request: 'help',
  },
  'start-over': {
    lead: 'Okay, starting over. What is the room’s length and width?',
    line: 'A project stays as it is; type “project show” to see it.',
  },
  'nothing-open': {
    lead: 'There’s no answer open that I could show more of.',
    line: 'Ask first, for example: how many boxes for 12x14, 24 sq ft a box?',
  },
};
