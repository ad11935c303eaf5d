/** The words of what was found in a project's rooms and what it takes, for an insurer or a hired trade. */

import type { Problem } from '../reply/reply.ts';
import { quoted } from './asks.ts';
import { counted } from './floor.ts';

export const FOUND = {
  headline: (findings: number, rooms: number, calls: number) =>
    findings === 0
      ? 'Nothing found is kept yet.'
      : `${counted(findings, 'finding')} in ${counted(rooms, 'place')}${calls > 0 ? `, ${calls} not for you to do` : ''}.`,
  added: (text: string) => `Kept: ${quoted(text)}.`,
  removed: (text: string) => `Removed: ${quoted(text)}.`,
  said: (text: string) => `found: ${text}`,
  saidRemoved: (text: string) => `finding removed: ${text}`,
  elsewhere: 'No room given',
  together: 'These rooms together',
  gone: 'A room that is no longer in the project',
  whichRoom: (no: number, room: string) =>
    `Saved answer ${no} doesn't say which room it is in: type “project keep ${no} in ${room}”.`,
  told: (no: number, day: string, text: string, area: string | undefined) =>
    `${text}${area === undefined ? '' : `, ${area}`} (finding ${no}, ${day}).`,
  takes: (things: readonly string[]) => ` It takes: ${things.join('; ')}.`,
  beside: (found: string) => ` Found there: ${quoted(found)}.`,
  patch: (across: string, up: string, area: string) =>
    `A piece of subfloor ${across} × ${up} (${area}) is damaged; it is cut out on its joists and replaced.`,
  flat: 'The floor was measured and is flat enough.',
  notFlat: (said: string) => `The floor was measured. ${said}`,
  squeaks: (screws: number, length: string) =>
    `The subfloor squeaks; it is screwed down to its joists with ${counted(screws, 'screw')} of ${length} or longer.`,
  moisture: (said: string) => `Moisture was measured. ${said}`,
  tearoutHere: (area: string) => `The old floor comes out: ${area}.`,
  tearoutOf: (rooms: readonly string[]) => `${rooms.join(', ')}: `,
  refused: (command: string) => `${quoted(command)}: not for you to do.`,
  unanswered: (command: string, why: string) => `${quoted(command)} can't be worked out: ${why}`,
  tearout: (area: string, weight: string) => `The old floor comes out: ${area}, ${weight} of debris.`,
  callTitle: 'Call first: not for you to do',
  call: (where: string, why: string, who: string) => `${where}: ${why} Call: ${who.replace(/\.$/, '')}.`,
  proofTitle: 'For whoever pays or is hired',
  proof: [
    'Photograph each finding before it is moved or covered, with a tape beside it.',
    'Keep a piece of what comes out, and the receipts.',
    'These are measures and quantities as told and computed; whoever does the work measures again.',
  ],
  remove: (no: number) => `Remove finding ${no}`,
} as const;

export const FOUND_PROBLEMS = {
  empty: (): Problem => ({
    option: 'do',
    got: '',
    expected: 'Tell what you found, how large it is, and in which room.',
    fix: 'found soft spot 2 x 3 ft bedroom by window',
  }),
  long: (got: string, most: number, fix: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: `A finding has at most ${most} characters: tell it in two.`,
    fix,
  }),
} as const;
