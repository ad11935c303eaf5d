/** Project commands against what people, and others, may type: never a fault, never a record that cannot be read, limits told. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { commands } from '../../commands/all.ts';
import { openAccess } from '../../src/accounts/project-access.ts';
import type { Asker } from '../../src/accounts/records.ts';
import { parseLine } from '../../src/chat/grammar.ts';
import { readLabel } from '../../src/input/parse-label.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { personCodec } from '../../src/project/person.ts';
import { projectCodec } from '../../src/project/project.ts';
import { DAY, LIMITS } from '../../src/project/project-limits.ts';
import { answerTo, problemsOf, replyTo } from '../chat/asked.ts';
import { type DemoPorts, demoPorts, portsInMemory } from '../chat/demo-flat.ts';

const ANN: Asker = { platform: 'discord', id: '1' };

function throwing(_reference: string, cause: unknown): never {
  throw cause;
}

function allReadable({ store }: DemoPorts): void {
  for (const [key, json] of store.records) {
    if (key.startsWith('project/')) projectCodec.read(JSON.parse(json));
    if (key.startsWith('person/')) personCodec.read(JSON.parse(json));
  }
}

const VERBS = [
  'project new',
  'project rename',
  'project copy',
  'project use',
  'project show',
  'project delete',
  'project room',
  'project room add',
  'project room bedroom',
  'project room bedroom note',
  'project room rename bedroom to',
  'project room remove',
  'project pick',
  'project pick plank:',
  'project pick clear',
  'project keep',
  'project settings',
  'project settings rules:',
  'project mydata import:',
  'project undo',
  'add',
  'leave the',
  'start a project called',
];

const HOSTILE = [
  '__proto__ 5x5',
  'constructor: 6 x 48 in, 10 per carton',
  'toString',
  '@everyone 5 x 6',
  '<@123> 5x6; <script>alert(1)</script> 5x6',
  '\u202Eevil 5x6',
  '\u0000\u0001\uD800 5x6',
  '🪵'.repeat(200),
  'a'.repeat(3000),
  '12x14 '.repeat(300),
  'plank: '.repeat(200),
  '{"projects":[{"name":"x"}]}',
  'room: 12x14, plank: 6 x 48 in',
  '```\n# head\n```',
  '“”',
  '99999999999999999999 x 99999999999999999999',
];

const typed = fc.oneof(
  fc.constantFrom(...HOSTILE),
  fc.string({ unit: 'binary', maxLength: 60 }),
  fc.tuple(fc.constantFrom(...HOSTILE), fc.string({ unit: 'grapheme', maxLength: 12 })).map((parts) => parts.join(' ')),
);

describe('whatever is typed', () => {
  it('is answered or mended, and what is kept can be read', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.constantFrom(...VERBS), typed), { minLength: 1, maxLength: 6 }),
        async (lines) => {
          const ports = await demoPorts(ANN, throwing);
          for (const line of lines.map((parts) => parts.join(' '))) {
            const given = await answerTo(line, { asker: ANN, ports });
            for (const { fix } of problemsOf(given)) {
              expect(fix?.trim()).not.toBe('');
              if (fix?.startsWith('project ')) expect(parseLine(fix, commands).ok).toBe(true);
            }
          }
          allReadable(ports);
        },
      ),
      { numRuns: 25 },
    );
  });

  it('every fix of a project command can be typed, and there is an answer', async () => {
    for (const verb of VERBS)
      for (const text of HOSTILE) {
        const ports = await demoPorts(ANN, throwing);
        const [problem] = problemsOf(await answerTo(`${verb} ${text}`, { asker: ANN, ports }));
        if (problem?.fix === undefined) continue;
        const left = problemsOf(await answerTo(problem.fix, { asker: ANN, ports }));
        expect(left, `${verb} ${text.slice(0, 40)}: ${problem.fix.slice(0, 80)}`).toEqual([]);
      }
  });

  it('leaves no sign in a name that cannot be seen or that turns the text round', async () => {
    const reading = { option: 'name', preferences: DEFAULT_PREFERENCES, note: () => undefined };
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 80 }), (text) => {
        const name = readLabel(text, reading, LIMITS.name);
        if (!name.ok) return;
        expect(name.value).not.toMatch(/[\p{Cc}\p{Zl}\p{Zp}\u202A-\u202E\u2066-\u2069\u200B\uFEFF]/u);
        expect(name.value.length).toBeLessThanOrEqual(LIMITS.name);
        expect(readLabel(name.value, reading, LIMITS.name)).toEqual(name);
      }),
    );
    expect(readLabel('  👩‍🔧  flat ', reading, 60)).toEqual({ ok: true, value: '👩‍🔧 flat' });
  });
});

describe('limits', () => {
  it('of projects are told with what to do', async () => {
    const ports = portsInMemory(throwing);
    const say = (line: string) => answerTo(line, { asker: ANN, ports });
    for (let i = 0; i < LIMITS.projects; i++) await replyTo(`project new Flat ${i}`, { asker: ANN, ports });
    for (const line of ['project new One more', 'project copy One more', 'project copy'])
      expect(problemsOf(await say(line))[0]).toMatchObject({ expected: expect.stringContaining('Delete one first') });
    expect((await replyTo('project list', { asker: ANN, ports })).headline).toBe('20 projects.');
    await replyTo('project delete Flat 0', { asker: ANN, ports });
    await replyTo('project new One more', { asker: ANN, ports });
    // No button deletes a project that nobody named.
    expect(problemsOf(await say('project restore Flat 0'))[0]).not.toHaveProperty('fix');
  });

  it('of deleted projects are told, and never offer what does not help', async () => {
    const ports = portsInMemory(throwing);
    for (let i = 0; i < LIMITS.projectsDeleted; i++) {
      await replyTo(`project new Flat ${i}`, { asker: ANN, ports });
      await replyTo('project delete', { asker: ANN, ports });
    }
    const more = () => answerTo('project new One more', { asker: ANN, ports });
    expect(problemsOf(await more())[0]).toMatchObject({ expected: expect.stringContaining('Bring one back') });
    ports.clock.now += (LIMITS.restore + 1) * DAY;
    expect(problemsOf(await more())).toEqual([]);
  });

  it('of rooms, notes and picks', async () => {
    const ports = portsInMemory(throwing);
    const say = (line: string) => answerTo(line, { asker: ANN, ports });
    await say('project new Flat');
    const rooms = Array.from(
      { length: LIMITS.rooms },
      (_, i) => `r${'abcdefghij'[i % 10]}${'abcde'[Math.floor(i / 10)]} 5x5`,
    );
    await replyTo(`project room ${rooms.join('; ')}`, { asker: ANN, ports });
    expect(problemsOf(await say('project room one more 5x5'))[0]?.expected).toContain('at most 50 rooms');
    for (let i = 0; i < LIMITS.notes; i++) await replyTo(`project room raa note number ${i}`, { asker: ANN, ports });
    expect(problemsOf(await say('project room raa note again'))[0]?.expected).toContain('at most 20 notes');
    expect(problemsOf(await say(`project room rba note ${'x'.repeat(400)}`))[0]?.expected).toContain('At most 300');
    expect(
      problemsOf(await say(`project pick plank: 6 x 48 in, 10 per carton ${', wide'.repeat(120)}`))[0]?.expected,
    ).toContain('At most 500');
    allReadable(ports);
  });

  it('an ask with all rooms still fits into a line', async () => {
    const ports = portsInMemory(throwing);
    const say = (line: string) => answerTo(line, { asker: ANN, ports });
    await say('project new Flat');
    for (const first of 'abcdef')
      for (const second of 'qrstuvw')
        await say(`project room ${first}${second}${'x'.repeat(36)} 12'6 1/2" x 14'6 1/2"`);
    const access = openAccess(ANN, ports);
    const project = await access?.inUse();
    const given = project?.rooms.map(({ name, text }) => `${name} ${text}`).join('; ') ?? '';
    expect(given.length).toBeGreaterThan(2400);
    expect(given.length).toBeLessThanOrEqual(LIMITS.roomsGiven);
    expect(
      problemsOf(await say(`project room z${'x'.repeat(38)} 12'6 1/2" x 14'6 1/2"`)).map(({ expected }) => expected),
    ).toEqual([expect.stringContaining('All rooms together')]);
  });
});
