/** The doctor's check that what is installed works here: the font, pictures, worker threads and their solver. */

import { accessSync } from 'node:fs';
import { commands } from '../../commands/all.ts';
import { type Answer, answer } from '../chat/pipeline.ts';
import { FONT_FILES } from '../drawing/font.ts';
import { closePictures, toPng } from '../drawing/png.ts';
import { DEFAULT_PREFERENCES } from '../input/reading.ts';
import { feet } from '../units/length.ts';
import { closeWorkers, lastAnswerFrom } from '../workers/pool.ts';
import { type Finding, fault, ok } from './doctor-report.ts';

/** A task that needs a worker with its solver. */
const STICK = {
  kind: 'sticks',
  task: { pieces: [{ id: 'wall', length: feet(7), kerf: 0 }], stock: [{ length: feet(8), cents: 798 }], endTrim: 0 },
} as const;
/** A sum that has a picture. */
const SUM = `list room: 12' x 14', doors: 32 in on wall 2, stock: 8 ft $7.98; 12 ft $12.48`;
/** What a PNG begins with (RFC 2083). */
const PNG = '89504e470d0a1a0a';
const AGAIN = 'Install again from nothing: npm ci.';

/** Works out one sum and draws its picture, with nobody asking and nothing kept. */
export async function worksFindings(): Promise<readonly Finding[]> {
  const found: Finding[] = [font()];
  let drawn = 'no picture came';
  let last: Answer | undefined;
  // Where a worker fails, what was found without it stands: that an answer comes does not tell that one works.
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
