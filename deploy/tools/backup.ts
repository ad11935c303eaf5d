/** Writes a backup of the store to a new file: `npm run backup -- FILE`. The bot may run meanwhile. */

import { once } from 'node:events';
import { createWriteStream } from 'node:fs';
import { link, rm } from 'node:fs/promises';
import { dataFolder, readConfig } from '../../src/server/config.ts';
import { backupLines } from '../../src/storage/backup.ts';
import { recordReader } from '../../src/storage/store.ts';
import { sayFailure } from './failure.ts';

const [file, ...more] = process.argv.slice(2);
if (file === undefined || more.length > 0) {
  console.error('npm run backup -- FILE');
  process.exit(2);
}

try {
  const { store, data } = readConfig(process.env);
  const engine = await recordReader({ url: store, folder: dataFolder(data, process.env) })();
  try {
    console.log(await write(backupLines(engine, new Date()), file));
  } finally {
    await engine.close();
  }
} catch (cause) {
  console.error(sayFailure(cause));
  process.exitCode = 1;
}

/** A file under its name is a whole one: it is written beside, and flushed, before it gets the name. */
async function write(lines: ReturnType<typeof backupLines>, name: string): Promise<string> {
  const part = `${name}.part`;
  const output = createWriteStream(part, { flags: 'wx', mode: 0o600, flush: true });
  const closed = once(output, 'close');
  try {
    await once(output, 'open');
    for (;;) {
      const { done, value } = await lines.next();
      if (done) {
        output.end();
        await closed;
        // Unlike a rename, it refuses a name that is taken.
        await link(part, name);
        await rm(part);
        return `${name}: ${value.records} records, ${value.kept} values`;
      }
      if (!output.write(`${value}\n`)) await once(output, 'drain');
    }
  } catch (cause) {
    output.destroy();
    const { code, syscall } = cause as NodeJS.ErrnoException;
    // A part that was there before is another's, who is at work.
    if (code !== 'EEXIST' || syscall !== 'open') await rm(part, { force: true });
    throw cause;
  }
}
