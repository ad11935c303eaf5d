/** `project found`: a report of what they found, room by room, and what it takes, for an insurer or a hired trade. */

import { z } from 'zod';
import { type Context, defineCommand, type Outcome } from '../../src/chat/command.ts';
import { MOULD_AREA } from '../../src/figures/moisture-figures.ts';
import { cautionsFor } from '../../src/figures/safety-figures.ts';
import { sayArea, sayAreasOfSum, sayCut, sayWeight } from '../../src/input/format.ts';
import { hostZone, sayDay } from '../../src/input/moment.ts';
import { text } from '../../src/input/options.ts';
import { readListAction } from '../../src/input/parse-label.ts';
import { findingsApart, readFinding } from '../../src/input/parse-place.ts';
import { type Preferences, read } from '../../src/input/reading.ts';
import { roomOfArea } from '../../src/input/rooms/rooms-apart.ts';
import { addFinding, LONGEST_FINDING, MOST_FOUND, removeFinding } from '../../src/project/findings.ts';
import { mergeNeeds } from '../../src/project/needs.ts';
import type { Project } from '../../src/project/project.ts';
import { LIMITS } from '../../src/project/project-limits.ts';
import { sameName } from '../../src/project/project-room.ts';
import { type Block, type Caution, type Reply, reply } from '../../src/reply/reply.ts';
import { worded } from '../../src/text/caution-text.ts';
import { FOUND, FOUND_PROBLEMS, referral } from '../../src/text/found-text.ts';
import { noSuchPlace, tooMany } from '../../src/text/project-text.ts';
import { type Area, SQUARE_TICKS_PER_SQUARE_FOOT, ticks } from '../../src/units/length.ts';
import type { LevelResult } from '../prep/level.ts';
import type { MoistureResult } from '../prep/moisture.ts';
import type { PatchResult } from '../prep/patch.ts';
import type { SqueaksResult } from '../prep/squeaks.ts';
import type { TearoutResult } from '../prep/tearout.ts';
import { changeHere, projectHere, removeActions, TAKE_BACK } from './project-command.ts';
import { sayAmount } from './shopping-list.ts';
import { asksOnce, type JobAsk, listAsks, OF_PLACES, savedTearouts } from './shopping-needs.ts';

type Place = { readonly room: string } | 'together' | 'not given';

/** `call` is set where this isn't a job for the user. */
interface ReadLine {
  readonly place: Place;
  readonly text: string;
  /** In square ticks, where there is an area. */
  readonly area?: number;
  readonly call?: { readonly why: string; readonly who: string };
  readonly cautions: readonly Caution[];
  /** The number of the saved answer whose room is missing. */
  readonly unplaced?: number;
}

/** Computes every saved answer afresh; tear-outs come first. */
async function keptFindings(project: Project, context: Context): Promise<readonly ReadLine[]> {
  const ask = await asksOnce(project, context);
  const given: ReadLine[] = [];
  for (const one of savedTearouts(project, context)) {
    const { outcome, line } = await ask(one.line);
    given.push(...('headline' in outcome ? comesOut(outcome, line, one, project, context) : [unsaid(outcome, one)]));
  }
  for (const one of listAsks(project, context).asks.filter(({ name }) => OF_PLACES.includes(name))) {
    const { outcome } = await ask(one.line);
    const [room, ...more] = one.rooms;
    const no = project.kept.findIndex(({ id }) => id === one.saved) + 1;
    const placed = room !== undefined && more.length === 0;
    given.push({
      ...('headline' in outcome
        ? sentenceOf(outcome, foundIn(one, context), context.preferences)
        : unsaid(outcome, one)),
      place: placed ? { room } : 'not given',
      ...(!placed && { unplaced: no }),
    });
  }
  return given;
}

