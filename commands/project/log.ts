/** `project log`: dated notes on the job. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { hostZone, sayMoment } from '../../src/input/moment.ts';
import { text } from '../../src/input/options.ts';
import { readListAction } from '../../src/input/parse-label.ts';
import { read } from '../../src/input/reading.ts';
import {
  addNote,
  LONGEST_NOTE,
  MOST_NOTES,
  type ProjectLog,
  removeNote,
  searchLog,
} from '../../src/project/findings.ts';
import type { Project } from '../../src/project/project.ts';
import { LIMITS } from '../../src/project/project-limits.ts';
import { type Block, reply } from '../../src/reply/reply.ts';
import { LOG, LOG_PROBLEMS, NEXT, noSuchPlace, tooMany } from '../../src/text/project-text.ts';
import { withSigned } from '../../src/text/sharing-text.ts';
import { changeHere, projectHere, TAKE_BACK } from './project-command.ts';

interface LogAsk {
  readonly do: string;
}

/** Without a search, only the latest. */
const SHOWN = 20;
const ADDING = /^(?:add |write |make )?(?:a )?(?:note(?: that)?|add|log)(?![\p{L}\d])/iu;

async function answerLog(ask: LogAsk, context: Context): Promise<Outcome> {
  const project = await projectHere(context);
  if ('problems' in project) return project;
  const permission = readListAction(ask.do, ADDING);
  const { log } = project;
  if (permission.do === 'show')
    return replyOf(LOG.headline(log.length, Math.min(SHOWN, log.length)), lastOf(log), context);
  if (permission.do === 'search') {
    const hits = searchLog(log, permission.words);
    return replyOf(LOG.hits(hits.length, permission.words), hits.slice(-SHOWN), context);
  }
  if (permission.do === 'remove') {
    const note = log[permission.place - 1];
    if (!note) return { problems: [noSuchPlace(ask.do, log.length, log.length > 0 ? `remove ${log.length}` : 'list')] };
    const done = await changeHere(context, 'note', (now) => {
      // Somebody else may have removed a note in the meantime, so the note is looked up again by its text and time.
      const at = now.log.findIndex(({ text, at: when }) => text === note.text && when === note.at);
      if (at < 0) return { result: undefined };
      return {
        parts: { log: removeNote(now.log, at) },
        said: LOG.saidRemoved(note.text).slice(0, LIMITS.note),
        result: undefined,
      };
    });
    return 'problems' in done ? done : replyOf(LOG.removed(note.text), lastOf(done.project.log), context, true);
  }
  const { text } = permission;
  if (text === '') return { problems: [LOG_PROBLEMS.empty()] };
  if (text.length > LONGEST_NOTE) {
    const fix = text.slice(0, LONGEST_NOTE / 2).replace(/[\uD800-\uDBFF]$/, '');
    return { problems: [LOG_PROBLEMS.long(text, LONGEST_NOTE, `note ${fix}`)] };
  }
  if (log.length >= MOST_NOTES) return { problems: [tooMany('notes', MOST_NOTES, 'remove 1')] };
  const note = { text, at: context.now() };
  const done = await changeHere(context, 'note', (now) =>
    now.log.length >= MOST_NOTES
      ? { result: undefined }
      : { parts: { log: addNote(now.log, note) }, said: LOG.said(text).slice(0, LIMITS.note), result: undefined },
  );
  if ('problems' in done) return done;
  const spare = await planksSpare(text, project, context);
  const added = LOG.added(done.project.log.length);
  return replyOf(spare === undefined ? added : `${added} ${spare}`, lastOf(done.project.log), context, true);
}

const BROKE =
  /(?<![a-z])(?:broke|ruined|wasted|damaged|cracked|miscut) (?<count>an?|one|two|three|four|five|six|\d{1,2}) (?:more )?(?:planks?|boards?)(?![a-z])/i;
const WORDS: Readonly<Record<string, number>> = { a: 1, an: 1, one: 1, two: 2, three: 3, four: 4, five: 5, six: 6 };

const laid = z.object({
  plank: z.object({ perCarton: z.number() }),
  count: z.object({ planks: z.number(), cartons: z.number() }),
});

/** What broken planks leave of those bought beside the ones to lay; undefined where the floor isn't known. */
async function planksSpare(text: string, { picks }: Project, context: Context): Promise<string | undefined> {
  const said = BROKE.exec(text)?.groups?.count?.toLowerCase();
  const last = (await context.access?.last())?.line;
  const line = picks.plank === undefined ? last : 'planks';
  if (said === undefined || line === undefined || !/^planks(?: |$)/.test(line)) return undefined;
  const { outcome } = await context.ask(line);
  const floor = 'data' in outcome ? laid.safeParse(outcome.data) : undefined;
  if (!floor?.success) return undefined;
  const { plank, count } = floor.data;
  return LOG.spare(count.cartons, count.cartons * plank.perCarton - count.planks, WORDS[said] ?? Number(said));
}

