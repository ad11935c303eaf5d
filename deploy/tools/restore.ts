/** Puts a backup back: `npm run restore -- FILE`; into a store that holds something with `--over`, or past a damaged one. */

import { dataFolder, readConfig } from '../../src/server/config.ts';
import { checkBackup, linesIn, restoreLines } from '../../src/storage/backup.ts';
import { setAsideDamaged } from '../../src/storage/look.ts';
import { opener } from '../../src/storage/store.ts';
import { sayFailure } from './failure.ts';

const words = process.argv.slice(2);
const over = words.includes('--over');
const [file, ...more] = words.filter((word) => word !== '--over');
if (file === undefined || more.length > 0) {
  console.error('npm run restore -- FILE [--over]');
  process.exit(2);
}

try {
  const { store, data } = readConfig(process.env);
  // Read whole before anything is put: a file that is cut short must not leave half a store.
  const { records, kept } = await checkBackup(linesIn(file));
  const folder = dataFolder(data, process.env);
  const aside = store === '' ? await setAsideDamaged(folder) : undefined;
  if (aside !== undefined) console.log(`The damaged data file is now in ${aside}.`);
  const engine = await opener({ url: store, folder, use: 'alone' })();
  try {
    if (!over && !(await engine.empty()))
      throw new Error('The store holds something. To replace what has the same name, add --over.');
    await restoreLines(engine, linesIn(file));
  } finally {
    await engine.close();
  }
  console.log(`${file}: ${records} records, ${kept} values put back`);
} catch (cause) {
  console.error(sayFailure(cause));
  process.exitCode = 1;
}
