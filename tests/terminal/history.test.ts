/** The history file: kept where the asker chose, the latest first, read by its owner alone. */

import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { keepHistory, readHistory } from '../../src/platforms/terminal/receive.ts';
import { HISTORY } from '../../src/platforms/terminal/render.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'floorhand-history-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

describe('history', () => {
  it('gives the latest ask first', () => {
    const file = join(folder, 'asks');
    keepHistory(file, 'tape 1');
    keepHistory(file, 'help');
    expect(readHistory(file)).toEqual(['help', 'tape 1']);
    expect(readFileSync(file, 'utf8')).toBe('tape 1\nhelp\n');
  });

  it('is for its owner alone', () => {
    const file = join(folder, 'asks');
    keepHistory(file, 'help');
    expect(statSync(file).mode & 0o077).toBe(0);
  });

  it('is empty before the first ask, and nowhere without a file', () => {
    expect(readHistory(join(folder, 'none'))).toEqual([]);
    keepHistory('', 'help');
    expect(readHistory('')).toEqual([]);
  });

  it('gives the latest of many', () => {
    const file = join(folder, 'asks');
    writeFileSync(file, Array.from({ length: HISTORY + 20 }, (_, i) => `tape ${i}\n`).join(''));
    const asks = readHistory(file);
    expect(asks).toHaveLength(HISTORY);
    expect(asks[0]).toBe(`tape ${HISTORY + 19}`);
    expect(asks.at(-1)).toBe('tape 20');
  });

  it('that cannot be read is told, not lost', () => {
    expect(() => readHistory(folder)).toThrow('EISDIR');
  });
});
