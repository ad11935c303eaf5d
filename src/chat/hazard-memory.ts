/** Hazards that are remembered: with a room of the open project, or else with the conversation for an hour after its last message. */

import { z } from 'zod';
import type { ProjectAccess } from '../accounts/account-access.ts';
import { accountKey } from '../accounts/records.ts';
import type { Cleared, Hazard, Sighting } from '../hazards/hazard.ts';
import { roomNamedIn } from '../input/parse-place.ts';
import { type KeptHazard, keptHazardSchema, withHazards, withoutHazards } from '../project/findings.ts';
import type { Project } from '../project/project.ts';
import { sameName } from '../project/project-room.ts';
import { type KeyValueStore, Outage } from '../storage/types.ts';
import type { Ports, Request } from './ports.ts';
import { faultReference } from './request-id.ts';

const AN_HOUR = 3600 * 1000;
/** Limits the hazards of a conversation, and the conversations of an account listed for deletion. */
const MOST = 20;
const MOST_PLACES = 50;

const conversationSchema = z.array(keptHazardSchema).max(MOST);

/** Hazards mentioned earlier that later requests must respect. */
export interface HazardsBefore {
  readonly conversation: readonly KeptHazard[];
  readonly project: readonly KeptHazard[];
}

const NONE_BEFORE: HazardsBefore = { conversation: [], project: [] };

/** Empty without a store or if it doesn't respond. Never throws. */
export async function hazardsBefore(
  request: Request,
  project: Project | undefined,
  ports: Ports,
): Promise<HazardsBefore> {
  const { store } = ports;
  // Someone else's message isn't part of this conversation.
  if (!store || request.written === 'message') return NONE_BEFORE;
  const conversation = await quietly(() => conversationOf(store.kept, request), ports);
  return { conversation: conversation ?? [], project: project?.hazards ?? [] };
}

/**
 * The remembered hazards that affect a request about these rooms: the conversation's and the rooms'; all of them if it
 * names no room.
 */
export function bearingOn(
  { conversation, project }: HazardsBefore,
  text: string,
  rooms: readonly string[],
): readonly KeptHazard[] {
  const named = rooms.filter((room) => roomNamedIn(text, [room]) !== undefined);
  const ofRooms = project.filter(
    ({ room }) => room === undefined || named.length === 0 || named.some((one) => sameName(one, room)),
  );
  return [...conversation, ...ofRooms];
}

/** What is left after the facts in a message. */
export function cleared(before: HazardsBefore, facts: readonly Cleared[]): HazardsBefore {
  const ended = endedBy(
    facts,
    [...before.conversation, ...before.project].map(({ hazard }) => hazard),
  );
  const left = (one: KeptHazard): boolean => !ended.includes(one.hazard);
  return { conversation: before.conversation.filter(left), project: before.project.filter(left) };
}

/** A test result that names no substance clears the one that is open. */
function endedBy(facts: readonly Cleared[], open: readonly string[]): readonly string[] {
  return facts.map(({ hazard, bare }) => (bare && !open.includes(hazard) && open.includes('lead') ? 'lead' : hazard));
}

/** Saves new hazards, removes cleared ones, and keeps the conversation for another hour. Never throws. */
export async function rememberHazards(
  request: Request,
  given: {
    readonly sightings: readonly Sighting[];
    readonly cleared: readonly Cleared[];
    readonly before: HazardsBefore;
  },
  project: Project | undefined,
  access: ProjectAccess | undefined,
  ports: Ports,
): Promise<void> {
  const { store } = ports;
  if (!store || !access || request.written === 'message') return;
  const { before } = given;
  const sightings = given.sightings.filter(({ feared }) => !feared);
  if (sightings.length === 0 && before.conversation.length === 0 && given.cleared.length === 0) return;
  const room = project && roomOf(request.text, project);
  const at = access.now();
  const fresh = sightings.map(({ hazard, level, words, about }): KeptHazard => {
    return {
      hazard,
      level,
      words: words.slice(0, 200),
      at,
      ...(about === undefined ? {} : { about }),
      ...(room === undefined ? {} : { room }),
    };
  });
  const ended = endedBy(
    given.cleared,
    [...before.conversation, ...before.project].map(({ hazard }) => hazard),
  );
  await quietly(async () => {
    let here = fresh;
    if (project && (room !== undefined || project.hazards.some(({ hazard }) => ended.includes(hazard)))) {
      const put = await access.warn((hazards) =>
        withHazards(withoutHazards(hazards, ended, room), room === undefined ? [] : fresh),
      );
      if (put && room !== undefined) here = [];
    }
    // Read again: the request itself may have deleted it.
    const now = await conversationOf(store.kept, request);
    await keepConversation(store.kept, request, withHazards(withoutHazards(now, ended, undefined), here));
  }, ports);
}

/** The room a text names, or the only one. */
function roomOf(text: string, { rooms }: Project): string | undefined {
  const names = rooms.map(({ name }) => name);
  return roomNamedIn(text, names) ?? (names.length === 1 ? names[0] : undefined);
}

/** Throws Outage. */
export async function forgetHazards(kept: KeyValueStore, account: string): Promise<void> {
  for (const place of await placesOf(kept, account)) await kept.delete(key(account, place));
  await kept.delete(`hazards-of:${account}`);
}

async function conversationOf(kept: KeyValueStore, request: Request): Promise<readonly KeptHazard[]> {
  const raw = await kept.get(key(accountKey(request.asker), request.place ?? ''));
  const read = conversationSchema.safeParse(raw);
  return read.success ? read.data : [];
}

async function keepConversation(kept: KeyValueStore, request: Request, hazards: readonly KeptHazard[]): Promise<void> {
  const [account, place] = [accountKey(request.asker), request.place ?? ''];
  if (hazards.length === 0) {
    await kept.delete(key(account, place));
    return;
  }
  await kept.set(key(account, place), hazards.slice(-MOST), AN_HOUR);
  const places = await placesOf(kept, account);
  const others = places.filter((one) => one !== place);
  await kept.set(`hazards-of:${account}`, JSON.stringify([...others, place].slice(-MOST_PLACES)), AN_HOUR);
}

async function placesOf(kept: KeyValueStore, account: string): Promise<readonly string[]> {
  const raw = await kept.get(`hazards-of:${account}`);
  const read = z.array(z.string()).safeParse(typeof raw === 'string' ? JSON.parse(raw) : []);
  return read.success ? read.data : [];
}

function key(account: string, place: string): string {
  return `hazards:${account}:${place}`;
}

async function quietly<T>(permission: () => Promise<T>, ports: Ports): Promise<T | undefined> {
  try {
    return await permission();
  } catch (cause) {
    if (!(cause instanceof Outage)) ports.fault(faultReference(), cause);
    return undefined;
  }
}

export function asSighting({ hazard, level, words, about }: KeptHazard): Sighting {
  return { hazard: hazard as Hazard, level, words, language: 'en', ...(about === undefined ? {} : { about }) };
}
