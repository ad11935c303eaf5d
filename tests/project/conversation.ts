/** A conversation about a project, line by line, with a store in memory and a clock that stands until it is set. */

import { commands } from '../../commands/all.ts';
import { openAccess } from '../../src/accounts/project-access.ts';
import { type Answer, answer } from '../../src/chat/pipeline.ts';
import { DEFAULT_PREFERENCES, type Preferences } from '../../src/input/reading.ts';
import type { Content, Project } from '../../src/project/project.ts';
import type { Problem, Reply } from '../../src/reply/reply.ts';
import { ASKER, problemsOf } from '../chat/asked.ts';
import { portsInMemory } from '../chat/demo-flat.ts';
import { flatContent } from './projects.ts';

export interface Conversation {
  /** The answer that stands. */
  ask(line: string): Promise<Answer>;
  /** The reply; throws where none came. */
  reply(line: string): Promise<Reply>;
  /** The problems that came instead of a reply. */
  problem(line: string): Promise<Problem>;
  /** The project as it is kept. */
  project(): Promise<Project>;
  pass(milliseconds: number): void;
}

/** A conversation in a project of this content; without any, nothing is kept yet. */
export async function conversation(
  content: Content | 'none' = flatContent(),
  given: Partial<Preferences> = {},
): Promise<Conversation> {
  const fault = (reference: string, cause: unknown): never => {
    throw new Error(`fault ${reference}`, { cause });
  };
  const ports = portsInMemory(fault);
  const preferences = { ...DEFAULT_PREFERENCES, ...given };
  if (content !== 'none') await openAccess(ASKER, ports)?.create(content);
  const ask = async (text: string): Promise<Answer> => {
    let last: Answer | undefined;
    for await (const one of answer({ asker: ASKER, preferences, text }, commands, ports)) last = one;
    if (!last) throw new Error(`no answer to “${text}”`);
    return last;
  };
  return {
    ask,
    async reply(line) {
      const last = await ask(line);
      if (!('headline' in last)) throw new Error(`no reply to “${line}” but ${JSON.stringify(last)}`);
      return last;
    },
    async problem(line) {
      const [first] = problemsOf(await ask(line));
      if (!first) throw new Error(`no problem with “${line}”`);
      return first;
    },
    async project() {
      const project = await openAccess(ASKER, ports)?.inUse();
      if (!project) throw new Error('no project in use');
      return project;
    },
    pass(milliseconds) {
      ports.clock.now += milliseconds;
    },
  };
}

/** All that a reply says, as text. */
export function textOf({ headline, blocks, assumed, cautions }: Reply): string {
  const lines = blocks.flatMap((block): readonly string[] => {
    if (block.kind === 'text') return [block.text];
    if (block.kind === 'facts')
      return [block.title ?? '', ...block.facts.map(({ label, value }) => `  ${label}: ${value}`)];
    if (block.kind === 'table')
      return [block.title, ...[block.columns, ...block.rows].map((row) => `  ${row.join(' | ')}`)];
    if (block.kind === 'steps') return [block.title, ...block.steps.map((step) => `  ${step}`)];
    if (block.kind === 'checklist') return [block.title, ...block.items.map((item) => `  [ ] ${item}`)];
    return [];
  });
  return [
    headline,
    ...lines,
    ...assumed.map((line) => `~ ${line}`),
    ...cautions.map(({ topic, text }) => `! ${topic}: ${text}`),
  ].join('\n');
}
