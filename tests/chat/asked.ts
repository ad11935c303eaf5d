/** Asks put through the whole pipeline for a test, with what comes back. */

import { commands } from '../../commands/all.ts';
import type { FloorResult } from '../../commands/floor/lay.ts';
import type { Asker } from '../../src/accounts/records.ts';
import type { Command, Problems } from '../../src/chat/command.ts';
import { type Answer, answer } from '../../src/chat/pipeline.ts';
import type { Ports, Request } from '../../src/chat/ports.ts';
import { DEFAULT_PREFERENCES, type Preferences } from '../../src/input/reading.ts';
import type { Problem, Reply, Result } from '../../src/reply/reply.ts';

/** Who asks, and of which commands, where it is not the usual. */
export interface AnsweredRequest {
  readonly commands?: readonly Command[];
  readonly preferences?: Partial<Preferences>;
  readonly fault?: (reference: string, cause: unknown) => void;
  readonly asker?: Asker;
  /** A store and a clock, where the test has them. */
  readonly ports?: Partial<Ports>;
  readonly written?: 'line' | 'message';
  /** The values of a form. */
  readonly given?: Request['given'];
  /** The answer whose “That’s wrong” was pressed. */
  readonly mistaken?: Request['mistaken'];
}

export const ASKER: Asker = { platform: 'terminal', id: 'test' };

/** Every answer to a line, in order. A fault throws with its cause, unless the test takes it. */
export async function answersTo(text: string, requested: AnsweredRequest = {}): Promise<readonly Answer[]> {
  const given = (reference: string, cause: unknown): never => {
    throw new Error(`fault ${reference} at “${text}”`, { cause });
  };
  const request = {
    asker: requested.asker ?? ASKER,
    preferences: { ...DEFAULT_PREFERENCES, ...requested.preferences },
    text,
    ...(requested.written && { written: requested.written }),
    ...(requested.given && { given: requested.given }),
    ...(requested.mistaken && { mistaken: requested.mistaken }),
  } as const;
  const answers: Answer[] = [];
  const ports = { ...requested.ports, fault: requested.fault ?? given };
  for await (const one of answer(request, requested.commands ?? commands, ports)) answers.push(one);
  return answers;
}

/** The answer that stands. */
export async function answerTo(text: string, requested: AnsweredRequest = {}): Promise<Answer> {
  const last = (await answersTo(text, requested)).at(-1);
  if (!last) throw new Error(`no answer to “${text}”`);
  return last;
}

/** The reply to a line; throws where problems, a refusal or a fault came instead. */
export async function replyTo(text: string, requested: AnsweredRequest = {}): Promise<Reply> {
  const last = await answerTo(text, requested);
  if (!('headline' in last)) throw new Error(`no reply to “${text}” but ${JSON.stringify(last)}`);
  return last;
}

/** The floor of a reply to planks. */
export async function floorTo(text: string, requested: AnsweredRequest = {}): Promise<FloorResult> {
  const { data } = await replyTo(text, requested);
  if (!isFloor(data)) throw new Error(`no floor for “${text}” but ${data.kind}`);
  return data;
}

/** The problems of an answer; none where there was an answer. */
export function problemsOf(given: Answer): readonly Problem[] {
  return hasProblems(given) ? given.problems : [];
}

/** The floor of the first answer to planks: later ones tell the same floor with more beside it. */
export async function firstFloorTo(text: string): Promise<FloorResult> {
  const fault = (reference: string, cause: unknown): never => {
    throw new Error(`fault ${reference} at “${text}”`, { cause });
  };
  const request = { asker: { platform: 'terminal', id: 'test' }, preferences: DEFAULT_PREFERENCES, text } as const;
  for await (const first of answer(request, commands, { fault })) {
    if ('data' in first && isFloor(first.data)) return first.data;
    throw new Error(`no floor for “${text}” but ${JSON.stringify(first)}`);
  }
  throw new Error(`no answer to “${text}”`);
}

function hasProblems(given: Answer): given is Problems {
  return 'problems' in given;
}

function isFloor(data: Result): data is FloorResult {
  return data.kind === 'floor';
}
