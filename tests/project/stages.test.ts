/** Marks of rooms and stages, what comes next, and reminders by a clock that is handed in. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  dueReminders,
  EMPTY_STAGES,
  isPast,
  type Mark,
  mark,
  nextReminder,
  progressOf,
  renameMarks,
  roomMark,
  type Stages,
  stagesSchema,
  unmark,
} from '../../src/project/project-room.ts';
import { STAGES, type Stage } from '../../src/reply/need.ts';

const HOUR = 3_600_000;
const done = (stage: Stage, room = 'bedroom', at = 0): Mark => ({ room, stage, state: 'done', at });
const all = (...marks: readonly Mark[]): Stages => marks.reduce(mark, EMPTY_STAGES);

const someMark: fc.Arbitrary<Mark> = fc
  .record({
    room: fc.constantFrom('hall', 'bedroom', 'BEDROOM'),
    stage: fc.constantFrom(...STAGES),
    state: fc.constantFrom('done', 'waiting', 'blocked', 'skipped'),
    at: fc.nat(1000),
  })
  .chain((one) => fc.nat(2000).map((until) => (one.state === 'waiting' ? { ...one, until } : one)));

describe('marks', () => {
  it('told twice are told once, and taken away they are as before', () => {
    fc.assert(
      fc.property(fc.array(someMark, { maxLength: 20 }), someMark, (marks, one) => {
        const before = all(...marks);
        const once = mark(before, one);
        expect(mark(once, one)).toEqual(once);
        expect(roomMark(once, one.room, one.stage)).toEqual(one);
        expect(unmark(once, one.room, one.stage)).toEqual(unmark(before, one.room, one.stage));
        expect(stagesSchema.parse(once)).toEqual(once);
      }),
    );
  });

  it('go with a room to its new name', () => {
    expect(roomMark(renameMarks(all(done('lay')), 'Bedroom', 'study'), 'study', 'lay')?.state).toBe('done');
  });
});

describe('what comes next', () => {
  it('is the first stage that is not done', () => {
    expect(progressOf('bedroom', EMPTY_STAGES, 0).next?.stage).toBe('clear');
    expect(progressOf('bedroom', all(done('clear'), done('tear-out')), 0).next?.stage).toBe('subfloor');
    expect(progressOf('bedroom', all(...STAGES.map((stage) => done(stage))), 0).next).toBeUndefined();
  });

  it('is after what is done; what was left behind is told', () => {
    const { next, behind } = progressOf('bedroom', all(done('clear'), done('lay')), 0);
    expect(next?.stage).toBe('transitions');
    expect(behind).toEqual(['tear-out', 'subfloor', 'flat', 'dry', 'acclimate']);
  });

  it('cartons are through once their time is over; leveller is to be checked', () => {
    const wait = (stage: Stage): Stages => all({ room: 'bedroom', stage, state: 'waiting', at: 0, until: 48 * HOUR });
    const at = (stages: Stages, stage: Stage, now: number) =>
      progressOf('bedroom', stages, now).stages.find((one) => one.stage === stage);
    expect(at(wait('acclimate'), 'acclimate', 47 * HOUR)?.state).toBe('waiting');
    const over = at(wait('acclimate'), 'acclimate', 48 * HOUR);
    expect(over?.state).toBe('over');
    expect(over && isPast(over)).toBe(true);
    const level = at(wait('flat'), 'flat', 48 * HOUR);
    expect(level && isPast(level)).toBe(false);
  });

  it('is never a stage that is past, whatever is marked', () => {
    fc.assert(
      fc.property(fc.array(someMark, { maxLength: 30 }), fc.nat(3000), (marks, now) => {
        const { next, stages, behind } = progressOf('bedroom', all(...marks), now);
        if (next) expect(isPast(next)).toBe(false);
        else expect(stages.every(isPast)).toBe(true);
        for (const stage of behind) expect(stages.find((one) => one.stage === stage)).not.toSatisfy(isPast);
      }),
    );
  });
});

describe('reminders', () => {
  const waiting = (room: string, until: number): Mark => ({ room, stage: 'acclimate', state: 'waiting', at: 0, until });

  it('come due at their time and not before, the first to end first', () => {
    const stages = all(waiting('bedroom', 20 * HOUR), waiting('hall', 10 * HOUR));
    expect(dueReminders(stages, 10 * HOUR - 1)).toEqual([]);
    expect(dueReminders(stages, 10 * HOUR).map(({ room }) => room)).toEqual(['hall']);
    expect(dueReminders(stages, 20 * HOUR).map(({ room }) => room)).toEqual(['hall', 'bedroom']);
    expect(nextReminder(stages, 0)).toBe(10 * HOUR);
    expect(nextReminder(stages, 10 * HOUR)).toBe(20 * HOUR);
    expect(nextReminder(stages, 20 * HOUR)).toBeUndefined();
  });

  it('have one key as long as the wait is the same, and another for another wait', () => {
    const key = (until: number) => dueReminders(all(waiting('Hall', until)), 100 * HOUR)[0]?.key;
    expect(key(10 * HOUR)).toBe(key(10 * HOUR));
    expect(key(10 * HOUR)).not.toBe(key(11 * HOUR));
  });

  it('fall silent when the stage is ticked off, or the room went on', () => {
    expect(dueReminders(all(waiting('hall', HOUR), done('acclimate', 'hall')), 2 * HOUR)).toEqual([]);
    expect(dueReminders(all(waiting('hall', HOUR), done('lay', 'Hall', 3 * HOUR)), 4 * HOUR)).toEqual([]);
    expect(dueReminders(all(waiting('hall', HOUR), done('dry', 'hall', 0)), 2 * HOUR)).toHaveLength(1);
  });
});
