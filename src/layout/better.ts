/** Which of two plans of a floor is the better. */

import type { Plan } from './floor.ts';

/** True when `plan` breaks fewer rules than `other`, looks last among them, or as many with fewer planks. */
export function isFewer(plan: Plan, other: Plan): boolean {
  const [one, two] = [score(plan), score(other)];
  const i = one.findIndex((value, k) => value !== two[k]);
  return i >= 0 && (one[i] ?? 0) < (two[i] ?? 0);
}

function score({ broken, planks }: Plan): readonly number[] {
  const looks = broken.filter(({ rule }) => rule === 'pattern').length;
  return [broken.length - looks, looks, planks];
}
