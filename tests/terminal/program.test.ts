/** The built program from outside: arguments, standard input, exit codes, and nothing but JSON where JSON was asked for. */

import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { TERMINAL } from '../../src/text/chat-text.ts';

const PROGRAM = fileURLToPath(new URL('../../dist/src/main.js', import.meta.url));
/** A program that hangs is ended; on a machine with much else to do, one that works takes long too. */
const TIME = 100_000;
const SAMPLE_ASK = `planks room: 12' x 14', plank: 6 x 48 in, 10 per carton`;
const folder = mkdtempSync(join(tmpdir(), 'floorhand-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Run {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the program; `input` undefined means that nothing is piped. */
function run(words: readonly string[], input?: string, settings: Readonly<Record<string, string>> = {}): Promise<Run> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [PROGRAM, ...words], {
      stdio: [input === undefined ? 'ignore' : 'pipe', 'pipe', 'pipe'],
      // A folder of its own: what somebody asked on this machine before must not answer here.
      env: {
        PATH: process.env.PATH,
        FLOORHAND_PICTURES: folder,
        FLOORHAND_DATA: mkdtempSync(join(folder, 'data-')),
        ...settings,
      },
      timeout: TIME,
    });
    let [out, err] = ['', ''];
    child.stdout?.setEncoding('utf8').on('data', (text: string) => (out += text));
    child.stderr?.setEncoding('utf8').on('data', (text: string) => (err += text));
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, out, err }));
    child.stdin?.end(input);
  });
}

function lines(out: string): readonly Record<string, unknown>[] {
  expect(out.endsWith('\n')).toBe(true);
  return out
    .slice(0, -1)
    .split('\n')
    .map((line) => JSON.parse(line) as Record<string, unknown>);
}

beforeAll(() => {
  if (!existsSync(PROGRAM)) throw new Error('the program is not built: run npm test, which builds first');
});

describe('ask', () => {
  it('--json prints one object for the argument, and nothing else', async () => {
    const { code, out, err } = await run(['ask', '--json', SAMPLE_ASK]);
    expect([code, err]).toEqual([0, '']);
    const [object, ...more] = lines(out);
    expect(more).toEqual([]);
    expect(Object.keys(object ?? {}).slice(0, 7)).toEqual([
      'headline',
      'assumed',
      'blocks',
      'cautions',
      'sources',
      'data',
      'brief',
    ]);
    expect(object).toMatchObject({ headline: expect.stringMatching(/^Buy 10 cartons /), data: { kind: 'floor' } });
  });

  it('--json prints one object a line of standard input, in order, and exits with the worst code', async () => {
    const input = `safety\n\nplanks room: 12x14\n${SAMPLE_ASK}\n`;
    const { code, out, err } = await run(['ask', '--json'], input);
    expect([code, err]).toEqual([2, '']);
    expect(lines(out).map((object) => Object.keys(object)[0])).toEqual(['headline', 'problems', 'headline']);
  });

  it('prints text without --json, without colour into a pipe, and joins the words of an unquoted ask', async () => {
    const { code, out } = await run(['ask', 'safety', 'tear-out']);
    expect(code).toBe(0);
    expect(out).toMatch(/^Before tear-out: \d+ things/);
    expect(out).not.toContain('\u001b');
  });

  it('without an ask tells how it is used, and exits with 2', async () => {
    expect(await run(['ask', '--json'])).toEqual({ code: 2, out: '', err: `${TERMINAL.usage}\n` });
  });
});

describe('start', () => {
  it('answers lines that are piped in, with the habits that the environment tells', async () => {
    const { code, out } = await run([], 'planks 3 x 4,5, plank: 180 x 1220, 8 per carton\ntape 1 ft + horse\n', {
      FLOORHAND_UNITS: 'metric',
      FLOORHAND_DECIMAL: ',',
    });
    expect(code).toBe(2);
    expect(out).toMatch(/^Buy \d+ cartons /);
    expect(out).toContain('horse');
    expect(out).not.toContain(TERMINAL.greeting);
  });

  it('with nothing piped shows a worked answer and exits with 0', async () => {
    const { code, out, err } = await run([]);
    expect([code, err]).toEqual([0, '']);
    expect(out.startsWith(`${TERMINAL.greeting}\n\n> how many `)).toBe(true);
    expect(out).toMatch(/\nBuy \d+ boxes /);
  });

  it('tells every fault of a bad configuration at once, and exits with 1', async () => {
    const settings = { FLOORHAND_UNITS: 'cubits', FLOORHAND_DECIMAL: ';', FLOORHAND_CURRENCY: 'dollars' };
    const { code, out, err } = await run([], '', settings);
    expect([code, out]).toEqual([1, '']);
    for (const name of Object.keys(settings)) expect(err).toContain(`${name}: `);
    expect(err).not.toContain('    at ');
  });
});

describe('demo', () => {
  it('prints a conversation, in which one ask is misspelt on purpose', async () => {
    const { code, out, err } = await run(['demo']);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('the nearest is “plank”');
    expect(out.match(/^> /gm)?.length).toBeGreaterThanOrEqual(5);
    expect(out.match(/^Buy \d+ cartons /gm)?.length).toBeGreaterThanOrEqual(3);
  });

  it('ends quietly when its reader closes early', async () => {
    const child = spawn(process.execPath, [PROGRAM, 'demo'], {
      stdio: ['ignore', 'pipe', 'pipe'],
      env: { PATH: process.env.PATH, FLOORHAND_PICTURES: folder },
      timeout: TIME,
    });
    let err = '';
    child.stderr.setEncoding('utf8').on('data', (text: string) => (err += text));
    child.stdout.once('data', () => child.stdout.destroy());
    const code = await new Promise((resolve) => child.on('close', resolve));
    expect([0, 2]).toContain(code);
    expect(err).toBe('');
  });
});
