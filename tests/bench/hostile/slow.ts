/** What is hard on a server by itself, over real connections: too large, too deep, too slow, too many headers; it must stay well. */

import { request } from 'node:http';
import { connect } from 'node:net';
import { type Listening, listen, type Route, routed } from '../../../src/server/http.ts';
import { type Metric, metric } from '../metric.ts';

/** Milliseconds within which a connection that dribbles must be closed. */
const DRIBBLED = 30_000;
const MEGABYTE = 1024 * 1024;

/** Each as a figure: a status, or the milliseconds until the server closed. */
export async function slow(): Promise<readonly Metric[]> {
  let faults = 0;
  const read: Route = {
    method: 'POST',
    path: '/read',
    handle: async (requested) => {
      const text = await requested.text();
      try {
        JSON.parse(text);
        return new Response('read');
      } catch {
        return new Response('Not readable.', { status: 400 });
      }
    },
  };
  const server = await listen(
    routed([read], () => {
      faults += 1;
    }),
    { host: '127.0.0.1', port: 0 },
  );
  try {
    const deep = `${'['.repeat(400_000)}${']'.repeat(400_000)}`;
    const statuses = {
      'a body over a megabyte, its length told': [await post(server, 'x'.repeat(2 * MEGABYTE)), 413],
      'a body over a megabyte in chunks': [await post(server, 'x'.repeat(2 * MEGABYTE), true), 413],
      'a body that says less than it sends': [await raw(server, 'Content-Length: 1', '{}POST /x HTTP/1.1'), 400],
      'lists in one another, 400,000 deep': [await post(server, deep), 200],
      'bytes that are no UTF-8': [await post(server, Buffer.from([0x7b, 0xff, 0xfe, 0xc3, 0x28, 0x7d])), 400],
      'headers of 100 kB': [await raw(server, `X: ${'x'.repeat(100_000)}`, ''), 431],
      '5,000 headers': [await raw(server, Array.from({ length: 5000 }, (_, i) => `X${i}: 1`).join('\r\n'), ''), 431],
      'no HTTP at all': [await raw(server, '\u0000\u0001\u0002', ''), 400],
    } as const;
    const [head, body, silent] = await Promise.all([
      dribble(server, 'POST /read HTTP/1.1\r\nHost: bot\r\n', 'X: 1\r\n'),
      dribble(server, 'POST /read HTTP/1.1\r\nHost: bot\r\nContent-Length: 100000\r\n\r\n', ' '),
      dribble(server, '', ''),
    ]);
    const well = await post(server, '{}');
    return [
      ...Object.entries(statuses).map(([name, [came, wanted]]) => status(`${name}: status`, came, wanted)),
      metric('slow', 'headers that dribble: closed after, ms', head, { below: DRIBBLED }),
      metric('slow', 'a body that dribbles: closed after, ms', body, { below: DRIBBLED }),
      metric('slow', 'a connection that says nothing: closed after, ms', silent, { below: DRIBBLED }),
      status('a request after all that: status', well, 200),
      metric('slow', 'faults', faults, { below: 1 }),
    ];
  } finally {
    server.cut();
    await server.close();
  }
}

function status(name: string, came: number, wanted: number): Metric {
  return { bench: 'slow', metric: name, value: came, goal: `= ${wanted}`, ok: came === wanted };
}

/** The status of a request; 0 where the connection ended without one. */
function post({ port }: Listening, body: string | Buffer, chunked = false): Promise<number> {
  return new Promise((resolve) => {
    const length = chunked ? {} : { 'content-length': Buffer.byteLength(body) };
    const headers = { 'content-type': 'application/json', ...length };
    const sent = request(
      { host: '127.0.0.1', port, path: '/read', method: 'POST', headers, agent: false },
      (response) => {
        response.resume();
        resolve(response.statusCode ?? 0);
      },
    );
    sent.on('error', () => resolve(0));
    sent.end(body);
  });
}

/** The last status that comes back on a connection on which a request is sent by hand. */
function raw({ port }: Listening, header: string, rest: string): Promise<number> {
  return new Promise((resolve) => {
    let came = '';
    const socket = connect(port, '127.0.0.1', () => {
      socket.write(`POST /read HTTP/1.1\r\nHost: bot\r\n${header}\r\n\r\n${rest}`);
    });
    const end = (): void => resolve(Number([...came.matchAll(/HTTP\/1\.1 (\d{3})/g)].at(-1)?.[1] ?? 0));
    socket.on('data', (data) => {
      came += data;
    });
    socket.on('error', end);
    socket.on('close', end);
    socket.setTimeout(5_000, () => socket.destroy());
  });
}

/** Milliseconds until the server closes a connection on which a byte or so a second is sent; no longer than a minute. */
function dribble({ port }: Listening, start: string, drip: string): Promise<number> {
  return new Promise((resolve) => {
    const began = performance.now();
    const socket = connect(port, '127.0.0.1', () => void socket.write(start));
    const dripping = setInterval(() => {
      if (drip !== '') socket.write(drip);
      if (performance.now() - began > 60_000) socket.destroy();
    }, 1000);
    socket.resume();
    socket.on('error', () => undefined);
    socket.on('close', () => {
      clearInterval(dripping);
      resolve(performance.now() - began);
    });
  });
}
