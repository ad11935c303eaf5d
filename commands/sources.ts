/** `sources`: every figure the answers rely on, where it comes from, and how well it was checked. */

import { z } from 'zod';
import { defineCommand } from '../src/chat/command.ts';
import { FIGURES } from '../src/figures/all-figures.ts';
import { text } from '../src/input/options.ts';
import { read } from '../src/input/reading.ts';
import { reply } from '../src/reply/reply.ts';
import { SOURCES, saySource } from '../src/text/answer-text.ts';

export default defineCommand({
  name: 'sources',
  summary: 'Where each figure comes from, and how well it has been checked',
  phrases: [
    'where do your figures come from',
    "what's your source for ten percent waste",
    'who says 3/16 in 10 feet',
    'is the moisture limit from a standard or did you make it up',
    'list your sources',
    'which book or standard is that out of',
    'cite it',
    "where'd you get the 30 pound lifting number",
    'are these numbers from the manufacturer or general',
    'show me the references',
    'is there a document behind the 6 inch stagger rule',
    'source for carpet weight please',
    'do you have a link for that flatness rule',
    'what are the facts here based on, my contractor disagrees',
    'published or just common practice?',
    'where does the 40 lb carton weight come from',
    'what standards do you use for concrete humidity',
    'i want the citations so i can show them to my landlord',
    'your info comes from where exactly',
    'how old are your sources',
    'name the standard for leaving a gap at walls',
    'give me the list of everything you looked up for the numbers',
    'which figures are rules of thumb and which are official',
    'bibliography',
    'who publishes the lifting equation you use',
    'show where the leveler yield is from',
    'sources for asbestos dates',
    'the numbers on tearout, who measured those',
    'is the nail spacing from code or from you',
    'does that come from a building code, and which one',
    'where can i read about it myself',
    'what did you base the 8 inch offset on, any source?',
    'is that backed by anything',
    'tell me the source of each figure in the plan',
    "the paint coverage number, where's that written",
    'origin of these figures',
    'i need to know where the numbers came from before i send this to the insurance',
    'any british standard behind that or is it all american',
    'sources behind squeak screw spacing',
    "what's the reference for wood moisture at 12 percent",
  ],
  options: z.object({
    about: text(
      {
        summary: 'A word to look for, such as gap; leave it out to see all',
        example: 'gap',
        standard: 'all',
        colons: 'any',
      },
      (typed) => read(typed),
    ),
  }),
  examples: [
    { ask: 'sources', headline: SOURCES.headline(FIGURES.length, undefined) },
    { ask: 'sources about: acclimation', headline: '1 figure about acclimation.' },
  ],
  run: ({ about }, { assumed }) => {
    const word = about.toLowerCase() === 'all' ? undefined : about.toLowerCase();
    const found = FIGURES.filter(
      ({ name, said }) => word === undefined || `${name} ${said}`.toLowerCase().includes(word),
    );
    const rows = found.map(({ name, said, source }) => [name, said, saySource(source), source.standing]);
    return reply({
      headline:
        word !== undefined && found.length === 0 ? SOURCES.none(about) : SOURCES.headline(found.length, word && about),
      blocks: [
        { kind: 'table', title: SOURCES.title, columns: SOURCES.columns, rows },
        { kind: 'text', text: SOURCES.standing },
      ],
      assumed,
      sources: found.map(({ source }) => source),
      data: { kind: 'sources', figures: rows.map(([name, said]) => ({ name, said })) },
    });
  },
});