type Placed = ReturnType<typeof searchLog>;

function lastOf(log: ProjectLog): Placed {
  return searchLog(log, '').slice(-SHOWN);
}

function replyOf(headline: string, notes: Placed, context: Context, changed = false): Outcome {
  const zone = hostZone();
  const rows = notes.map(({ text, at, place, by }) => [String(place + 1), sayMoment(at, zone), withSigned(text, by)]);
  const blocks: readonly Block[] =
    rows.length > 0 ? [{ kind: 'table', title: LOG.title, columns: LOG.columns, rows }] : [];
  return reply({
    headline,
    blocks,
    assumed: context.assumed,
    actions: [
      ...(changed ? [TAKE_BACK] : []),
      ...notes.map(({ place }) => ({
        label: LOG.remove(place + 1),
        ask: `project log remove ${place + 1}`,
        among: NEXT.remove,
      })),
    ],
    data: { kind: 'log', notes: notes.map(({ text, at, place }) => ({ no: place + 1, text, at })) } as {
      readonly kind: 'log';
    },
  });
}

export default defineCommand({
  group: 'project',
  name: 'log',
  summary: 'Dated notes on the job: add, list, search by word, remove',
  phrases: [
    'note: moved the couch to the garage',
    'log that the bathroom subfloor has a soft spot',
    'write down plank lot number 4471',
    'add a note to the kitchen',
    'remember that the closet wall is crooked',
    'keep a note the plumber comes tuesday',
    'show my notes',
    'save this note for later',
    'log: found black mastic under the tile',
    'put in the log 3 hours today',
    'jot down the door is 31 3/4',
    'make a note on bedroom 2',
    'what notes did i write',
    'record that delivery came',
    'diary entry for today',
    'note to self buy blades',
    'remind me what i wrote about the hall',
    'add to the log dog scratched the new plank',
    'take a note',
    'keep in mind the heater is under the window',
    'note: left door in the hall sticks',
    'put in my notes that lot number on the boxes is 88213',
    'jot this down, closet wall bows out 3/4 inch in the middle',
    'log that i worked 4 hours today and my knees are shot',
    'write down delivery is thursday between 8 and noon',
    'remember the shutoff for the fridge line is behind the panel in the pantry',
    'add a note to bedroom 2, outlet cover by the window is cracked',
    'can you save a note that the neighbor borrowed my pull bar',
    'for the record the installer next door charges 3 dollars a foot',
    'keep this somewhere: plank color is the grey one with the knots, not the tan',
    'note to self return the 36 inch level to my dad',
    'diary: pulled staples till midnight',
    'show me my notes from last week',
    'log entry, kitchen floor was 68 degrees when i started laying',
    'make a note the 4th plank from the door has a scratch, maybe swap it later',
    'what did i write about the bathroom wall',
    'worked on the hall from 6 to 9 tonight, write that up',
    'please record that the joists run east west under the living room',
    "stick a note on the den, there's a cable under the old carpet by the corner",
    'jot down: jamb undercut blade height 7/16',
    'i want to remember the baseboard profile number is 3117',
    'log it, moved fridge and stove onto the deck',
    'read me back the notes on the nursery',
    "add to the log that my helper can't come saturday now",
    'new note. tub apron is out of square by half an inch',
    "write this on the project so i don't forget, keep six planks in the attic",
    'took pictures of every wall before tearing out, note it please',
    'note for hallway vent cover measures 4 x 10',
    "found my grandad's knife under the carpet lol put that in the diary",
    'scribble down that the store holds my boxes until the 14th',
    "can you list everything i've noted so far",
    'log the room temp as 71 and humidity 44 today',
    'cat got locked in the bedroom, door has to stay shut, add as a note',
    'put a reminder note that the transition to the tile is 5/16 higher',
    'note: saw rental due back monday 5pm',
    'the paint code for the trim was swiss something 7012, write it down',
    'day 3, laid the closet and broke one blade, save that in the journal',
    'keep a note about the squeak near the top of the stairs',
    'memo: call inspector re sill plate',
    'make a comment on the living room, the gap behind radiator is only 5 mm',
  ],
  options: z.object({
    do: text(
      {
        summary: '“note found water stain by the bay”, “search stain”, “remove 3”, or list',
        example: 'note found water stain by the bay',
        standard: 'list',
        colons: 'any',
      },
      (typed) => read(typed.trim()),
    ),
  }),
  examples: [
    { ask: 'project log note found water stain by the bay', headline: 'Noted, number 1.' },
    { ask: 'project log', headline: 'No notes yet.' },
    { ask: 'project log search stain', headline: '0 notes with stain.' },
  ],
  run: (options, context) => answerLog(options, context),
});
