/** From findings told and kept to a report room by room, with who to call where it is not the asker's to do. */

import type { Context, Outcome } from '../../../src/chat/command.ts';
import { MOULD_AREA } from '../../../src/figures/moisture-figures.ts';
import { cautionsFor } from '../../../src/figures/safety-figures.ts';
import { sayArea } from '../../../src/input/format.ts';
import { hostZone, sayDay } from '../../../src/input/moment.ts';
import { readListDeed } from '../../../src/input/parse-label.ts';
import { findingsApart, readFinding } from '../../../src/language/old/finding.ts';
import { addFinding, LONGEST_FINDING, MOST_FOUND, removeFinding } from '../../../src/project/findings.ts';
import type { Project } from '../../../src/project/project.ts';
import { LIMITS } from '../../../src/project/project-limits.ts';
import { sameName } from '../../../src/project/project-room.ts';
import type { Block, Caution } from '../../../src/reply/reply.ts';
import { worded } from '../../../src/text/caution-text.ts';
import { FOUND, FOUND_PROBLEMS, referral } from '../../../src/text/found-text.ts';
import { noSuchPlace, tooMany } from '../../../src/text/project-text.ts';
import { SQUARE_TICKS_PER_SQUARE_FOOT } from '../../../src/units/length.ts';
import { changeHere, projectHere } from './at-desk.ts';
import { keptFindings, type Place, type Told } from './found-kept.ts';
import { removeActions, TAKE_BACK } from './reply.ts';

export interface FoundAsk {
  readonly do: string;
}

const ADDING =
  /^(?:add )?(?:a |i |we |also |just )*(?:found|find|finding|discovered|add|there(?:'s|’s| is| are))(?![\p{L}\d])/iu;

export async function answerFound(ask: FoundAsk, context: Context): Promise<Outcome> {
  const project = await projectHere(context);
  if ('problems' in project) return project;
  const deed = readListDeed(ask.do, ADDING);
  const { found } = project;
  if (deed.do === 'show') return replyOf('', project, context);
  if (deed.do === 'remove') {
    const finding = found[deed.place - 1];
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
  // To search is to find: whatever is found is told.
  const text = deed.do === 'search' ? deed.words : deed.text;
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

function readingOf({ habits }: Context) {
  return { option: 'do', habits, note: () => undefined };
}

async function replyOf(said: string, project: Project, context: Context): Promise<Outcome> {
  const all: readonly Told[] = [...toldFindings(project, context), ...(await keptFindings(project, context))];
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
  return {
    headline: [said, FOUND.headline(all.length, known.length, calls.length)].filter((line) => line !== '').join(' '),
    blocks,
    assumed: context.assumed,
    cautions: cautionsOf(all),
    sources: [],
    actions: [...(said === '' ? [] : [TAKE_BACK]), ...removeActions(project.found.length, 'found', FOUND.remove)],
    audience: 'asker',
    data: {
      kind: 'found',
      findings: all.map(({ place, text, area, call }) => ({
        ...(typeof place === 'object' ? { room: place.room } : { place }),
        text,
        ...(area !== undefined && { area }),
        ...(call && { call }),
      })),
    } as { readonly kind: 'found' },
  };
}

/** The title that a place stands under: a room that was removed since is named no more, and what was found there stays. */
function titleOf(place: Place, rooms: readonly string[]): string {
  if (place === 'together') return FOUND.together;
  if (place === 'not given') return FOUND.elsewhere;
  return rooms.find((name) => sameName(name, place.room)) ?? FOUND.gone;
}

function callsOf(all: readonly Told[], rooms: readonly string[]): readonly string[] {
  return [
    ...new Set(all.flatMap(({ call, place }) => (call ? [FOUND.call(titleOf(place, rooms), call.why, call.who)] : []))),
  ];
}

/** What was found, place by place, and who to call where it is not for the asker to do; of a room that is gone, who to call alone. */
export async function findingsOf(
  project: Project,
  context: Context,
): Promise<{
  readonly told: readonly string[];
  readonly calls: readonly string[];
  readonly cautions: readonly Caution[];
}> {
  const all: readonly Told[] = [...toldFindings(project, context), ...(await keptFindings(project, context))];
  const rooms = project.rooms.map(({ name }) => name);
  const told = all.flatMap(({ place, text }) => {
    const title = titleOf(place, rooms);
    if (title === FOUND.gone) return [];
    return [(typeof place === 'object' ? `${title}: ${text}` : text).replace(/\.$/, '')];
  });
  return { told, calls: callsOf(all, rooms), cautions: cautionsOf(all) };
}

/** What was told, each with its area, and who to call where it is not safe or too much mould. */
function toldFindings({ found, rooms }: Project, context: Context): readonly Told[] {
  const zone = hostZone();
  const names = rooms.map(({ name }) => name);
  return found.map(({ text, room, at }, i) => {
    const { area, found: unsafe } = readFinding(text, names, readingOf(context));
    // Mould of a size that is not told may be any size.
    const muchMould =
      unsafe.mould && (area === undefined || area >= BigInt(MOULD_AREA.value) * SQUARE_TICKS_PER_SQUARE_FOOT);
    const hazards = [...unsafe.hazards, ...(muchMould ? ['mould'] : []), ...(unsafe.rot ? ['panel'] : [])];
    const { why, call } = hazards.length > 0 ? referral(hazards) : { why: '', call: '' };
    const said = area === undefined ? undefined : sayArea(area, context.habits);
    return {
      place: room === undefined ? 'not given' : { room },
      text: FOUND.told(i + 1, sayDay(at, zone), text.replace(/(?<![.\s])[.\s]+$/, ''), said),
      ...(area !== undefined && { area: Number(area) }),
      ...(hazards.length > 0 && { call: { why, who: call } }),
      cautions: [],
    };
  });
}

/** Those of the answers asked again, and what can hurt where something is opened up; each once. */
function cautionsOf(all: readonly Told[]): readonly Caution[] {
  const own = all.length > 0 ? worded([...cautionsFor('subfloor'), ...cautionsFor('leak')]) : [];
  return [...new Map([...all.flatMap(({ cautions }) => cautions), ...own].map((one) => [one.topic, one])).values()];
}
