/** A project after months: fifty rooms and five hundred notes; a change of it stays small. */

import { describe, expect, it } from 'vitest';
import { changed, undone } from '../../src/project/history.ts';
import { bornWith, contentOf, emptyContent, projectCodec } from '../../src/project/project.ts';
import { LIMITS } from '../../src/project/project-limits.ts';
import { ID, OWNER } from './projects.ts';

const stamp = { by: OWNER, via: 'terminal:one', at: 1000 };

function large() {
  const rooms = Array.from({ length: LIMITS.rooms }, (_, i) => ({
    name: `room ${i}`,
    text: `12'6 1/2" x 14'${i % 12}"`,
    notes: ['squeaks by the window', 'door swings in'],
    inScope: true,
  }));
  const log = Array.from({ length: 500 }, (_, i) => ({ text: `note ${i}`.padEnd(200, '.'), at: i }));
  return bornWith({ ...emptyContent('House'), rooms, log: log.slice(0, 499) }, { id: ID, owner: OWNER });
}

describe('a large project', () => {
  it('is kept whole, and a note more is kept as little more than the note', () => {
    const before = large();
    const size = JSON.stringify(before).length;
    const after = changed(before, { log: [...before.log, { text: 'the last', at: 500 }] }, 'note', stamp);
    expect(JSON.stringify(after).length - size).toBeLessThan(400);
    expect(projectCodec.read(JSON.parse(JSON.stringify(projectCodec.write(after))))).toEqual(after);
    expect(contentOf(undone(after, stamp)?.project ?? after)).toEqual(contentOf(before));
  });

  it('of twenty changes of a room each is little larger than the rooms', () => {
    let project = large();
    const size = JSON.stringify(project).length;
    for (let i = 0; i < LIMITS.changes; i++) {
      const rooms = project.rooms.map((room, at) => (at === i ? { ...room, text: '10 x 10 ft' } : room));
      project = changed(project, { rooms }, `room ${i}`, stamp);
    }
    expect(project.history).toHaveLength(LIMITS.changes);
    expect(JSON.stringify(project).length - size).toBeLessThan(LIMITS.changes * 400);
  });
});
