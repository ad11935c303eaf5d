/** What hosts the bot names only settings, files and paths that there are. */

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { settingFacts } from '../src/server/environment.ts';

function text(path: string): string {
  return readFileSync(new URL(`../${path}`, import.meta.url), 'utf8');
}

const COMPOSED = ['deploy/compose.yaml', 'deploy/compose.postgres.yaml', 'deploy/compose.redis.yaml'];
const CLUSTER = readdirSync(new URL('../deploy/kubernetes', import.meta.url)).map(
  (name) => `deploy/kubernetes/${name}`,
);
const ALL = ['deploy/Dockerfile', 'deploy/floorhand.service', 'deploy/README.md', ...COMPOSED, ...CLUSTER];

describe('what hosts the bot', () => {
  const facts = settingFacts();
  const names = new Set(facts.flatMap(({ name, secret }) => (secret ? [name, `${name}_FILE`] : [name])));

  test.each(ALL)('%s names settings that there are', (path) => {
    const given = text(path).match(/FLOORHAND_[A-Z_]*[A-Z]/g) ?? [];
    expect(given.filter((name) => !names.has(name))).toEqual([]);
  });

  test('no secret stands in a file but by the name of its own file', () => {
    const secrets = facts.filter(({ secret }) => secret).map(({ name }) => name);
    for (const path of ALL.filter((one) => !one.endsWith('README.md'))) {
      const given = secrets.filter((name) => new RegExp(`${name}(?!_)\\b`).test(text(path)));
      expect(given, path).toEqual([]);
    }
  });

  test('the image takes what the build makes, and leaves out what no image should hold', () => {
    const image = text('deploy/Dockerfile');
    const built = [...image.matchAll(/--from=build \/build\/(?:dist\/)?(\S+)/g)].map(([, name = '']) => name);
    expect(built.length).toBeGreaterThan(2);
    expect(built.map((name) => name.replace('package.json LICENSE', '')).filter((name) => !there(name))).toEqual([]);
    expect(image).toMatch(/^USER node$/m);
    expect(image).toMatch(/^ENTRYPOINT \["node", "dist\/src\/main\.js"\]$/m);
    const left = text('.dockerignore').split('\n');
    for (const name of ['.env', 'node_modules', 'deploy/secrets', '.git']) expect(left).toContain(name);
  });

  test.each(COMPOSED)('%s gives each secret that a service reads, from a file', (path) => {
    const whole = COMPOSED.map(text).join('\n');
    const read = [...text(path).matchAll(/\/run\/secrets\/([\w-]+)/g)].map(([, name = '']) => name);
    expect(read.length).toBeGreaterThan(0);
    for (const name of read) {
      expect(whole).toContain(`file: ./secrets/${name}`);
      expect(text(path)).toMatch(new RegExp(`^      - ${name}$`, 'm'));
    }
  });

  test('a pod reads only secrets that the example tells', () => {
    const given = [...text('deploy/kubernetes/secret.example.yaml').matchAll(/^ {2}([\w-]+): (?!floorhand$)/gm)];
    const read = [...text('deploy/kubernetes/deployment.yaml').matchAll(/\/run\/secrets\/floorhand\/([\w-]+)/g)];
    expect(new Set(read.map(([, name]) => name))).toEqual(new Set(given.map(([, name]) => name)));
  });

  test.each(ALL.filter((path) => !/README|secret|service\.yaml|kustom|budget|redis|postgres/.test(path)))(
    '%s lets nothing be written but data, and gives no rights',
    (path) => {
      const marks: Readonly<Record<string, readonly RegExp[]>> = {
        'deploy/Dockerfile': [/^USER node$/m, /^VOLUME \/data$/m],
        'deploy/compose.yaml': [/read_only: true/, /cap_drop: \[ALL\]/, /no-new-privileges:true/],
        'deploy/floorhand.service': [/^ProtectSystem=strict$/m, /^NoNewPrivileges=yes$/m, /^CapabilityBoundingSet=$/m],
        'deploy/kubernetes/deployment.yaml': [/readOnlyRootFilesystem: true/, /drop: \[ALL\]/, /runAsNonRoot: true/],
      };
      expect(marks[path]).toBeDefined();
      for (const mark of marks[path] ?? []) expect(text(path)).toMatch(mark);
    },
  );

  test('everything that supervises leaves the bot its ten seconds to end', () => {
    const seconds = [
      /stop_grace_period: (\d+)s/.exec(text('deploy/compose.yaml')),
      /^TimeoutStopSec=(\d+)$/m.exec(text('deploy/floorhand.service')),
      /terminationGracePeriodSeconds: (\d+)/.exec(text('deploy/kubernetes/deployment.yaml')),
    ].map((found) => Number(found?.[1]));
    for (const each of seconds) expect(each).toBeGreaterThanOrEqual(15);
  });
});

function there(name: string): boolean {
  return (
    name === '' || ['src', 'commands', 'scripts'].includes(name) || existsSync(new URL(`../${name}`, import.meta.url))
  );
}
