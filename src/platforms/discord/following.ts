/** The answers of an ask as they come: the latest, and when the first and the last have come. */

import type { Answer } from '../../chat/pipeline.ts';

export interface Following {
  /** The latest so far. */
  latest(): Answer | undefined;
  ended(): boolean;
  /** Resolves with the first answer, or the end. */
  readonly first: Promise<void>;
  readonly end: Promise<void>;
}

/** Follows a stream that never throws (bot/answer catches every fault); `onAnswer` is told of each as it comes. */
export function following(answers: AsyncIterable<Answer>, onAnswer: (answer: Answer) => void = () => {}): Following {
  let latest: Answer | undefined;
  let ended = false;
  let came: () => void = () => {};
  const first = new Promise<void>((resolve) => {
    came = resolve;
  });
  const end = (async () => {
    try {
      for await (const one of answers) {
        latest = one;
        came();
        onAnswer(one);
      }
    } finally {
      ended = true;
      came();
    }
  })();
  return { latest: () => latest, ended: () => ended, first, end };
}
