/** Requests of the share page by links that nobody was given, and forms that no page of ours sent. */

import { startWeb } from '../../../src/platforms/web/start.ts';
import { type Draw, damaged } from './bend.ts';
import type { Lane, LaneParts } from './lane.ts';

const METHODS = ['GET', 'GET', 'HEAD', 'POST', 'POST', 'PUT', 'OPTIONS'] as const;

export function pageLane(parts: LaneParts): Lane {
  const [page] = startWeb({ ...parts, opened: async () => undefined, allow: async () => true });
  if (!page) throw new Error('there is no page');
  return {
    name: 'page',
    async send(line, draw) {
      const response = await page.handle(requestOf(line, draw));
      await response.text();
      return response.status;
    },
    close: async () => {},
  };
}

function requestOf(line: string, draw: Draw): Request {
  const method = draw.pick(METHODS);
  const token = draw.random() < 0.5 ? 'A'.repeat(22) : encodeURIComponent(Buffer.from(line).toString().slice(0, 300));
  const url = `http://bot/s/${token}${draw.random() < 0.3 ? `?get=${encodeURIComponent(Buffer.from(line).toString().slice(0, 50))}` : ''}`;
  if (method !== 'POST') return new Request(url, { method });
  const form = Buffer.from(new URLSearchParams({ do: 'tick', key: line, to: 'yes' }).toString());
  const body = draw.random() < 0.2 ? damaged(form, draw) : Uint8Array.from(form);
  const headers = {
    origin: draw.pick(['http://bot', 'http://other']),
    'content-type': 'application/x-www-form-urlencoded',
  };
  return new Request(url, { method, body, headers });
}
