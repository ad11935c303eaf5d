/** Edges of a floor as pieces, profile by profile: each profile is cut from sticks of its own. */

import type { ToldStairs } from '../../../src/input/rooms/parse-doorways.ts';
import { type Beyond, type EdgeDoorway, type Profile, profileFor } from '../../../src/trim/pieces.ts';
import type { StickPlan, StickTask } from '../../../src/trim/sticks.ts';
import type { Length } from '../../../src/units/length.ts';
import type { SticksAsk } from './ask.ts';
import { stockOf } from './pieces.ts';
import { stickPlans } from './plans.ts';

/** What `trim edges` reads. */
export interface EdgesAsk extends SticksAsk {
  readonly doorways: readonly EdgeDoorway[];
  readonly floor: Length;
  readonly level: Length;
  readonly clearance: Length;
  readonly stairs: ToldStairs;
}

export interface Edge {
  readonly name: string;
  readonly profile: Profile;
  readonly length: Length;
  readonly why: Exclude<Profile, 'end cap'> | Beyond;
  readonly doorway: EdgeDoorway | undefined;
}

/** A profile's sticks. */
export interface ProfilePlan {
  readonly profile: Profile;
  readonly task: StickTask;
  readonly plan: StickPlan;
}

export function edgesOf({ doorways, stairs, floor, level }: EdgesAsk): readonly Edge[] {
  const names = doorways.map(({ name }, i) => {
    const before = doorways.slice(0, i).filter((one) => one.name === name).length;
    return before === 0 ? name : `${name} (${before + 1})`;
  });
  return [
    ...doorways.map((doorway, i): Edge => {
      const profile = profileFor(doorway, floor, level);
      const why = profile === 'end cap' ? doorway.beyond : profile;
      return { name: names[i] ?? '', profile, length: doorway.width, why, doorway };
    }),
    ...Array.from(
      { length: stairs.count },
      (_, i): Edge => ({
        name: `step ${i + 1}`,
        profile: 'nosing',
        length: stairs.width,
        why: 'nosing',
        doorway: undefined,
      }),
    ),
  ];
}

/** The plans of all profiles, better and better: each yield has every profile. */
export async function* profilePlans(edges: readonly Edge[], ask: EdgesAsk): AsyncGenerator<readonly ProfilePlan[]> {
  const profiles = [...new Set(edges.map(({ profile }) => profile))];
  const plans = new Map<Profile, ProfilePlan>();
  const streams = profiles.map((profile) => {
    const pieces = edges
      .filter((edge) => edge.profile === profile)
      .map(({ name, length }) => ({ id: name, length, kerf: ask.kerf }));
    const task: StickTask = { pieces, stock: stockOf(ask), endTrim: ask['end-trim'] };
    return { profile, task, plans: stickPlans(task)[Symbol.asyncIterator]() };
  });
  for (const { profile, task, plans: stream } of streams) {
    const first = await stream.next();
    if (!first.done) plans.set(profile, { profile, task, plan: first.value });
  }
  yield [...plans.values()];
  for (const { profile, task, plans: stream } of streams) {
    for (let next = await stream.next(); !next.done; next = await stream.next()) {
      plans.set(profile, { profile, task, plan: next.value });
      yield [...plans.values()];
    }
  }
}
