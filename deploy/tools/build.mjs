// Builds the JavaScript into dist/, from nothing, when a source has changed since; does nothing when none has.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { copyFileSync, existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const stamp = join(root, 'dist', '.stamp');
const places = [
  'src',
  'commands',
  'deploy/tools',
  'tests',
  'tsconfig.json',
  'tsconfig.build.json',
  'tsconfig.browser.json',
  'package-lock.json',
];

function files(path) {
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path, { withFileTypes: true }).flatMap((entry) => {
    const inner = join(path, entry.name);
    return entry.isDirectory() || /\.(ts|css|svg)$/.test(entry.name) ? files(inner) : [];
  });
}

const hash = createHash('sha256').update(process.version);
for (const file of places.flatMap((place) => files(join(root, place))).sort()) {
  const { mtimeMs, size } = statSync(file);
  hash.update(`${file} ${mtimeMs} ${size}\n`);
}
const state = hash.digest('hex');
if (existsSync(stamp) && readFileSync(stamp, 'utf8') === state) process.exit(0);

rmSync(join(root, 'dist'), { recursive: true, force: true });
const compiler = join(dirname(createRequire(import.meta.url).resolve('typescript/package.json')), 'bin', 'tsc');
function compile(...options) {
  const { status } = spawnSync(process.execPath, [compiler, ...options], { stdio: 'inherit' });
  if (status !== 0) process.exit(status ?? 1);
}
compile('-p', join(root, 'tsconfig.build.json'));
// The page's script knows the browser and nothing of Node.
compile('-p', join(root, 'tsconfig.browser.json'), '--noEmit', 'false');
for (const name of ['page.css', 'icon.svg']) {
  copyFileSync(join(root, 'src', 'platforms', 'web', name), join(root, 'dist', 'src', 'platforms', 'web', name));
}
const { status } = spawnSync(process.execPath, [join(root, 'dist', 'deploy', 'tools', 'reader-model.js')], {
  stdio: 'inherit',
});
if (status !== 0) process.exit(status ?? 1);
writeFileSync(stamp, state);
