/** What Slack is handed by main, and what a listener knows of who asked where. */

import type { webApi } from '@slack/bolt';
import type { Asker } from '../../accounts/records.ts';
import type { Command } from '../../chat/command.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Request } from '../../chat/ports.ts';
import type { Drawing } from '../../reply/drawing.ts';
import type { FileForm, Result } from '../../reply/reply.ts';
import type { KeyValueStore } from '../../storage/types.ts';
import type { MissedAnswers, Saves } from '../session.ts';

export interface SlackPorts {
  readonly answer: (request: Request) => AsyncIterable<Answer>;
  readonly commands: readonly Command[];
  readonly preferences: Request['preferences'];
  readonly kept: KeyValueStore;
  /** Whether other processes share the store, and so may be sent the same deed. */
  readonly shared: boolean;
  /** Whether an id has not been seen by this process. */
  isFresh(id: string): boolean;
  /** Takes work that nobody waits for, and sees that it is done before the end. */
  later(work: Promise<unknown>): void;
  /** Those whose deeds are acted on at this moment. */
  readonly acting: Set<Party>;
  readonly saves: Saves;
  readonly missed: MissedAnswers;
  /** Whether the asker has a project in use, whose rooms and picks fill what is not told. */
  holds(asker: Asker): Promise<boolean>;
  /** A client for files beside one for messages: neither waits for the other. */
  uploads(client: webApi.WebClient): webApi.WebClient;
  /** Base address of our own pages, without a trailing slash; undefined where it is not known. */
  address?(): string | undefined;
  fault(reference: string, cause: unknown): void;
  toPng(drawing: Drawing): Promise<Buffer>;
  /** Makes a file of an answer's data; without it the answer says that there is none. */
  makeFile?(data: Result, as: FileForm): Promise<Buffer>;
  /** Resolves when an answer has been waited for long enough without a word. */
  patience(): Promise<void>;
  /** Lets time go by: Slack says how long it takes no more of something. */
  wait(milliseconds: number): Promise<void>;
  /** Milliseconds since 1970. */
  now(): number;
}

/** What main hands in; the rest is made at the start. */
export type SlackParts = Omit<SlackPorts, 'isFresh' | 'later' | 'saves' | 'missed' | 'acting' | 'uploads'>;

/** Whoever did something in Slack, with what is needed to answer. */
export interface Party {
  readonly asker: Asker;
  readonly client: webApi.WebClient;
  /** Our own user id there. */
  readonly bot?: string | undefined;
  readonly where: Where;
}

/** Where an answer goes: to the asker alone, or to everybody who reads the thread. */
export interface Where {
  readonly user: string;
  readonly channel?: string | undefined;
  readonly thread?: string | undefined;
  /** Whether it was asked where everybody in the channel reads it, and so is answered there. */
  readonly open?: boolean | undefined;
  /** The message whose button was pressed. */
  readonly pressed?: { readonly ts?: string | undefined } | undefined;
  readonly response?: ResponseUrl | undefined;
}

/** Slack's way to answer one interaction: a few times, for half an hour, each time with a new message. */
export interface ResponseUrl {
  readonly url: string;
  readonly since: number;
  /** How often it was used. */
  readonly used: number;
}