/** One line per room, and one for all of them together. */
function comesOut(
  reply: Reply,
  line: string,
  { rooms }: JobAsk,
  { rooms: all }: Project,
  context: Context,
): readonly ReadLine[] {
  const { preferences } = context;
  const { area, kilograms, rooms: areas } = reply.data as TearoutResult;
  const shapes = context.parse(line)?.optionTexts.get('room') ?? '';
  const roomOf = roomOfArea(shapes, { option: 'room', preferences, note: () => undefined });
  const byRoom = all
    .filter(({ name }) => rooms.includes(name))
    .map(({ name }) => ({
      name,
      area: areas
        .filter((one) => sameName(roomOf.get(one.name) ?? one.name, name))
        .reduce((sum, one) => sum + one.area, 0),
    }));
  const whole = FOUND.tearout(sayArea(square(area), preferences), sayWeight(kilograms, preferences));
  const takes = takenBy(reply, preferences);
  const { cautions } = reply;
  const [only, ...more] = byRoom;
  if (only && more.length === 0) return [{ place: { room: only.name }, text: `${whole}${takes}`, area, cautions }];
  const said = sayAreasOfSum(
    byRoom.map((one) => square(one.area)),
    preferences,
  );
  return [
    ...byRoom.map((one, i) => ({
      place: { room: one.name },
      text: FOUND.tearoutHere(said[i] ?? ''),
      area: one.area,
      cautions: [],
    })),
    { place: 'together', text: `${FOUND.tearoutOf(rooms)}${whole}${takes}`, area, cautions },
  ];
}

function square(area: number): Area {
  return BigInt(Math.round(area));
}

/** The figures of a saved answer are never shown in place of one that can't be computed now. */
function unsaid(outcome: Exclude<Outcome, Reply>, { name, rooms }: JobAsk): ReadLine {
  const [room, ...more] = rooms;
  const place: Place = room === undefined ? 'not given' : more.length > 0 ? 'together' : { room };
  if (!('why' in outcome)) return { place, text: FOUND.unanswered(name, outcome.problems[0].expected), cautions: [] };
  return {
    place,
    text: FOUND.refused(name),
    call: { why: outcome.why, who: outcome.call },
    cautions: outcome.cautions,
  };
}

function foundIn({ line }: JobAsk, { parse }: Context): string | undefined {
  return parse(line)?.optionTexts.get('found');
}

function sentenceOf(reply: Reply, found: string | undefined, preferences: Preferences): Omit<ReadLine, 'place'> {
  const beside = found === undefined || found === 'none' ? '' : FOUND.beside(found);
  return {
    text: `${dataSentence(reply, preferences)}${beside}${takenBy(reply, preferences)}`,
    cautions: reply.cautions,
  };
}

function takenBy({ needs = [] }: Reply, preferences: Preferences): string {
  const things = mergeNeeds(needs).map(
    (line) => `${line.label} ${sayAmount(line, line.count ?? line.amount, preferences)}`,
  );
  return things.length > 0 ? FOUND.takes(things) : '';
}

type Known = PatchResult | LevelResult | SqueaksResult | MoistureResult;

function dataSentence({ data, headline }: Reply, preferences: Preferences): string {
  const known = data as Known;
  if (known.kind === 'patch') {
    const [[x0 = 0, y0 = 0] = [], , [x1 = 0, y1 = 0] = []] = known.cut;
    const area = BigInt(x1 - x0) * BigInt(y1 - y0);
    return FOUND.patch(
      sayCut(ticks(x1 - x0), preferences),
      sayCut(ticks(y1 - y0), preferences),
      sayArea(area, preferences),
    );
  }
  if (known.kind === 'level') return known.flat ? FOUND.flat : FOUND.notFlat(headline);
  if (known.kind === 'squeaks') return FOUND.squeaks(known.screws, sayCut(ticks(known.length), preferences));
  return FOUND.moisture(headline);
}

interface FoundAsk {
  readonly do: string;
}

