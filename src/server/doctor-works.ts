/** The doctor's check that everything installed works here: the font, pictures, and worker threads with their solver. */

import { accessSync } from 'node:fs';
import { commands } from '../../commands/all.ts';
import { type Answer, answer } from '../chat/pipeline.ts';
import { closePictures, toPng } from '../drawing/png.ts';
import { FONT_FILES } from '../drawing/text.ts';
import { DEFAULT_PREFERENCES } from '../input/reading.ts';
import { feet } from '../units/length.ts';
import { closeWorkers, lastAnswerFrom } from '../workers/pool.ts';
import { type Finding, fault, ok } from './doctor-machine.ts';

const STICK = {
  kind: 'sticks',
  task: { pieces: [{ id: 'wall', length: feet(7), kerf: 0 }], stock: [{ length: feet(8), cents: 798 }], endTrim: 0 },
} as const;
/** A calculation with a picture. */
const SUM = `list room: 12' x 14', doors: 32 in on wall 2, stock: 8 ft $7.98; 12 ft $12.48`;
/** The signature of a PNG (RFC 2083). */
const PNG = '89504e470d0a1a0a';
const AGAIN = 'Install again from nothing: npm ci.';

/** Runs a calculation and draws its picture without storing anything. */
export async function worksFindings(): Promise<readonly Finding[]> {
  const found: Finding[] = [font()];
  let drawn = 'no picture came';
  let last: Answer | undefined;
  // Answers fall back when a worker fails, so an answer alone doesn't prove that one works.
  const solved = await lastAnswerFrom(STICK).then(
    () => true,
    () => false,
  );
  try {
    const asker = { platform: 'terminal', id: 'nobody' } as const;
    const requested = { asker, preferences: DEFAULT_PREFERENCES, text: SUM };
    for await (const one of answer(requested, commands, { fault: () => undefined })) last = one;
    const blocks = last && 'blocks' in last ? last.blocks : [];
    const picture = blocks.find((block) => block.kind === 'picture');
    if (picture?.kind === 'picture')
      drawn = (await toPng(picture.drawing, 100)).toString('hex', 0, 8) === PNG ? '' : 'what was drawn is no picture';
  } catch (cause) {
    drawn = cause instanceof Error ? cause.name : 'unknown';
  } finally {
    await closeWorkers();
    await closePictures();
  }
  const answered = last !== undefined && 'headline' in last;
  found.push(
    answered ? ok('Sums', 'one was worked out') : fault('Sums', 'none could be worked out', AGAIN),
    solved ? ok('Workers', 'a sum came back from a worker thread') : fault('Workers', 'no sum came back', AGAIN),
    drawn === '' ? ok('Pictures drawn', 'one was') : fault('Pictures drawn', drawn, AGAIN),
  );
  return found;
}

function font(): Finding {
  try {
    for (const file of Object.values(FONT_FILES)) accessSync(file);
    return ok('Font', 'both faces are there');
  } catch {
    return fault('Font', 'a file of it is missing', AGAIN);
  }
}
