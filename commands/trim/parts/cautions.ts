/** The cautions of a trim answer: those of its tasks, each once. */

import { cautionsFor, type Task } from '../../../src/figures/safety-figures.ts';
import type { Caution } from '../../../src/reply/reply.ts';
import { worded } from '../../../src/text/caution-text.ts';

export function cautionsOf(...tasks: readonly Task[]): readonly Caution[] {
  const all = worded(tasks.flatMap((task) => cautionsFor(task)));
  return all.filter(({ topic }, i) => all.findIndex((one) => one.topic === topic) === i);
}
