/** Who sees and changes what of a shared project: every role, every scope, a member and a link, put through every command. */

import { describe, expect, it } from 'vitest';
import type { Content } from '../../src/project/project.ts';
import { PERMISSIONS } from '../../src/project/project-limits.ts';
import { HELPING, type Helping, SHARED, type Shared } from '../../src/project/shares.ts';
import {
  CANARY,
  type Canary,
  content,
  FEW_LINES,
  IN_A_WEEK,
  LINES,
  OWNERS_ALONE,
  SHOWS,
  world,
} from './access-cast.ts';
import { answersTo, problemsOf } from './asked.ts';

type Part = Exclude<keyof Content, 'state'>;

/** What each role may do, said once more: the product's own table is not asked. */
const MAY: Readonly<Record<Helping, readonly (typeof PERMISSIONS)[number][]>> = {
  look: ['look'],
  tick: ['look', 'tick', 'note'],
  measure: ['look', 'tick', 'note', 'measure', 'keep'],
};

/** What each scope may touch. */
const TOUCHES: Readonly<Record<Shared, readonly Part[]>> = {
  project: ['rooms', 'picks', 'kept', 'shopping', 'stages', 'log', 'found', 'measures'],
  shopping: ['shopping', 'log'],
  guide: ['rooms', 'measures', 'log'],
  cuts: ['rooms', 'measures', 'log'],
  tearout: ['rooms', 'measures', 'log'],
  checklist: ['stages', 'rooms', 'measures', 'log'],
};

/** Parts that need more of a role than to tick. */
const MEASURED: readonly Part[] = ['rooms', 'picks', 'kept', 'measures'];

const ofRole = (role: Helping, part: Part): boolean => role === 'measure' || !MEASURED.includes(part);

/** Lines that must be answered, and with a tick change something. */
const ANSWERED: Readonly<Record<Shared, readonly string[]>> = {
  project: ['project show', 'project sheets', 'planks', 'project found'],
  shopping: ['project shopping', 'project sheets'],
  guide: ['project sheets', 'project log'],
  cuts: ['project sheets', 'project log'],
  tearout: ['project sheets', 'project log'],
  checklist: ['project progress', 'project sheets'],
};
const TICKED: Readonly<Partial<Record<Shared, string>>> = {
  project: 'project shopping bought 1 carton planks',
  shopping: 'project shopping bought 1 carton planks',
  checklist: `project progress done flat ${CANARY.two}`,
};

const STANDINGS = SHARED.flatMap((what) =>
  HELPING.filter((role) => what !== 'shopping' || role !== 'measure').flatMap((role) =>
    (['link', 'member'] as const).map((to) => ({ what, role, to })),
  ),
);

const ofRoom = (what: Shared) => (what === 'guide' || what === 'cuts' ? { room: CANARY.one } : {});

/** Parts of a project that are written otherwise than before. */
function changedParts(before: Readonly<Record<string, unknown>>, after: Readonly<Record<string, unknown>>): string[] {
  const book = ['count', 'history', 'undone', 'shares', 'version'];
  return Object.keys(after).filter(
    (key) => !book.includes(key) && JSON.stringify(before[key]) !== JSON.stringify(after[key]),
  );
}

