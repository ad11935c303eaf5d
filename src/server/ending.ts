/** An orderly shutdown with time limits: what accepts requests ends before what they need. Also the signals that start it. */

import type { LogPart } from './logger.ts';

export interface Ending {
  /** Stages close in order; the parts of a stage close together. `hurry` is called if a stage takes long. */
  add(stage: Stage, part: LogPart, close: () => Promise<unknown>, hurry?: () => unknown): void;
  begun(): boolean;
  /** Closes everything; false if something didn't close in time. Further calls return the same promise. */
  end(): Promise<boolean>;
}

type Stage = 'takes' | 'works' | 'keeps';

/**
 * Milliseconds after the start when a stage is hurried, and when it is given up. All fit into the ten seconds that
 * supervisors wait.
 */
const TIMES: Readonly<Record<Stage, { readonly hurry: number; readonly over: number }>> = {
  takes: { hurry: 3_500, over: 7_000 },
  works: { hurry: 7_200, over: 8_000 },
  keeps: { hurry: 8_500, over: 9_300 },
};
const STAGES = ['takes', 'works', 'keeps'] as const;

interface EndingTerms {
  /** Milliseconds from a monotonic clock. */
  passed(): number;
  wait(milliseconds: number): Promise<void>;
  /** Called for each part that closed, was late, or failed. */
  given(part: LogPart, how: 'ended' | 'late', milliseconds: number): void;
  fault(cause: unknown): void;
}

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

// What ends the process: a signal (immediately on the second one) or an uncaught error.

/** Milliseconds from the first signal to the exit, whatever isn't done by then. */
const LONGEST = 9_800;

/** Resolves with the first of them; `code` is the matching exit code. */
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
