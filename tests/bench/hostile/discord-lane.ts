/** Discord's raw bodies, signed and taken by the bot's own handler; its way out is a REST client that reaches nobody. */

import { generateKeyPairSync, sign } from 'node:crypto';
import { type APIInteraction, REST } from 'discord.js';
import type { Command } from '../../../src/chat/command.ts';
import { parseLine } from '../../../src/chat/grammar.ts';
import { freshIds } from '../../../src/chat/rate-limit.ts';
import { fullName } from '../../../src/input/command-shape.ts';
import { receive } from '../../../src/platforms/discord/receive.ts';
import { handleHttp } from '../../../src/platforms/discord/start.ts';
import {
  channelLimit,
  type DiscordContext,
  menuEntries,
  waitOnClock,
  wireOf,
} from '../../../src/platforms/discord/types.ts';
import { missedAnswers, savesUnderway } from '../../../src/platforms/session.ts';
import { fill, menu, pick, press, slash, typing } from '../../discord/interactions.ts';
import { bent, type Draw, damaged } from './bend.ts';
import type { Lane, LaneParts } from './lane.ts';

/** Buttons of answers that were sent lately, to be pressed. */
const PRESSABLE = 200;

export function discordLane(parts: LaneParts): Lane {
  const { publicKey, privateKey } = generateKeyPairSync('ed25519');
  const hex = publicKey.export({ type: 'spki', format: 'der' }).subarray(-32).toString('hex');
  const buttons: string[] = [];
  const rest = new REST({
    version: '10',
    makeRequest: async (_, init) => {
      if (typeof init.body === 'string') note(init.body, buttons);
      else if (init.body instanceof FormData) note(String(init.body.get('payload_json')), buttons);
      return Response.json({ id: '1', resource: { message: { id: '1', attachments: [] } } });
    },
  }).setToken('token');
  const access: DiscordContext = {
    ...parts,
    suggest: ({ asker }, ...sought) => parts.suggest(asker, ...sought),
    kept: parts.store.kept,
    shared: true,
    isFresh: freshIds(),
    channels: channelLimit(),
    saves: savesUnderway(),
    missed: missedAnswers(parts.store.kept),
    wire: wireOf(rest),
    entries: menuEntries(rest),
    hears: false,
    wait: waitOnClock,
  };
  return {
    name: 'discord',
    async send(line, draw) {
      const whole = Buffer.from(JSON.stringify(bodyOf(line, parts.commands, buttons, draw)));
      const body = draw.random() < 0.05 ? Buffer.from(damaged(whole, draw)) : whole;
      const stamp = String(Math.floor(Date.now() / 1000));
      const signed = sign(null, Buffer.concat([Buffer.from(stamp), body]), privateKey).toString('hex');
      const signature = draw.random() < 0.01 ? signed.replace(/^./, (c) => (c === '0' ? '1' : '0')) : signed;
      let begun: Promise<void> = Promise.resolve();
      const request = new Request('http://bot/discord/interactions', {
        method: 'POST',
        body,
        headers: { 'x-signature-ed25519': signature, 'x-signature-timestamp': stamp },
      });
      const { status } = await handleHttp(request, {
        publicKey: hex,
        now: Date.now,
        onInteraction: (interaction) => {
          begun = receive(interaction, access);
        },
      });
      await begun;
      return status;
    },
    close: async () => {},
  };
}

function note(body: string, buttons: string[]): void {
  for (const [, id = ''] of body.matchAll(/"custom_id":"([^"]{1,100})"/g)) buttons.push(id);
  if (buttons.length > PRESSABLE) buttons.splice(0, buttons.length - PRESSABLE);
}

function bodyOf(line: string, commands: readonly Command[], buttons: readonly string[], draw: Draw): unknown {
  const whole = { ...interactionOf(line, commands, buttons, draw), ...(draw.random() < 0.5 ? { guild_id: '77' } : {}) };
  return draw.random() < 0.25 ? bent(whole, draw) : whole;
}

function interactionOf(
  line: string,
  commands: readonly Command[],
  buttons: readonly string[],
  draw: Draw,
): APIInteraction {
  const parsed = parseLine(line, commands);
  const [first = commands[0]] = [commands[Math.floor(draw.random() * commands.length)]];
  const command = parsed.ok ? parsed.command : first;
  const name = command ? fullName(command) : 'tape';
  const [option = 'sum'] = Object.keys(command?.options.shape ?? {});
  const given = parsed.ok ? Object.fromEntries(parsed.optionTexts) : { [option]: line };
  const where = { user: String(100_000_000_000_000_000n + BigInt(Math.floor(draw.random() * 300))) };
  const id = buttons[Math.floor(draw.random() * buttons.length)] ?? 'ask:0:0';
  const way = draw.random();
  if (way < 0.5) return slash(name, given, where);
  if (way < 0.65) return menu(line, where);
  if (way < 0.75) return press(id, where);
  if (way < 0.8) return pick(id, ['0', line.slice(0, 100)], where);
  if (way < 0.9) return fill(`form::${name}`, given, where);
  return typing(name, option, line.slice(0, 100));
}
