/** Text about a project's progress: stages, what comes next, and what it is waiting for. */

import type { Stage } from '../reply/need.ts';
import type { Problem } from '../reply/reply.ts';
import { quoted } from './chat-text.ts';
import { counted } from './floor-text.ts';
import { byUnits } from './units-text.ts';

/** A stage's name inside a sentence. */
export const STAGE_IN: Readonly<Record<Stage, string>> = {
  clear: 'clear the room',
  'tear-out': 'tear-out',
  subfloor: 'squeaks and patches',
  flat: 'flatness',
  dry: 'moisture',
  acclimate: 'cartons in the room',
  lay: 'laying the floor',
  transitions: 'transitions',
  baseboards: 'baseboards',
  caulk: 'caulk and filler',
  paint: 'paint',
};

export const PROGRESS = {
  headline: (done: number, all: number, next: string | undefined) =>
    next === undefined
      ? `All ${counted(all, 'stage')} done.`
      : `${done} of ${counted(all, 'stage')} done. Next: ${next}.`,
  next: (room: string, stage: Stage) => `${STAGE_IN[stage]} in ${room}`,
  nextIs: (stage: Stage) => STAGE_IN[stage],
  finished: 'finished',
  title: 'Room by room',
  columns: ['Room', 'Done', 'Next', 'Waits for'],
  doneOf: (done: number, all: number) => `${done} of ${all}`,
  todoTitle: (room: string, stage: Stage) => `${room}: ${STAGE_IN[stage]}`,
  waiting: (stage: Stage, until: string, left: string) => `${STAGE_IN[stage]} until ${until} (${left} left)`,
  waitingOn: (stage: Stage) => `${STAGE_IN[stage]}, no end given`,
  over: (stage: Stage) => `${STAGE_IN[stage]}: the wait is over, check it and tick it off`,
  blocked: (stage: Stage) =>
    stage === 'flat' ? 'not flat' : stage === 'dry' ? 'not dry' : `${STAGE_IN[stage]} is blocked`,
  unchecked: (stage: Stage) => (stage === 'acclimate' ? 'cartons in the room' : `${STAGE_IN[stage]} not checked`),
  laterTitle: 'Waiting or not right for later stages',
  behindTitle: 'Skipped so far',
  behind: (room: string, stages: readonly Stage[]) => `${room}: ${stages.map((stage) => STAGE_IN[stage]).join(', ')}`,
  dueTitle: 'Waits that are over',
  due: (room: string, stage: Stage, since: string) =>
    stage === 'acclimate'
      ? `${room}: the cartons have had their time (since ${since}). Check that the subfloor is flat and dry, then lay.`
      : `${room}: ${STAGE_IN[stage]} has had its time (since ${since}). Check it, then tick it off.`,
  change: (rooms: readonly string[], stages: readonly Stage[], state: string, when: string) =>
    `${rooms.join(', ')}: ${stages.map((stage) => STAGE_IN[stage]).join(', ')} ${state}${when}.`,
  states: { done: 'done', waiting: 'under way', blocked: 'not right yet', skipped: 'left out', open: 'open again' },
  until: (since: string, until: string) => ` from ${since} until ${until}`,
  hours: (hours: number) =>
    hours >= 48
      ? `${Math.floor(hours / 24)} d ${Math.round(hours % 24)} h`
      : hours >= 1
        ? `${Math.round(hours)} h`
        : `${Math.max(1, Math.round(hours * 60))} min`,
  zone: (zone: string) => `all times are in the bot’s time zone, ${zone}`,
  taken: (hours: number) =>
    `${hours} h for the cartons is the longest any maker is reported to want; give yours, “for 24 h”`,
  nextTaken: (stage: Stage) => `assuming ${STAGE_IN[stage]}, since it comes next`,
  tick: (room: string, stage: Stage) => `Done: ${STAGE_IN[stage]}, ${room}`,
  among: 'Tick off',
} as const;

/** What must be true before each stage. */
export const STAGE_ITEMS: Readonly<Record<Stage, readonly string[]>> = {
  clear: [
    'Rooms empty, dust shut in, cartons ordered or their date sure.',
    'Photograph the rooms and what is damaged.',
  ],
  'tear-out': [
    'First: what lies below is known; nothing old, black or papery.',
    'Section by section: strips, pad, staples, tack strip; sweep, then vacuum.',
  ],
  subfloor: [
    'First: every staple and nail is out, the floor is vacuumed.',
    'Mark squeaks and soft spots, screw down, cut out what is rotten (“squeaks”, “patch”).',
  ],
  flat: [
    'First: the subfloor does not move.',
    `A ${byUnits('10 ft', '3 m')} straightedge every way (“level”); let the leveler dry as its bag says.`,
  ],
  dry: ['First: no leak, no wet spot.', 'Measure moisture (“moisture”).'],
  acclimate: [
    'First: wet work is dry, the room is heated as you live in it.',
    'Cartons flat in the room as the maker says.',
  ],
  lay: [
    'First: flat, dry, clean, quiet; all cartons of one lot.',
    'Undercut casings, keep the gap at every wall (“layout”).',
  ],
  transitions: ['First: the last row is in, the spacers are out.', 'Tracks go into the subfloor, doors back on.'],
  baseboards: ['First: the gap lies under the trim everywhere.', 'Nail to the wall, never to the floor (“list”).'],
  caulk: ['First: all trim is nailed, nails are set.', 'Fill, caulk the top edge only (“finish”).'],
  paint: ['First: filler and caulk are dry.', 'Paint; wait between coats as the label says.'],
};

export const PROGRESS_PROBLEMS = {
  unread: (got: string, fix: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected:
      'Say what is done or waiting, and in which room: “done tear-out bedroom”, “not flat hall”, “acclimating bedroom since Friday 18:00 for 48 h”.',
    fix,
  }),
  whichRoom: (got: string, rooms: readonly string[], fix: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: `In which room: ${rooms.join(', ')}, or everywhere?`,
    fix,
  }),
  noRooms: (): Problem => ({
    option: 'ask',
    got: '',
    expected: 'The project has no rooms yet: add them first.',
  }),
  howLong: (got: string, fix: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: 'For how long, or until when? Look on the bag, the can or the carton.',
    fix,
  }),
  finished: (got: string, room: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: `Everything is done in ${room}.`,
    fix: 'list',
  }),
  backwards: (got: string, fix: string): Problem => ({
    option: 'do',
    got: quoted(got),
    expected: 'It ends before it begins.',
    fix,
  }),
} as const;
