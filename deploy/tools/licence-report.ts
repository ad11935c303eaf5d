/** Prints what the product is installed with, and fails where a licence is not among those allowed: `npm run licences`. */

import { forbidden, licenceLines, licensed, lockFile } from './licences.ts';

const all = licensed(lockFile());
process.stdout.write(licenceLines(all));
const wrong = forbidden(all);
if (wrong.length > 0) {
  process.stderr.write(`Not allowed, see ALLOWED and READ in deploy/tools/licences.ts:\n${licenceLines(wrong)}`);
  process.exitCode = 1;
}
