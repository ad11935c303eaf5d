/** An orderly shutdown with time limits: what takes requests ends before what they need. Also the signals that start it. */

import type { LogPart } from './logger.ts';

export interface Ending {
  /** Closed in the order of the stages; within a stage all at once. `hurry` is called when a stage takes long. */
  add(stage: Stage, part: LogPart, close: () => Promise<unknown>, hurry?: () => unknown): void;
  /** Whether the end has begun. */
  begun(): boolean;
  /** Closes all; whether all of it ended in time. The second call gives the first one's end. */
  end(): Promise<boolean>;
}

type Stage = 'takes' | 'works' | 'keeps';

/** Milliseconds from the begin by which a stage is hurried, and given up. All fit in the ten seconds that supervisors wait. */
const TIMES: Readonly<Record<Stage, { readonly hurry: number; readonly over: number }>> = {
  takes: { hurry: 3_500, over: 7_000 },
  works: { hurry: 7_200, over: 8_000 },
  keeps: { hurry: 8_500, over: 9_300 },
};
const STAGES = ['takes', 'works', 'keeps'] as const;

interface EndingTerms {
  /** Milliseconds that only go forward. */
  passed(): number;
  wait(milliseconds: number): Promise<void>;
  /** Told of each part that ended, did not end in time, or failed. */
  given(part: LogPart, how: 'ended' | 'late', milliseconds: number): void;
  fault(cause: unknown): void;
}

/** An end that has not begun. */
export function endingWith({ passed, wait, given, fault }: EndingTerms): Ending {
  const closing: { stage: Stage; part: LogPart; close: () => Promise<unknown>; hurry?: () => unknown }[] = [];
  let ended: Promise<boolean> | undefined;

  async function endStage(stage: Stage, began: number): Promise<boolean> {
    const here = closing.filter((one) => one.stage === stage);
    const left = new Set(here);
    const { hurry, over } = TIMES[stage];
    const all = Promise.all(
      here.map(async (one) => {
        try {
          await one.close();
        } catch (cause) {
          fault(cause);
        }
        left.delete(one);
        given(one.part, 'ended', passed() - began);
      }),
    );
    const until = (end: number): Promise<unknown> => Promise.race([all, wait(Math.max(0, end - (passed() - began)))]);
    await until(hurry);
    for (const one of left) await Promise.race([Promise.resolve(one.hurry?.()).catch(fault), wait(200)]);
    if (left.size > 0) await until(over);
    for (const { part } of left) given(part, 'late', passed() - began);
    return left.size === 0;
  }

  return {
    add: (stage, part, close, hurry) => void closing.push({ stage, part, close, ...(hurry ? { hurry } : {}) }),
    begun: () => ended !== undefined,
    end() {
      ended ??= (async () => {
        const began = passed();
        let whole = true;
        for (const stage of STAGES) whole = (await endStage(stage, began)) && whole;
        return whole;
      })();
      return ended;
    },
  };
}

// What asks the process to end: a signal, at once when it comes twice, or a fault that nobody caught.

/** Milliseconds from the first signal to the end, whatever is not done by then. */
const LONGEST = 9_800;

/** Resolves with the first of them; `code` is the exit code that it calls for. */
export function firstSignal(fault: (cause: unknown) => void): { readonly requested: Promise<void>; code(): number } {
  let code = 0;
  const requested = new Promise<void>((resolve) => {
    const end = (): void => {
      setTimeout(() => process.exit(code === 0 ? 1 : code), LONGEST).unref();
      resolve();
    };
    const numbers = { SIGINT: 130, SIGTERM: 143 } as const;
    for (const signal of ['SIGINT', 'SIGTERM'] as const) {
      let times = 0;
      process.on(signal, () => {
        times += 1;
        if (times > 1) process.exit(numbers[signal]);
        end();
      });
    }
    const lost = (cause: unknown): void => {
      code = 1;
      fault(cause);
      end();
    };
    process.on('uncaughtException', lost);
    process.on('unhandledRejection', lost);
  });
  return { requested, code: () => code };
}
