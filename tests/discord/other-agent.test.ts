/** Files reach Discord whatever loaded an undici before: in a process of its own, because a process has one such place. */

import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { expect, it } from 'vitest';

const START = new URL('../../dist/src/platforms/discord/start.js', import.meta.url).href;

/** Loads Slack's client first, whose socket has another version of undici, then sends a file by ours. */
const SENDS = `
  import { createServer } from 'node:http';
  await import('@slack/bolt');
  const { restOf } = await import(${JSON.stringify(START)});
  const server = createServer((request, response) => {
    let bytes = 0;
    request.on('data', (part) => { bytes += part.length; });
    request.on('end', () => {
      process.stdout.write(String(bytes));
      response.writeHead(200, { 'content-type': 'application/json' }).end('{}');
    });
  });
  await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
  const rest = restOf({ token: 'a.b.c', api: 'http://127.0.0.1:' + server.address().port + '/api' });
  const files = [{ name: 'plan.png', data: Buffer.alloc(6000, 7), contentType: 'image/png' }];
  await rest.post('/interactions/1/token/callback', { auth: false, body: { type: 4, data: {} }, files });
  process.exit(0);
`;

it('a picture is sent although Slack was loaded first', async () => {
  const { stdout } = await promisify(execFile)(process.execPath, ['--input-type=module', '--eval', SENDS]);
  expect(Number(stdout)).toBeGreaterThan(6000);
});