const ADDING =
  /^(?:add )?(?:a |i |we |also |just )*(?:found|find|finding|discovered|add|there(?:'s|’s| is| are))(?![\p{L}\d])/iu;

async function answerFound(ask: FoundAsk, context: Context): Promise<Outcome> {
  const project = await projectHere(context);
  if ('problems' in project) return project;
  const permission = readListAction(ask.do, ADDING);
  const { found } = project;
  if (permission.do === 'show') return replyOf('', project, context);
  if (permission.do === 'remove') {
    const finding = found[permission.place - 1];
    if (!finding) {
      return { problems: [noSuchPlace(ask.do, found.length, found.length > 0 ? `remove ${found.length}` : 'list')] };
    }
    const done = await changeHere(context, 'note', (now) => {
      const at = now.found.findIndex((one) => one.text === finding.text && one.at === finding.at);
      if (at < 0) return { result: undefined };
      const said = FOUND.saidRemoved(finding.text).slice(0, LIMITS.note);
      return { parts: { found: removeFinding(now.found, at) }, said, result: undefined };
    });
    return 'problems' in done ? done : replyOf(FOUND.removed(finding.text), done.project, context);
  }
  // There's nothing to search here, so a search is read as something they found.
  const text = permission.do === 'search' ? permission.words : permission.text;
  if (text === '') return { problems: [FOUND_PROBLEMS.empty()] };
  if (text.length > LONGEST_FINDING) {
    const fix = text.slice(0, LONGEST_FINDING / 2).replace(/[\uD800-\uDBFF]$/, '');
    return { problems: [FOUND_PROBLEMS.long(text, LONGEST_FINDING, `found ${fix}`)] };
  }
  if (found.length >= MOST_FOUND) return { problems: [tooMany('findings', MOST_FOUND, 'remove 1')] };
  const names = project.rooms.map(({ name }) => name);
  const findings = findingsApart(text, names).map((one) => {
    const { room } = readFinding(one, names, readingOf(context));
    return { text: one, ...(room !== undefined && { room }), at: context.now() };
  });
  const done = await changeHere(context, 'note', (now) =>
    now.found.length + findings.length > MOST_FOUND
      ? { result: undefined }
      : {
          parts: { found: findings.reduce(addFinding, now.found) },
          said: FOUND.said(text).slice(0, LIMITS.note),
          result: undefined,
        },
  );
  return 'problems' in done ? done : replyOf(FOUND.added(text), done.project, context);
}

function readingOf({ preferences }: Context) {
  return { option: 'do', preferences, note: () => undefined };
}

async function replyOf(said: string, project: Project, context: Context): Promise<Outcome> {
  const all: readonly ReadLine[] = [...parsedFindings(project, context), ...(await keptFindings(project, context))];
  const rooms = project.rooms.map(({ name }) => name);
  const places = [...rooms, FOUND.together, FOUND.gone, FOUND.elsewhere];
  const at = (place: string) => all.filter((one) => titleOf(one.place, rooms) === place);
  const known = places.filter((place) => at(place).length > 0);
  const calls = callsOf(all, rooms);
  const unplaced = all.flatMap((one) => one.unplaced ?? []);
  const blocks: Block[] = [
    ...(calls.length > 0 ? [{ kind: 'checklist', title: FOUND.callTitle, items: calls } as const] : []),
    ...known.map((place): Block => ({ kind: 'steps', title: place, steps: at(place).map(({ text }) => text) })),
    ...unplaced.map((no): Block => ({ kind: 'text', text: FOUND.whichRoom(no, rooms[0] ?? 'bedroom') })),
    ...(all.length > 0 ? [{ kind: 'checklist', title: FOUND.proofTitle, items: FOUND.proof } as const] : []),
  ];
  return reply({
    headline: [said, FOUND.headline(all.length, known.length, calls.length)].filter((line) => line !== '').join(' '),
    blocks,
    assumed: context.assumed,
    cautions: cautionsOf(all),
    actions: [...(said === '' ? [] : [TAKE_BACK]), ...removeActions(project.found.length, 'found', FOUND.remove)],
    data: {
      kind: 'found',
      findings: all.map(({ place, text, area, call }) => ({
        ...(typeof place === 'object' ? { room: place.room } : { place }),
        text,
        ...(area !== undefined && { area }),
        ...(call && { call }),
      })),
    } as { readonly kind: 'found' },
  });
}

/** A room that has been removed no longer gets its name, but what was found there stays. */
function titleOf(place: Place, rooms: readonly string[]): string {
  if (place === 'together') return FOUND.together;
  if (place === 'not given') return FOUND.elsewhere;
  return rooms.find((name) => sameName(name, place.room)) ?? FOUND.gone;
}

function callsOf(all: readonly ReadLine[], rooms: readonly string[]): readonly string[] {
  return [
    ...new Set(all.flatMap(({ call, place }) => (call ? [FOUND.call(titleOf(place, rooms), call.why, call.who)] : []))),
  ];
}

/** Of a room that has been removed, only who to call. */
export async function findingsOf(
  project: Project,
  context: Context,
): Promise<{
  readonly given: readonly string[];
  readonly calls: readonly string[];
  readonly cautions: readonly Caution[];
}> {
  const all: readonly ReadLine[] = [...parsedFindings(project, context), ...(await keptFindings(project, context))];
  const rooms = project.rooms.map(({ name }) => name);
  const given = all.flatMap(({ place, text }) => {
    const title = titleOf(place, rooms);
    if (title === FOUND.gone) return [];
    return [(typeof place === 'object' ? `${title}: ${text}` : text).replace(/\.$/, '')];
  });
  return { given, calls: callsOf(all, rooms), cautions: cautionsOf(all) };
}

/** Adds who to call where it's unsafe, or where the mold is extensive. */
function parsedFindings({ found, rooms }: Project, context: Context): readonly ReadLine[] {
  const zone = hostZone();
  const names = rooms.map(({ name }) => name);
  return found.map(({ text, room, at }, i) => {
    const { area, found: unsafe } = readFinding(text, names, readingOf(context));
    // Without a size, the mold may be of any size.
    const muchMould =
      unsafe.mould && (area === undefined || area >= BigInt(MOULD_AREA.value) * SQUARE_TICKS_PER_SQUARE_FOOT);
    const hazards = [...unsafe.hazards, ...(muchMould ? ['mould'] : []), ...(unsafe.rot ? ['panel'] : [])];
    const { why, call } = hazards.length > 0 ? referral(hazards) : { why: '', call: '' };
    const said = area === undefined ? undefined : sayArea(area, context.preferences);
    return {
      place: room === undefined ? 'not given' : { room },
      text: FOUND.given(i + 1, sayDay(at, zone), text.replace(/(?<![.\s])[.\s]+$/, ''), said),
      ...(area !== undefined && { area: Number(area) }),
      ...(hazards.length > 0 && { call: { why, who: call } }),
      cautions: [],
    };
  });
}

/** The cautions of the answers, plus those for opening things up; each once. */
function cautionsOf(all: readonly ReadLine[]): readonly Caution[] {
  const own = all.length > 0 ? worded([...cautionsFor('subfloor'), ...cautionsFor('leak')]) : [];
  return [...new Map([...all.flatMap(({ cautions }) => cautions), ...own].map((one) => [one.topic, one])).values()];
}

export default defineCommand({
  group: 'project',
  name: 'found',
  summary: 'What you found, room by room, and what it takes, to show an insurer or a contractor',
  phrases: [
    'found rot under the carpet by the slider',
    "pulled up the pad and there's old tile under it",
    "there's water under the vinyl in the kitchen",
    "the subfloor's black along the outside wall",
    'tore out carpet and found hardwood underneath',
    'we hit something, looks like nine inch tiles with black glue',
    'joist is cracked under the hall',
    'discovered mold on the tack strip, about 2 feet long',
    "there's a hole somebody patched with a cookie sheet, no joke",
    'lifted the lino and the boards below are wet',
    'came across a live wire stapled on top of the subfloor',
    "under the carpet it's two layers of particleboard and the bottom one is swollen",
    'found ants coming out of the plywood near the door',
    "the floor's cracked right across the slab, wide as a nickel",
    'uh oh there is sewage smell when i pulled the toilet',
    'something white and powdery on the concrete',
    "turns out the bathroom floor's rotten around the flange, 14 inches or so",
    'just found old newspaper and black sticky paper under the linoleum, 1950s house',
    'termite tunnels in the closet corner',
    'copper pipe runs right under the floor where i wanted to screw',
    "there's a soft spot i didn't know about by the tub",
    'found a dip when the carpet came off, the whole corner is low',
    "joist end's mushy",
    "there's a leak, pad is soaked under the window",
    "i uncovered a floor vent that's been carpeted over",
    'opened up the floor and the joist has a big notch cut in it',
    'found dry rot in the floorboards, back bedroom',
    'mouse nest and droppings all along the baseboard',
    "pulled the baseboard and the drywall's wet behind it",
    "ripped up the carpet and there's asbestos looking tile, what now",
    'old stain about 3 ft across, feels dry',
    'what do i do about this rusty pipe i found under the panel',
    'surprise, no subfloor in the closet, just boards with gaps',
    'found a crack in the beam under the living room',
    'cat pee went all the way to the osb',
    "nails sticking up everywhere and one panel's loose, found in the hall",
    "we've got water coming up through the slab joint",
    'underneath is gypsum stuff that crumbles when i step on it',
    "there's fuzzy grey insulation looking backing on the old vinyl",
    'the tear out turned up a rotten sill by the back door',
  ],
  options: z.object({
    do: text(
      {
        summary: 'What you found, its size and room: “soft spot 2x3 ft bedroom by window”; list; remove 2',
        example: 'found soft spot 2 x 3 ft bedroom by window',
        standard: 'list',
        colons: 'any',
      },
      (typed) => read(typed.trim()),
    ),
  }),
  examples: [
    { ask: 'project found', headline: 'No findings saved yet.' },
    {
      ask: 'project found soft spot 2 x 3 ft bedroom by window',
      headline: 'Saved: soft spot 2 x 3 ft bedroom by window. 1 finding in 1 place.',
    },
  ],
  run: (options, context) => answerFound(options, context),
});
