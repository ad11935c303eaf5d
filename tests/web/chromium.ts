/** Debian's Chromium for tests; passed over with one clear line where there is none, unless the services are required. */

import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const PROGRAM = '/usr/bin/chromium';

/** Whether browser tests run here; `what` they test is named where they don't. Throws where there is none and there must be. */
export function hasChromium(what: string): boolean {
  if (existsSync(PROGRAM)) return true;
  if (process.env.FLOORHAND_REQUIRE_SERVICES === '1') throw new Error(`no ${PROGRAM}`);
  process.stderr.write(`passed over, no ${PROGRAM}: ${what}\n`);
  return false;
}

/** A browser with a profile of its own that reaches nothing but what it is told to open. */
export function openChromium(): Promise<Browser> {
  return chromium.launch({
    executablePath: PROGRAM,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      // A name that is not this machine's own, as that of a laptop in a house's network: browsers trust it less.
      '--host-resolver-rules=MAP laptop.test 127.0.0.1',
    ],
  });
}
