/** The whole Discord bot on the loopback: the real client, the real pipeline, and waits that the test decides. */

import type { APIInteraction } from 'discord.js';
import { commands } from '../../commands/all.ts';
import type { Command } from '../../src/chat/command.ts';
import { type Answer, answer } from '../../src/chat/pipeline.ts';
import type { Ports, Request } from '../../src/chat/ports.ts';
import { suggestRead } from '../../src/chat/suggest.ts';
import { makeFile } from '../../src/documents/make.ts';
import { toPng } from '../../src/drawing/png.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { type DiscordSettings, type Running, startDiscord } from '../../src/platforms/discord/start.ts';
import { preferencesIn } from '../../src/platforms/discord/types.ts';
import type { KeyValueStore } from '../../src/storage/types.ts';
import { keptInMemory } from '../chat/kept-in-memory.ts';
import { discordLoopback, type Loopback } from './loopback.ts';
import type { Captured } from './loopback-rest.ts';

export interface Stage {
  readonly discord: Loopback;
  readonly running: Running;
  /** Causes of faults told to whoever runs the bot. */
  readonly faults: readonly unknown[];
  /** Sends an interaction and gives the first response to it. */
  ask(interaction: APIInteraction): Promise<Captured>;
  /** The next edit of, or message after, the first response. */
  after(interaction: APIInteraction, kind: 'edit' | 'follow-up'): Promise<Captured>;
  close(): Promise<void>;
}

export interface Staged {
  readonly commands?: readonly Command[];
  readonly kept?: KeyValueStore;
  /** Whether people use it for the first time. */
  readonly strangers?: boolean;
  /** What the pipeline has besides the port of faults. */
  readonly ports?: Partial<Ports>;
  /** Whether a wait of so many milliseconds is over at once; else it never is. */
  over?(milliseconds: number): boolean;
  answer?(request: Request): AsyncIterable<Answer>;
  readonly settings?: Partial<DiscordSettings>;
  readonly toPng?: typeof toPng;
  readonly makeFile?: typeof makeFile;
}

/** Starts the bot by the gateway, unless the settings say otherwise. */
export async function stage(staged: Staged = {}): Promise<Stage> {
  const discord = await discordLoopback();
  const faults: unknown[] = [];
  const memory = staged.kept ?? keptInMemory();
  // Nobody is new, so that no greeting follows their first answer.
  const claim: KeyValueStore['claim'] = async (key, milliseconds) =>
    !(key.startsWith('greeted:') && !staged.strangers) && memory.claim(key, milliseconds);
  const list = staged.commands ?? commands;
  const fault = (_reference: string, cause: unknown): void => {
    faults.push(cause);
  };
  const settings = { token: 'secret-token', api: discord.api, ...staged.settings };
  const running = await startDiscord(settings, {
    answer: staged.answer ?? ((request) => answer(request, list, { fault, ...staged.ports })),
    commands: list,
    preferences: DEFAULT_PREFERENCES,
    kept: { ...memory, claim },
    fault,
    // A narrow picture is a picture; how one looks at its full width is tested where it is drawn.
    toPng: staged.toPng ?? ((drawing) => toPng(drawing, 225)),
    makeFile: staged.makeFile ?? makeFile,
    wait: (milliseconds) => ({
      over: staged.over?.(milliseconds) ? Promise.resolve() : new Promise<void>(() => {}),
      cancel: () => {},
    }),
    suggest: ({ asker, locale }, command, option, typed) =>
      suggestRead(
        asker,
        { command, option, commands: list, preferences: preferencesIn(locale, DEFAULT_PREFERENCES) },
        typed,
        {
          fault,
          ...staged.ports,
        },
      ),
  });
  if (staged.settings?.publicKey === undefined) await discord.connected(1);
  const after = (interaction: APIInteraction, kind: Captured['kind']) =>
    discord.next((one) => one.token === interaction.token && one.kind === kind);
  return {
    discord,
    running,
    faults,
    ask: (interaction) => {
      discord.dispatch(interaction);
      return after(interaction, 'callback');
    },
    after,
    close: async () => {
      await running.close();
      await discord.close();
    },
  };
}
