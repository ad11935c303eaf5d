/** Answers as JSON: the shapes that outside programs read, and the exit codes. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { type ExitCode, toJson, worst } from '../../src/platforms/terminal/send.ts';
import { unsafe } from '../../src/reply/reply.ts';
import { ASKER, answerTo } from '../chat/asked.ts';
import { demoPorts } from '../chat/demo-flat.ts';

interface Answered {
  readonly brief: readonly string[];
  readonly briefCautions: number;
  readonly blocks: readonly object[];
  readonly sections: readonly { readonly id: string; readonly blocks: readonly object[] }[];
}

describe('an answer', () => {
  const asks = commands.flatMap(({ examples }) => examples.map(({ ask }) => ask));
  const fault = (_reference: string, cause: unknown): never => {
    throw cause;
  };

  it.each(asks)('to %s has what programs read and nothing else, and survives JSON', async (ask) => {
    const ports = ask.startsWith('project ') ? await demoPorts(ASKER, fault) : {};
    const { object, code } = toJson(await answerTo(ask, { ports }));
    expect(code).toBe(0);
    expect(Object.keys(object as object)).toEqual([
      'headline',
      'assumed',
      'blocks',
      'cautions',
      'sources',
      'data',
      'brief',
      'briefCautions',
      'next',
      'sections',
    ]);
    expect(JSON.parse(JSON.stringify(object))).toEqual(object);
    const { brief, briefCautions, blocks, sections } = object as Answered;
    expect(brief.length).toBeLessThanOrEqual(16);
    expect(briefCautions).toBeLessThan(brief.length);
    expect(Math.max(...brief.map((line) => line.length))).toBeLessThanOrEqual(80);
    expect(sections.flatMap((section) => section.blocks)).toEqual(blocks);
    expect(new Set(sections.map(({ id }) => id)).size).toBe(sections.length);
  });

  it('to planks has data of kind floor, in ticks', async () => {
    const { object } = toJson(
      await answerTo("planks 12' x 14', plank: 6 x 48 in, 10 per carton, $58 a carton, tax: 8%"),
    );
    // Inches: the sides and the plank as typed; the gap, stagger, end and strip of TRADE's defaults for a floating floor.
    expect(object).toMatchObject({
      data: {
        kind: 'floor',
        ticksPerInch: 8128,
        plank: { width: 6 * 8128, length: 48 * 8128, perCarton: 10, lock: 'click' },
        rules: { gap: 8128 / 4, kerf: 0, stagger: 6 * 8128, minEnd: 8 * 8128, minRip: 2 * 8128 },
        regions: [
          {
            outline: [
              [0, 0],
              [144 * 8128, 0],
              [144 * 8128, 168 * 8128],
              [0, 168 * 8128],
            ],
            holes: [],
          },
        ],
        cost: { cents: 58_000, tax: 4640 },
      },
    });
  });

  it('to planks without a price has no cost', async () => {
    const { object } = toJson(await answerTo("planks 12' x 14', plank: 6 x 48 in, 10 per carton"));
    expect((object as { data: object }).data).not.toHaveProperty('cost');
  });
});

describe('what is no reply', () => {
  it('problems: exit code 2', async () => {
    const { object, code } = toJson(await answerTo('planks 12x14, plank: 6 x 48'));
    expect(code).toBe(2);
    expect(Object.keys(object as object)).toEqual(['problems', 'asks', 'brief', 'briefCautions', 'next', 'sections']);
    expect(object).toMatchObject({ asks: { for: 'plank', choices: [] }, briefCautions: 0, sections: [] });
    for (const problem of (object as { problems: object[] }).problems)
      expect(Object.keys(problem).sort()).toEqual(['expected', 'got', 'option']);
  });

  it('a refusal: exit code 3', () => {
    const cautions = [{ topic: 'asbestos', text: 'Do not sand it.' }];
    expect(toJson({ why: 'It may hold asbestos.', call: 'A contractor.', cautions, data: unsafe('asbestos') })).toEqual(
      {
        object: {
          refusal: { why: 'It may hold asbestos.', call: 'A contractor.' },
          cautions,
          data: { kind: 'hazard', hazard: 'asbestos', emergency: false },
          brief: [
            'This is not safe to work out from here',
            'It may hold asbestos.',
            'Who to call: A contractor.',
            '- Do not sand it.',
          ],
          briefCautions: 1,
          next: [],
          sections: [],
        },
        code: 3,
      },
    );
  });

  it('a fault: exit code 1', () => {
    expect(toJson({ reference: '0badcafe', outage: false })).toEqual({
      object: {
        fault: { reference: '0badcafe' },
        brief: [expect.any(String), expect.stringContaining('give this reference: 0badcafe.')],
        briefCautions: 0,
        next: [],
        sections: [],
      },
      code: 1,
    });
  });
});

describe('the worst of several exit codes', () => {
  it.each<[readonly ExitCode[], ExitCode]>([
    [[], 0],
    [[0, 0], 0],
    [[0, 2], 2],
    [[2, 3, 0], 3],
    [[3, 2, 1, 0], 1],
    [[0, 1], 1],
  ])('of %j is %i', (codes, code) => expect(worst(codes)).toBe(code));

  it('does not depend on their order', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom<ExitCode>(0, 1, 2, 3)), (codes) => {
        expect(worst([...codes].reverse())).toBe(worst(codes));
        if (codes.length > 0) expect(codes).toContain(worst(codes));
      }),
    );
  });
});
