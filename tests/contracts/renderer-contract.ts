/** What every renderer must do with the same answers: tell the same facts, and the headline and every caution whole. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { briefOf } from '../../src/chat/brief.ts';
import type { Answer } from '../../src/chat/pipeline.ts';
import { DEMO_ASKS } from '../../src/platforms/terminal/demo.ts';
import type { Block, Reply } from '../../src/reply/reply.ts';
import { saySource } from '../../src/text/answer-text.ts';
import { CHAT, sayFault, TERMINAL } from '../../src/text/chat-text.ts';
import { PAGE } from '../../src/text/page-text.ts';
import { answerTo } from '../chat/asked.ts';
import { anyReply } from './arbitrary-reply.ts';

/** An answer as a platform shows it, its own escapes undone. */
export interface ReadLine {
  /** What stands in the messages themselves, in order. */
  readonly shown: string;
  /** Everything that can be had by a button or as a file besides. */
  readonly reachable: string;
}

/** A renderer under test. */
export interface Rendered {
  readonly name: string;
  tell(answer: Answer): ReadLine;
  /** What stands in the messages themselves: everything, or the brief with the rest in sections. */
  readonly shows: 'all' | 'the brief';
}

const requested = new Map<string, Promise<Answer>>();

/** The answer to an ask, worked out once for all renderers. */
function answered(ask: string): Promise<Answer> {
  const known = requested.get(ask) ?? answerTo(ask);
  requested.set(ask, known);
  return known;
}

/** Runs the contract against a renderer. */
export function rendererContract({ name, tell, shows }: Rendered): void {
  const given = (answer: Answer): ReadLine => {
    const { shown, reachable } = tell(answer);
    return { shown: bare(shown), reachable: bare(`${shown} ${reachable}`) };
  };
  // Searched from where the last was found: most stand in the order in which they are asked for.
  const missing = (text: string, whole: readonly string[]): readonly string[] => {
    let from = 0;
    return whole.filter((one) => {
      const looked = bare(one);
      const next = text.indexOf(looked, from);
      if (next >= 0) from = next;
      return next < 0 && !text.includes(looked);
    });
  };

  /** What is not told of a reply: at once, or at all. */
  const lost = (reply: Reply): readonly string[] => {
    const { shown, reachable } = given(reply);
    const cautions = reply.cautions.map(({ text }) => text);
    const atAll = [...reply.blocks.flatMap(textsOf), ...reply.assumed, ...cautions, ...reply.sources.map(saySource)];
    if (shows === 'all') return missing(shown, [reply.headline, ...atAll]);
    const { lead, lines, assumption = '', cautions: short } = briefOf(reply);
    return [...missing(shown, [lead, ...lines, assumption, ...short]), ...missing(reachable, atAll)];
  };

  describe(`the renderer of ${name}`, () => {
    it.each(DEMO_ASKS.map((ask) => [ask]))('tells all of the answer to: %s', async (ask) => {
      const answer = await answered(ask);
      if ('headline' in answer) expect(lost(answer)).toEqual([]);
      else expect(missing(given(answer).shown, flat(answer))).toEqual([]);
    });

    it('begins with the headline', async () => {
      const answer = await answered(DEMO_ASKS[1] ?? '');
      if (!('headline' in answer)) throw new Error('no reply');
      expect(given(answer).shown.startsWith(bare(answer.headline))).toBe(true);
    });

    it.each([
      ['a fix to type', 'planks room: 12 x 14, plank: 6 x 48 in, 10 per carton, pattern: hafl'],
      ['none where none can be made', 'planks room: 12 x 14 x 8, gap: banana, kerf: 2 in, direction: up'],
      ['the plank alone missing', 'planks room: 12 x 14'],
    ])('tells every problem and what was read: %s', async (_what, line) => {
      const answer = await answered(line);
      if (!('problems' in answer)) throw new Error('no problems');
      const wanted = flat(answer);
      expect(missing(given(answer).shown, wanted)).toEqual([]);
      const typed = answer.problems.some(({ fix }) => fix !== undefined);
      const offered = [TERMINAL.type, CHAT.type, PAGE.type].some((label) => given(answer).shown.includes(bare(label)));
      expect(offered).toBe(typed);
    });

    it('names a plank that is not the asker’s right below the headline, and once', async () => {
      const answer = await answered('planks room: 12 x 14, plank: example');
      if (!('headline' in answer)) throw new Error('no reply');
      const { example = '', headline, assumed, needs } = answer;
      expect(example).toMatch(/^With an example plank, not yours: 6 x 48 in, 10 per carton\./);
      expect([assumed[0], needs]).toEqual([example, undefined]);
      const { shown } = given(answer);
      expect(shown.indexOf(bare(example))).toBe(bare(headline).length);
      expect(shown.split(bare(example))).toHaveLength(2);
    });

    it('tells a refusal, whom to call, and its cautions', async () => {
      const answer = await answered('tearout room: 12x14, floor: sheet vinyl, built: about 1960');
      if (!('why' in answer)) throw new Error('no refusal');
      const wanted = [answer.why, answer.call, ...answer.cautions.map(({ text }) => text)];
      expect(missing(given(answer).shown, wanted)).toEqual([]);
    });

    it('tells a fault by its reference, and whether nothing was saved', () => {
      for (const outage of [true, false]) {
        expect(missing(given({ reference: '0badcafe', outage }).shown, [sayFault('0badcafe', outage)])).toEqual([]);
      }
    });

    it('tells all of any reply', () => {
      fc.assert(
        fc.property(anyReply, (reply) => {
          expect(
            lost(reply)
              .map((one) => one.slice(0, 80))
              .slice(0, 3),
          ).toEqual([]);
        }),
        { numRuns: 25 },
      );
    });
  });
}

function textsOf(block: Block): readonly string[] {
  switch (block.kind) {
    case 'text':
      return [block.text];
    case 'facts':
      return [block.title ?? '', ...block.facts.flatMap(({ label, value }) => [label, value])];
    case 'table':
      return [block.title, ...block.columns.filter((_, i) => block.rows.some((row) => row[i])), ...block.rows.flat()];
    case 'steps':
      return [block.title, ...block.steps];
    case 'checklist':
      return [block.title, ...block.items];
    case 'picture':
      return [block.drawing.title, block.drawing.alt];
  }
}

function flat(answer: Exclude<Answer, Reply>): readonly string[] {
  if ('reference' in answer) return [answer.reference];
  if ('why' in answer) return [answer.why, answer.call, ...answer.cautions.map(({ text }) => text)];
  return answer.problems.flatMap(({ expected, got, fix }) => [expected, got, ...(fix === undefined ? [] : [fix])]);
}

/** Without spaces and what no renderer lets through: control characters, marks of direction, halves of characters. */
export function bare(text: string): string {
  return text.replace(/[\s\p{Cc}\p{Cf}\p{Cs}]/gu, '');
}
