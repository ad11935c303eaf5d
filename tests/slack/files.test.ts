/** Files that an answer comes with, put into the asker's direct messages by the real Bolt app. */

import { afterAll, describe, expect, it } from 'vitest';
import { closeFiles, makeFile } from '../../src/documents/make.ts';
import { running, shown, wordsOf } from './running.ts';

afterAll(closeFiles);

describe('files on Slack', () => {
  it('are uploaded for real, with their title, where the asker alone sees them', async () => {
    const app = await running({ flat: true, ports: { makeFile } });
    await app.slash('project handoff as: csv, of: checklist');
    await app.slack.until(() => app.slack.calls.some(({ method }) => method === 'files.completeUploadExternal'));
    const begun = app.slack.calls.find(({ method }) => method === 'files.getUploadURLExternal');
    const done = app.slack.calls.find(({ method }) => method === 'files.completeUploadExternal');
    expect(begun?.args.filename).toBe('upstairs-flat-checklist.csv');
    expect(done?.args.channel_id).toBe('DU1');
    const text = app.slack.uploads.get('F000000001')?.toString('utf8') ?? '';
    expect(Number(begun?.args.length)).toBe(Buffer.byteLength(text));
    expect(text).toMatch(/"Room","Stage","Done","By","Day"\r\n[\s\S]*clear the room/);
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('that could not be made are told of', async () => {
    const torn = async (): Promise<Buffer> => {
      throw new Error('torn');
    };
    const app = await running({ flat: true, ports: { makeFile: torn } });
    await app.slash('project handoff as: csv, of: checklist');
    await app.slack.until(() => /could not be made/.test(wordsOf(shown(app.slack))));
    expect(app.faults.map(({ cause }) => String(cause))).toEqual(['Error: torn']);
    await app.close();
  });
});
