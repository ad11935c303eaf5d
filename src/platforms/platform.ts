/** What a platform is to the server: its name, its settings, how it starts, what an answer looks like there, whose accounts are its own. */

import type { Buffer } from 'node:buffer';
import type { IncomingMessage, ServerResponse } from 'node:http';
import type { Readable, Writable } from 'node:stream';
import type { Catalog } from '../chat/catalog.ts';
import type { Command } from '../chat/command.ts';
import type { Answer } from '../chat/pipeline.ts';
import type { Ports, Request } from '../chat/ports.ts';
import type { Preferences } from '../input/reading.ts';
import type { Drawing } from '../reply/drawing.ts';
import type { Sheets } from '../reply/job-sheet.ts';
import type { FileForm, Result } from '../reply/reply.ts';
import type { Store } from '../storage/types.ts';
import type { PlatformName } from '../text/answer-text.ts';

/** Milliseconds for which what is on its way as the end begins is still answered. */
export const GOODBYE = 300;

/** What whoever runs the bot has configured of Discord; empty texts are not set. */
export interface DiscordConfig {
  readonly token: string;
  /** Set: interactions come by HTTP, signed with this key. */
  readonly publicKey: string;
  /** Where commands are registered, and the one server they are tried in. */
  readonly application: string;
  readonly guild: string;
  readonly shards?: { readonly first: number; readonly last: number; readonly of: number };
  /** Where its REST interface is, if not at its own address: a proxy that keeps many processes to one rate limit. */
  readonly api?: string;
}

/** What whoever runs the bot has told of their Slack app; empty texts are not told. */
export interface SlackSettings {
  readonly botToken: string;
  readonly appToken: string;
  readonly signingSecret: string;
  readonly clientId: string;
  readonly clientSecret: string;
  readonly stateSecret: string;
  /** Seals the tokens of workspaces in the store; several with commas, the one in use first. */
  readonly key: string;
  /** Where Slack's API is; Slack's own without it. */
  readonly api?: string;
}

/** The part of the configuration that platforms read. */
export interface PlatformConfig extends Preferences {
  readonly discord: DiscordConfig;
  readonly slack: SlackSettings;
  /** Address of the server that other processes may share; empty where this process has the store alone. */
  readonly store: string;
  /** File for the terminal's history; empty for none. */
  readonly history: string;
  /** Folder for the pictures of the terminal's answers. */
  readonly pictures: string;
}

/** A store that counts requests too. */
export interface PlatformStore extends Store {
  allowed(limits: { readonly person: number; readonly server: number }): NonNullable<Ports['allowed']>;
}

/** A person at this machine: what they type, what they see, and the words behind the program's name. */
export interface Console {
  readonly input: Readable & { readonly isTTY?: boolean };
  readonly output: Writable & { readonly columns?: number; readonly isTTY?: boolean };
  readonly words: readonly string[];
}

/** A file to hand out. */
export interface WebFile {
  readonly name: string;
  readonly type: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** A table of the sheets as a file, by the name it is asked for. */
export interface TableFile {
  readonly key: string;
  readonly label: string;
}

/** Makes files of sheets; main hands it in. */
export interface FileMaker {
  pdf(sheets: Sheets, paper: 'letter' | 'a4'): Promise<WebFile>;
  /** The lists there are, and one of them by its key. */
  tables(sheets: Sheets): readonly TableFile[];
  table(sheets: Sheets, key: string): Promise<WebFile | undefined>;
  json(sheets: Sheets): Promise<WebFile>;
}

/** What a platform is started with. */
export interface PlatformContext {
  readonly config: PlatformConfig;
  /** Commands by name, each loaded when it is needed. */
  readonly catalog: Catalog;
  /** All of them, loaded. */
  commands(): Promise<readonly Command[]>;
  readonly ports: Ports & { readonly store: PlatformStore };
  /** Puts a request through the pipeline: in its turn, and as often as its asker may. */
  answer(request: Request): AsyncIterable<Answer>;
  toPng(drawing: Drawing): Promise<Buffer>;
  makeFile(data: Result, as: FileForm): Promise<Buffer>;
  readonly files: FileMaker;
  /** Lets time go by, without holding the process. */
  wait(milliseconds: number): Promise<void>;
  /** Where somebody sits at this machine. */
  readonly console?: Console;
}

/** What the one HTTP server answers at a path; `*` at its end takes everything below. */
export interface PlatformRoute {
  readonly method: 'GET' | 'POST' | 'ALL';
  readonly path: string;
  /** `from` is the address at the other end of the connection, where it is known; `node` is for a library that answers by itself. */
  handle(request: globalThis.Request, from?: string, node?: NodeExchange): Promise<Response> | Response;
}

/** Node's own request and response. */
export interface NodeExchange {
  readonly incoming: IncomingMessage;
  readonly outgoing: ServerResponse;
  /** What a route returns that has answered by them. */
  readonly answered: Response;
}

/** A platform that was started. */
export interface RunningPlatform {
  readonly routes: readonly PlatformRoute[];
  /** Whether events reach it. */
  connected(): boolean;
  /** Takes nothing more, and resolves when what was begun is answered; missing where nothing is left open. */
  close?(): Promise<void>;
  /** Where a person ends it: the exit code, once they have. */
  readonly ended?: Promise<number>;
}

export interface Platform {
  readonly name: PlatformName;
  /** A chat runs where it is configured, the share page beside them, and the terminal where no chat is. */
  readonly runs: 'configured' | 'beside' | 'alone';
  readonly settings: {
    /** Whether anything of it is configured. */
    configured(config: PlatformConfig): boolean;
    /** What keeps it from starting, a line each; none where nothing does. */
    lacks(config: PlatformConfig): readonly string[];
  };
  /** Starts it, and only then loads what it needs. Rejects when it cannot start. */
  start(context: PlatformContext): Promise<RunningPlatform>;
  /** The answer as its messages; `id` is the short id that buttons carry. */
  render(answer: Answer, id: string): Promise<readonly unknown[]>;
  /** The keys of its accounts (`accountKey`). */
  readonly accountPattern: RegExp;
}
