/** Files that are written whole by the program, each marked as such in its first line. */

import { commands } from '../../commands/all.ts';
import { manifestYaml } from '../../src/platforms/slack/register.ts';
import { licenceLines, licensed, lockFile } from './licences.ts';
import { nearWordsFile } from './near-words.ts';
import { exampleFile } from './settings-listed.ts';

export interface GeneratedFile {
  /** From the root of the repository. */
  readonly path: string;
  readonly text: string;
}

const MARK =
  'Written by npm run generate from the commands: change src/platforms/slack/register.ts and src/text/chat-text.ts instead.';

/** Every such file, as it would be written now. */
export function generatedFiles(): readonly GeneratedFile[] {
  return [
    {
      path: '.env.example',
      text: exampleFile('Written by npm run generate from the settings: change src/server/environment.ts instead.'),
    },
    {
      path: 'src/hazards/near-words.ts',
      text: nearWordsFile(
        'Written by npm run generate from the lexicons and a word list: change deploy/tools/near-words.ts instead.',
      ),
    },
    {
      path: 'deploy/licences.txt',
      text: `Written by npm run generate from package-lock.json: what the product is installed with, on any platform.\n${licenceLines(licensed(lockFile()))}`,
    },
    {
      path: 'deploy/slack-manifest.yaml',
      text: `# ${MARK}\n# Socket Mode: no address is needed.\n${manifestYaml(commands)}`,
    },
    {
      path: 'deploy/slack-manifest-http.yaml',
      text: `# ${MARK}\n# HTTP: put your own address in place of https://floorhand.example.\n${manifestYaml(commands, 'https://floorhand.example')}`,
    },
  ];
}