describe.each(STANDINGS)('$what to $role, by a $to', ({ what, role, to }) => {
  // Whoever may only look, and whoever may measure, are asked for every scope; whoever ticks, where there is something to tick.
  if (role !== 'tick' || TICKED[what] !== undefined)
    it('shows and changes what was shared, and nothing else, whatever is asked', async () => {
      const here = await world();
      const asker = await here.give({ what, role, to, until: IN_A_WEEK, ...ofRoom(what) });
      const back = here.snapshot();
      const before = here.record();
      const hidden = (Object.keys(CANARY) as Canary[]).filter((part) => !SHOWS[what].includes(part));
      const others = JSON.stringify((before.shares as readonly object[]).slice(0, 1));
      // Of those who see the same, whoever may do most is asked everything.
      const most = to === 'member' && role === (what === 'shopping' ? 'tick' : 'measure');
      for (const line of most ? LINES : FEW_LINES) {
        back();
        const answers = await answersTo(line, { asker, ports: here.ports });
        // What they typed themselves is said back.
        const said = JSON.stringify(
          answers.map((one) =>
            'problems' in one
              ? { ...one, problems: one.problems.map(({ expected, fix }) => ({ expected, fix })) }
              : one,
          ),
        );
        const own = (word: string): boolean => line.toLowerCase().includes(word);
        for (const word of [...hidden.map((part) => CANARY[part]), ...OWNERS_ALONE])
          if (!own(word)) expect(said.includes(word) && `${line} tells ${word}`).toBe(false);
        const after = here.record();
        const touched = TOUCHES[what].filter((part) => ofRole(role, part));
        for (const part of changedParts(before, after))
          expect(role !== 'look' && touched.some((one) => one === part) ? '' : `${line} changes ${part}`).toBe('');
        expect(JSON.stringify((after.shares as readonly object[]).slice(0, 1))).toBe(others);
      }
    });

  it('answers what was shared, and lets it be ticked by whoever may', async () => {
    const here = await world();
    const asker = await here.give({ what, role, to, until: IN_A_WEEK, ...ofRoom(what) });
    for (const line of ANSWERED[what]) {
      if (to === 'link' && !/^project (?:sheets|shopping|progress|log)/.test(line)) continue;
      const [answer] = (await answersTo(line, { asker, ports: here.ports })).slice(-1);
      expect(answer && 'headline' in answer ? '' : `${line}: ${JSON.stringify(answer)}`).toBe('');
    }
    const line = TICKED[what];
    if (line === undefined) return;
    const before = here.record();
    const [answer] = (await answersTo(line, { asker, ports: here.ports })).slice(-1);
    expect(changedParts(before, here.record())).toHaveLength(role === 'look' ? 0 : 1);
    if (role === 'look') expect(answer && problemsOf(answer)).toHaveLength(1);
    else expect(JSON.stringify(here.record())).toContain('"by":{"helper":"2"}');
  });

  it('lets the desk change a part only by a right, and only within what was shared', async () => {
    const here = await world();
    const asker = await here.give({ what, role, to, until: IN_A_WEEK, ...ofRoom(what) });
    const back = here.snapshot();
    const { rooms } = content();
    const other = (one: (typeof rooms)[number]) => ({ ...one, text: '4 x 5 ft' });
    const edits: readonly (readonly [Part, Partial<Content>])[] = [
      ['name', { name: 'stolen' }],
      ['rooms', { rooms: rooms.map((one, i) => (i === 0 ? other(one) : one)) }],
      ['picks', { picks: {} }],
      ['kept', { kept: [] }],
      ['shopping', { shopping: { bought: [], opened: {} } }],
      ['stages', { stages: { marks: [] } }],
      ['spend', { spend: { entries: [] } }],
      ['log', { log: [] }],
      ['found', { found: [] }],
      ['measures', { measures: { open: [], told: [] } }],
    ];
    for (const permission of PERMISSIONS) {
      for (const [part, parts] of edits) {
        back();
        const done = await here.access(asker).change(permission, () => ({ parts, said: 'x', result: 1 }));
        const allowed = MAY[role].includes(permission) && TOUCHES[what].includes(part) && ofRole(role, part);
        expect([permission, part, done.ok]).toEqual([permission, part, allowed]);
        if (!done.ok) expect(done.why).toBe('not-allowed');
      }
    }
    if (what !== 'guide' && what !== 'cuts') return;
    const beyond = { rooms: rooms.map((one, i) => (i === 1 ? other(one) : one)) };
    const done = await here.access(asker).change('look', () => ({ parts: beyond, said: 'x', result: 1 }));
    expect(done).toEqual({ ok: false, why: 'not-allowed' });
  });
});

it('shows the owner every word of it', async () => {
  const here = await world();
  const said = [];
  const asker = { platform: 'discord', id: '100000000000000001' } as const;
  for (const line of [
    'project show',
    'project spend',
    'project log',
    'project found',
    'project shopping',
    'project share',
  ])
    said.push(JSON.stringify(await answersTo(line, { asker, ports: here.ports })));
  const all = said.join();
  for (const word of [...Object.values(CANARY), 'spendcanary', '123.45', '7,654', 'othercanary'])
    expect(all.includes(word) ? '' : word).toBe('');
});
