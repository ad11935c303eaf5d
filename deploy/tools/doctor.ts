/** Looks at everything that the bot needs: `npm run doctor`; --online asks Discord and Slack too, --json is for programs. */

import { secretsOf } from '../../src/server/config.ts';
import { findings } from '../../src/server/doctor.ts';
import { exitCodeOf, findingsText } from '../../src/server/doctor-machine.ts';
import { withoutSecrets } from '../../src/server/standard-error.ts';

const words = process.argv.slice(2);
const unknown = words.filter((word) => word !== '--online' && word !== '--json');
if (unknown.length > 0) {
  console.error(`${unknown.join(' ')} is not known. npm run doctor -- [--online] [--json]`);
  process.exitCode = 2;
} else {
  const terms = { node: process.versions.node, now: Date.now, online: words.includes('--online') };
  const found = await findings(process.env, terms);
  const text = words.includes('--json') ? `${JSON.stringify(found, null, 1)}\n` : findingsText(found);
  process.stdout.write(withoutSecrets(text, secretsOf(process.env)));
  process.exitCode = exitCodeOf(found);
}
