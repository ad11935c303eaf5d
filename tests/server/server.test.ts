/** The one HTTP server: routes, what is not there, too large, and faults. */

import { afterEach, describe, expect, it } from 'vitest';
import { type Listening, listen, type Route, routed } from '../../src/server/http.ts';

const open: Listening[] = [];
afterEach(async () => {
  await Promise.all(open.splice(0).map((one) => one.close()));
});

async function served(routes: readonly Route[]) {
  const faults: unknown[] = [];
  const listening = await listen(
    routed(routes, (cause) => faults.push(cause)),
    { host: '127.0.0.1', port: 0 },
  );
  open.push(listening);
  return { url: `http://127.0.0.1:${listening.port}`, faults, listening };
}

describe('the HTTP server', () => {
  it('hands a request to the route of its method and path, the body untouched', async () => {
    const handle = async (request: Request) => new Response(await request.text());
    const { url } = await served([{ method: 'POST', path: '/echo', handle }]);
    const answer = await fetch(`${url}/echo`, { method: 'POST', body: '{ "a" :1}' });
    expect(await answer.text()).toBe('{ "a" :1}');
    expect((await fetch(`${url}/echo`)).status).toBe(404);
    expect((await fetch(`${url}/other`)).status).toBe(404);
  });

  it('refuses a body over a megabyte', async () => {
    const { url } = await served([
      { method: 'POST', path: '/echo', handle: async (r) => new Response(await r.text()) },
    ]);
    const answer = await fetch(`${url}/echo`, { method: 'POST', body: 'x'.repeat(1024 * 1024 + 1) });
    expect(answer.status).toBe(413);
  });

  it('tells a fault to the port and nothing of it to the caller', async () => {
    const cause = new Error('the secret of the house');
    const { url, faults } = await served([
      {
        method: 'GET',
        path: '/falls',
        handle: () => {
          throw cause;
        },
      },
    ]);
    const answer = await fetch(`${url}/falls`);
    expect(answer.status).toBe(500);
    expect(await answer.text()).not.toContain('secret');
    expect(faults).toEqual([cause]);
  });

  it('says so when its port is taken', async () => {
    const { listening } = await served([]);
    const again = listen(
      routed([], () => {}),
      { host: '127.0.0.1', port: listening.port },
    );
    await expect(again).rejects.toThrow(/EADDRINUSE/);
  });
});
