/** One project on Slack and Discord at once: changed and undone from both under load, nothing lost, and a helper sees what either did. */

import { afterEach, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { openAccess } from '../../src/accounts/project-access.ts';
import { answer } from '../../src/chat/pipeline.ts';
import type { Project } from '../../src/project/project.ts';
import { demoPorts } from '../chat/demo-flat.ts';
import { slash } from '../discord/interactions.ts';
import { field, textOf } from '../discord/json-field.ts';
import { type Stage, stage } from '../discord/stage.ts';
import { type Running, running, wordsOf } from '../slack/running.ts';

const SLACK = { platform: 'slack', id: 'U1', workspace: 'T1' } as const;
const DISCORD = { platform: 'discord', id: '100000000000000001' } as const;
const HELPER = 'U02BOBBOB1';
const EACH = 8;
const PLANKS = `planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`;

let app: Running;
let bot: Stage;

afterEach(async () => {
  await app.close();
  await bot.close();
});

it('is one project, whoever changes it from where', { timeout: 120_000 }, async () => {
  const faults: unknown[] = [];
  const ports = await demoPorts(SLACK, (_reference, cause) => faults.push(cause));
  const accessOf = (asker: typeof SLACK | typeof DISCORD) => {
    const access = openAccess(asker, ports);
    if (!access) throw new Error('nobody');
    return access;
  };
  const { code } = await accessOf(SLACK).links().make();
  expect((await accessOf(DISCORD).links().take(code)).ok).toBe(true);
  app = await running({
    ports: { answer: (request) => answer(request, commands, ports), holds: async () => true, kept: ports.store.kept },
  });
  bot = await stage({ ports, kept: ports.store.kept });
  const now = async (): Promise<Project> => {
    const project = await accessOf(SLACK).inUse();
    if (!project) throw new Error('no project');
    return project;
  };
  const onSlack = (text: string, who = 'U1') => app.slash(text, { user_id: who });
  const onDiscord = async (text: string): Promise<string> => {
    const asked = slash('ask', { question: text });
    const { body } = await bot.ask(asked);
    return textOf(field(body, 'type') === 5 ? (await bot.after(asked, 'edit')).body : field(body, 'data'));
  };
  const answeredOnSlack = (count: number) => app.slack.until(() => app.slack.responded.length >= count);

  // Whoever helps is told so once, on the chat where they are.
  await onSlack(`project share shopping list with <@${HELPER}|bob>`);
  const invited = () => app.slack.calls.filter(({ args }) => args.channel === HELPER);
  await app.slack.until(() => invited().length === 1 && app.slack.responded.length === 1);

  const before = await now();
  const leftFor = async (): Promise<string> => {
    const seen = app.slack.responded.length;
    await onSlack('project shopping', HELPER);
    await answeredOnSlack(seen + 1);
    return wordsOf(app.slack.responded.at(-1)?.body);
  };
  const cartons = /(\d+) cartons of 10/;
  const needed = Number(cartons.exec(await leftFor())?.[1]);
  let answers = app.slack.responded.length;
  const bought = await Promise.all(
    Array.from({ length: EACH }, (_, i) => [
      onSlack('project shopping bought 1 carton'),
      onDiscord('project shopping bought 1 carton'),
      // Others ask meanwhile.
      onSlack(PLANKS, `U9${i}`),
    ]).flat(),
  );
  answers += 2 * EACH;
  await answeredOnSlack(answers);
  expect(bought.filter((one) => typeof one === 'string' && one.includes('Bought')).length).toBe(EACH);
  const half = await now();
  expect(half.count - before.count).toBe(2 * EACH);
  expect(half.shopping.bought).toHaveLength(2 * EACH);
  // The helper reads what either of them bought.
  expect(Number(cartons.exec(await leftFor())?.[1])).toBe(needed - 2 * EACH);

  answers = app.slack.responded.length;
  await Promise.all(
    Array.from({ length: EACH / 2 }, () => [onSlack('project undo'), onDiscord('project undo')]).flat(),
  );
  await answeredOnSlack(answers + EACH / 2);
  expect((await now()).shopping.bought).toHaveLength(EACH);
  expect(Number(cartons.exec(await leftFor())?.[1])).toBe(needed - EACH);
  expect(invited()).toHaveLength(1);
  expect([...faults, ...app.faults, ...bot.faults]).toEqual([]);
});
