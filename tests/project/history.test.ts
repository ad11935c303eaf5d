/** Laws of changes: what takes one back restores exactly, again and again, and is no larger than what changed. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changed, newsSince, redone, undone } from '../../src/project/history.ts';
import { bornWith, type Content, contentOf, type Project, projectCodec } from '../../src/project/project.ts';
import { LIMITS } from '../../src/project/project-limits.ts';
import { applied, difference } from '../../src/project/record-format.ts';
import { flat, ID, OWNER, someContent } from './projects.ts';

const stamp = { by: OWNER, via: 'terminal:one', at: 1000 };

function written(project: Project): Project {
  return projectCodec.read(JSON.parse(JSON.stringify(projectCodec.write(project))));
}

describe('a difference', () => {
  it('makes the one of the other, both ways', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (before, after) => {
        const [one, other] = [JSON.parse(JSON.stringify(before)), JSON.parse(JSON.stringify(after))];
        const patch = difference(one, other);
        expect(patch ? applied(one, patch) : one).toEqual(other);
        const back = difference(other, one);
        expect(back ? applied(other, back) : other).toEqual(one);
      }),
    );
  });

  it('of like things is none', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(difference(value, structuredClone(value))).toBeUndefined();
      }),
    );
  });

  it('of one entry more in a long list is that entry alone', () => {
    const list = Array.from({ length: 500 }, (_, i) => ({ text: `note ${i}`, at: i }));
    expect(difference(list, [...list, { text: 'last', at: 500 }])).toEqual({
      at: 500,
      cut: 0,
      put: [{ text: 'last', at: 500 }],
    });
    expect(difference([...list, { text: 'last', at: 500 }], list)).toEqual({ at: 500, cut: 1, put: [] });
  });
});

describe('undo', () => {
  it('restores exactly, and redo makes the change again, through what is written', () => {
    fc.assert(
      fc.property(fc.array(someContent, { minLength: 1, maxLength: 8 }), (contents) => {
        const [first, ...rest] = contents;
        if (!first) return;
        const states: Content[] = [first];
        let project = bornWith(first, { id: ID, owner: OWNER });
        for (const content of rest) {
          const next = written(changed(project, content, 'changed', stamp));
          if (next.count > project.count) states.push(contentOf(next));
          project = next;
        }
        for (const before of states.slice(0, -1).reverse()) {
          project = written(undone(project, stamp)?.project ?? project);
          expect(contentOf(project)).toEqual(before);
        }
        expect(undone(project, stamp)).toBeUndefined();
        for (const after of states.slice(1)) {
          project = written(redone(project, stamp)?.project ?? project);
          expect(contentOf(project)).toEqual(after);
        }
        expect(redone(project, stamp)).toBeUndefined();
      }),
      { numRuns: 60 },
    );
  });

  it('is forgotten by a new change', () => {
    const one = changed(flat(), { name: 'Attic' }, 'renamed', stamp);
    const back = undone(one, stamp)?.project ?? one;
    expect(back.undone).toHaveLength(1);
    expect(changed(back, { name: 'Cellar' }, 'renamed', stamp).undone).toEqual([]);
  });

  it('keeps the last changes only, and little of them', () => {
    let project = flat();
    for (let i = 0; i < 60; i++) project = changed(project, { name: `Flat ${i}` }, 'renamed', stamp);
    expect(project.history).toHaveLength(LIMITS.changes);
    expect(project.history.at(-1)?.no).toBe(60);
    for (let i = 0; i < 60; i++)
      project = changed(project, { picks: { plank: `${i}`.padEnd(400, 'x') }, log: bigLog(i) }, 'big', stamp);
    expect(JSON.stringify(project.history).length).toBeLessThan(LIMITS.changesSize + 60_000);
  });

  it('a change of nothing is no change', () => {
    expect(changed(flat(), { name: 'Upstairs flat' }, 'renamed', stamp)).toMatchObject({ count: 0, history: [] });
  });

  it('what is said ends at a whole character', () => {
    const { history } = written(changed(flat(), { name: 'x' }, `${'a'.repeat(LIMITS.note - 1)}🪵`, stamp));
    expect(history[0]?.said).toBe('a'.repeat(LIMITS.note - 1));
  });
});

function bigLog(seed: number) {
  return Array.from({ length: 20 }, (_, i) => ({ text: `${seed} ${i}`.padEnd(900, '.'), at: i }));
}

describe('news', () => {
  it('are the changes from other accounts since the last look, taken back ones too', () => {
    const other = { ...stamp, via: 'discord:two', at: 2000 };
    let project = changed(flat(), { name: 'One' }, 'first', stamp);
    const seen = project.count;
    project = changed(project, { name: 'Two' }, 'second', other);
    project = changed(project, { name: 'Three' }, 'third', stamp);
    expect(newsSince(project, seen, stamp.via)).toEqual([{ said: 'second', at: 2000, takenBack: false }]);
    const back = undone(project, other)?.project ?? project;
    expect(newsSince(back, seen, stamp.via).map(({ said, takenBack }) => [said, takenBack])).toEqual([
      ['second', false],
      ['third', true],
    ]);
    expect(newsSince(back, back.count, stamp.via)).toEqual([]);
  });
});
