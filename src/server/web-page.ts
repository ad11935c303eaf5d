/** What runs beside the chats, served by itself while the terminal is open: the share page. */

import type { PlatformContext } from '../platforms/platform.ts';
import { platformsThat } from '../platforms/platforms.ts';
import type { Config } from './config.ts';
import { type Listening, listen, routed } from './http.ts';

/** The page served by itself. Where its port is taken it takes another; undefined where it cannot be served, and why. */
export async function servePage(
  config: Config,
  context: PlatformContext,
): Promise<{ readonly server?: Listening; readonly trouble?: unknown }> {
  const started = await Promise.all(platformsThat('beside').map((platform) => platform.start(context)));
  const app = routed(
    started.flatMap(({ routes }) => routes),
    (cause) => context.ports.fault('http', cause),
  );
  try {
    return { server: await listen(app, config.http) };
  } catch (trouble) {
    try {
      return { server: await listen(app, { ...config.http, port: 0 }), trouble };
    } catch {
      return { trouble };
    }
  }
}
