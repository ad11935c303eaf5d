/** Pictures saved by the terminal: named by their title, never written over, and told after the answer. */

import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Writable } from 'node:stream';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { fileStem } from '../../src/chat/files.ts';
import type { Answer } from '../../src/chat/pipeline.ts';
import { savePictures, send } from '../../src/platforms/terminal/send.ts';
import type { Reply } from '../../src/reply/reply.ts';
import { DRAWING } from '../../src/text/drawing-text.ts';
import { region } from '../outside/laid.ts';
import { drawPlan } from './drawn.ts';
import { box, IMPERIAL, planOf } from './drawn-rooms.ts';

let folder = '';
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'pictures-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

const closet = drawPlan(planOf([region('closet', box(2, 4))]), IMPERIAL);
const other = drawPlan(planOf([region('closet', box(2, 5))]), IMPERIAL);

class Paper extends Writable {
  text = '';
  override _write(chunk: Buffer, _encoding: BufferEncoding, done: () => void): void {
    this.text += chunk.toString();
    done();
  }
}

async function* answers(): AsyncGenerator<Answer> {
  const reply: Reply = {
    headline: 'Buy one carton.',
    blocks: closet.map((drawing) => ({ kind: 'picture', drawing })),
    assumed: [],
    cautions: [],
    sources: [],
    actions: [],
    audience: 'asker',
    data: { kind: 'floor' },
  };
  yield reply;
}

describe('file names', () => {
  it.each([
    ['living: plan', 'living-plan'],
    ['Café №2 / "x": plan, rows 1–30', 'cafe-no2-x-plan-rows-1-30'],
    ['寝室', 'plan'],
    ['../../etc/passwd', 'etc-passwd'],
    ['a'.repeat(90), 'a'.repeat(60)],
  ])('of %s', (title, name) => expect(fileStem(title) || DRAWING.file).toBe(name));
});

describe('pictures', () => {
  it('get the same name for the same drawing, another for another, and nothing is written over', async () => {
    const first = join(folder, 'closet-plan.png');
    expect(await savePictures(closet, folder)).toEqual([first]);
    const bytes = await readFile(first);
    expect(await savePictures(other, folder)).toEqual([join(folder, 'closet-plan-2.png')]);
    expect(await savePictures(closet, folder)).toEqual([first]);
    expect(await savePictures(other, folder)).toEqual([join(folder, 'closet-plan-2.png')]);
    expect((await readFile(first)).equals(bytes)).toBe(true);
    expect((await readdir(folder)).sort()).toEqual(['closet-plan-2.png', 'closet-plan.png']);
  });

  it('are told after the answer, with the words for whoever cannot see them', async () => {
    const output = new Paper();
    expect(await send(answers(), { output, json: false, all: true, pictures: folder })).toBe(0);
    expect(output.text.trimEnd().split('\n').at(-1)).toBe(`Picture: ${join(folder, 'closet-plan.png')}`);
    expect(output.text.replace(/\s+/g, ' ')).toContain(closet[0]?.alt);
  });

  it('are not saved for a program, which gets the drawing itself', async () => {
    const output = new Paper();
    await send(answers(), { output, json: true, pictures: folder });
    expect(await readdir(folder)).toEqual([]);
    expect(JSON.parse(output.text)).toMatchObject({ blocks: [{ kind: 'picture', drawing: closet[0] }] });
  });

  it('are not saved without a folder', async () => {
    const output = new Paper();
    await send(answers(), { output, json: false });
    expect(output.text).not.toContain('Picture');
  });

  it('that cannot be saved leave the answer standing, and it is said why', async () => {
    const file = join(folder, 'file');
    await writeFile(file, '');
    const output = new Paper();
    expect(await send(answers(), { output, json: false, pictures: file })).toBe(0);
    expect(output.text).toContain('Buy one carton.');
    expect(output.text).toMatch(/The pictures could not be saved in .*file: E/);
  });
});
