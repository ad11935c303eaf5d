/** Asks from streams: lines answered in order, and a conversation at a prompt. */

import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough, Writable } from 'node:stream';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { commands } from '../../commands/all.ts';
import { type Answer, answer } from '../../src/chat/pipeline.ts';
import type { Request } from '../../src/chat/ports.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import { WORKED_ASK } from '../../src/platforms/terminal/demo.ts';
import { ask, askLines, type Conversation, converse, demonstrate } from '../../src/platforms/terminal/receive.ts';
import { send } from '../../src/platforms/terminal/send.ts';
import { unsafe } from '../../src/reply/reply.ts';
import { TERMINAL } from '../../src/text/chat-text.ts';

/** A screen that remembers. */
class Paper extends Writable {
  readonly isTTY: boolean;
  readonly columns: number;
  text = '';

  constructor(isTTY = false, columns = 80) {
    super();
    this.isTTY = isTTY;
    this.columns = columns;
  }

  override _write(chunk: Buffer, _encoding: string, done: () => void): void {
    this.text += chunk.toString();
    done();
  }
}

/** What stays on a terminal: without lines that are erased, and the marks that move the cursor and make letters bold. */
function bare(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is taken away
  return text.replace(/[^\n]*\r\u001b\[K|\u001b\[[0-9;]*[A-Za-z]/g, '');
}

function session(typed: string, part: Partial<Conversation> = {}): Conversation & { readonly output: Paper } {
  const input = new PassThrough();
  input.end(typed);
  const output = part.output instanceof Paper ? part.output : new Paper();
  const ports = {
    fault: (_reference: string, cause: unknown) => {
      throw cause;
    },
  };
  return {
    answer: (request: Request) => answer(request, commands, ports),
    commands,
    preferences: DEFAULT_PREFERENCES,
    input,
    history: '',
    ...part,
    output,
  };
}

function objects(paper: Paper): readonly Record<string, unknown>[] {
  return paper.text
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as Record<string, unknown>);
}

describe('lines as JSON', () => {
  it('give one object a line, in order, and the worst exit code', async () => {
    const given = session("tape 1' + 2'\ntape 1 ft + horse\ntape 3' in mm\n");
    expect(await askLines(given, { json: true })).toBe(2);
    const [first, second, third, ...more] = objects(given.output);
    expect(first).toMatchObject({ headline: "1' + 2' = 3'" });
    expect(second).toHaveProperty('problems');
    // 3 ft is 914.4 mm exactly (NIST: 1 ft = 0.3048 m).
    expect(third).toMatchObject({ data: { kind: 'tape', length: 3 * 12 * 8128 } });
    expect(more).toEqual([]);
  });

  it('skip lines without an ask, know every end of a line, and need none at the end', async () => {
    const given = session("\n  \r\ntape 1'\r\n\t\ntape 2'");
    expect(await askLines(given, { json: true })).toBe(0);
    expect(objects(given.output).map(({ headline }) => headline)).toEqual(["1' = 1'", "2' = 2'"]);
  });

  it('that come in pieces and faster than they are answered lose none', async () => {
    const input = new PassThrough();
    const given = session('', { input });
    const code = askLines(given, { json: true });
    for (let i = 1; i <= 40; i++) {
      input.write(`tape ${i}`);
      if (i % 7 === 0) await new Promise((resolve) => setImmediate(resolve));
      input.write("'\n");
    }
    input.end();
    expect(await code).toBe(0);
    expect(objects(given.output).map(({ headline }) => headline)).toEqual(
      Array.from({ length: 40 }, (_, i) => `${i + 1}' = ${i + 1}'`),
    );
  });

  it('of which there is none give no exit code', async () => {
    expect(await askLines(session('\n\n'), { json: true })).toBeUndefined();
    expect(await askLines(session(''))).toBeUndefined();
  });
});

describe('lines as text', () => {
  it('are divided by an empty line', async () => {
    const given = session("tape 1'\ntape 2'\n");
    await askLines(given);
    expect(given.output.text).toMatch(/^1' = 1'\n[\s\S]+\n\n2' = 2'\n/);
  });

  it('carry the asker’s habits and say that a terminal asks', async () => {
    const requested: Request[] = [];
    const preferences = { units: 'metric', decimal: ',', currency: 'EUR' } as const;
    const given = session('tape 3', {
      preferences,
      answer: (request) => {
        requested.push(request);
        return answer(request, commands, { fault: () => undefined });
      },
    });
    await askLines(given);
    expect(requested).toEqual([
      {
        asker: { platform: 'terminal', id: 'local' },
        preferences,
        text: 'tape 3',
        place: expect.stringMatching(/^[0-9a-f-]{36}$/),
      },
    ]);
    expect(given.output.text).toContain('3 mm');
  });
});

describe('sending', () => {
  async function* several(...answers: readonly Answer[]): AsyncGenerator<Answer> {
    yield* answers;
  }
  const first: Answer = { reference: 'first', outage: false };
  const last: Answer = { why: 'Not safe.', call: 'An engineer.', cautions: [], data: unsafe('structure') };

  it('shows the answer that stands, and gives its code', async () => {
    const output = new Paper();
    expect(await send(several(first, last), { output, json: true })).toBe(3);
    expect(objects(output)).toMatchObject([
      { refusal: { why: 'Not safe.', call: 'An engineer.' }, cautions: [], data: unsafe('structure') },
    ]);
  });

  it('throws where there is no answer', async () => {
    await expect(send(several(), { output: new Paper(), json: false })).rejects.toThrow('without an answer');
  });

  it('throws what the output throws', async () => {
    const output = new Writable({ write: (_chunk, _encoding, done) => done(new Error('disk full')) });
    output.on('error', () => undefined);
    await expect(send(several(last), { output, json: false })).rejects.toThrow('disk full');
  });

  it('takes the usual width where a terminal tells none', async () => {
    const [given, notGiven] = [new Paper(false, 80), new Paper(true, 0)];
    for (const output of [given, notGiven]) await ask('tape 1 ft in mm', session('', { output }));
    expect(bare(notGiven.text)).toBe(given.text);
  });

  it('keeps to the terminal’s width', async () => {
    const output = new Paper(true, 50);
    await ask('planks 12x14, plank: 6 x 48 in, 10 per carton', session('', { output }));
    expect(
      Math.max(
        ...bare(output.text)
          .split('\n')
          .map((line) => line.length),
      ),
    ).toBeLessThan(50);
    expect(output.text).toContain('\u001b[1mBuy 10 cartons');
  });
});

describe('colors', () => {
  it.each([
    ['a terminal', true, undefined, true],
    ['a terminal that says it has colors', true, true, true],
    ['a terminal without colors, or with NO_COLOR set', true, false, false],
    ['a pipe', false, true, false],
  ])('%s', async (_name, isTTY, colors, bold) => {
    const output = Object.assign(new Paper(isTTY), colors === undefined ? {} : { hasColors: () => colors });
    await ask("tape 1' + 2'", session('', { output }));
    expect(output.text.includes('\u001b[1m')).toBe(bold);
    expect(bare(output.text)).toMatch(/^1' \+ 2' = 3'\n/);
  });
});

describe('a word of progress', () => {
  const refused: Answer = { why: 'Not safe.', call: 'An engineer.', cautions: [], data: unsafe('structure') };

  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  /** What is on the screen while an answer takes so long, and once it is there. */
  async function sent(milliseconds: number, output: Paper, json = false) {
    let answered = (): void => undefined;
    const waiting = new Promise<void>((resolve) => {
      answered = resolve;
    });
    async function* late(): AsyncGenerator<Answer> {
      await waiting;
      yield refused;
    }
    const code = send(late(), { output, json });
    await vi.advanceTimersByTimeAsync(milliseconds);
    const meanwhile = output.text;
    answered();
    expect(await code).toBe(3);
    await vi.advanceTimersByTimeAsync(10_000);
    return { meanwhile, text: output.text };
  }

  it('comes at a terminal after a second, once, and the answer takes its place', async () => {
    const { meanwhile, text } = await sent(5000, new Paper(true));
    expect(meanwhile).toBe(TERMINAL.working);
    expect(text.startsWith(`${TERMINAL.working}\r\u001b[K\u001b[1m`)).toBe(true);
    expect(text.split(TERMINAL.working)).toHaveLength(2);
  });

  it('has a line of its own where nothing can be erased', async () => {
    const { meanwhile, text } = await sent(5000, Object.assign(new Paper(true), { hasColors: () => false }));
    expect(meanwhile).toBe(`${TERMINAL.working}\n`);
    expect(text.startsWith(`${TERMINAL.working}\n${TERMINAL.refusal}`)).toBe(true);
  });

  it.each([
    ['before a second', 900, new Paper(true), false],
    ['into a pipe', 5000, new Paper(false), false],
    ['as JSON', 5000, new Paper(true), true],
  ])('does not come %s', async (_name, milliseconds, output, json) => {
    const { meanwhile, text } = await sent(milliseconds, output, json);
    expect(meanwhile).toBe('');
    expect(text).not.toContain(TERMINAL.working);
  });
});

describe('a conversation', () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'floorhand-converse-'));
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  it('greets with a worked answer, answers what is typed, and ends at quit', async () => {
    const given = session("tape 1' + 2'\n\n  Quit \ntape 5'\n");
    await converse(WORKED_ASK, given);
    const { text } = given.output;
    const begins = TERMINAL.prompt.slice(0, 30);
    const places = [TERMINAL.greeting, `> ${WORKED_ASK}`, 'Buy ', begins, "1' + 2' = 3'", TERMINAL.bye];
    const at = places.map((part) => text.indexOf(part));
    expect(at).not.toContain(-1);
    expect([...at].sort((a, b) => a - b)).toEqual(at);
    expect(text).not.toContain("5' = 5'");
    expect(text.endsWith(`${TERMINAL.bye}\n`)).toBe(true);
  });

  it('greets in twenty lines at most with the prompt in sight, and saves no picture of the example', async () => {
    const given = session('quit\n', { output: new Paper(true, 80), pictures: join(folder, 'pictures') });
    await converse(WORKED_ASK, given);
    const shown = bare(given.output.text).split('> quit')[0] ?? '';
    const lines = shown.slice(0, shown.lastIndexOf('> ') + 2).split('\n');
    expect(lines.length).toBeLessThanOrEqual(20);
    expect(lines.at(-1)?.endsWith('> ')).toBe(true);
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThan(80);
    for (const word of ['more', 'rows', 'why', 'safety', 'help', 'quit']) expect(shown).toContain(`“${word}”`);
    expect(existsSync(join(folder, 'pictures'))).toBe(false);
  });

  it.each(['exit', 'bye', ''])('ends at “%s” too', async (word) => {
    const given = session(`${word}\n`);
    await converse(WORKED_ASK, given);
    expect(given.output.text.endsWith(`${TERMINAL.bye}\n`)).toBe(true);
  });

  it('goes on behind a problem', async () => {
    const given = session("tape 1 ft + horse\ntape 1'\n");
    await converse(WORKED_ASK, given);
    expect(given.output.text).toContain("1' = 1'");
  });

  it('keeps what was asked, and not the word that ends it', async () => {
    const history = join(folder, 'asks');
    writeFileSync(history, 'tape 9\n');
    await converse(WORKED_ASK, session("tape 1'\n\nhelp\nquit\n", { history }));
    expect(readFileSync(history, 'utf8')).toBe("tape 9\ntape 1'\nhelp\n");
  });

  it('brings earlier asks back with the up key at a terminal', async () => {
    const history = join(folder, 'asks');
    writeFileSync(history, "tape 7'\ntape 8'\n");
    const input = Object.assign(new PassThrough(), { isTTY: true, setRawMode: () => undefined });
    const output = new Paper(true);
    const done = converse(WORKED_ASK, session('', { input, output, history }));
    input.write('\u001b[A\u001b[A\r');
    input.write('quit\r');
    await done;
    expect(output.text).toContain("7' = 7'");
    expect(readFileSync(history, 'utf8')).toBe("tape 7'\ntape 8'\ntape 7'\n");
  });
});

describe('the demo', () => {
  it('shows each ask before its answer and gives the worst code', async () => {
    const given = session('');
    expect(await demonstrate(["tape 1'", 'tape 1 ft + horse'], given)).toBe(2);
    expect(given.output.text).toMatch(/^> tape 1'\n1' = 1'\n[\s\S]+\n\n> tape 1 ft \+ horse\n/);
  });
});
