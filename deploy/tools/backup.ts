/** Writes a backup of the store to a new file: `npm run backup -- FILE`. The bot may run meanwhile. */

import { dataFolder, readConfig } from '../../src/server/config.ts';
import { backupLines, writeBackup } from '../../src/storage/backup.ts';
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
    const { records, kept } = await writeBackup(backupLines(engine, new Date()), file);
    console.log(`${file}: ${records} records, ${kept} values`);
  } finally {
    await engine.close();
  }
} catch (cause) {
  console.error(sayFailure(cause));
  process.exitCode = 1;
}
