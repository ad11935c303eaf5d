/** What asks the process to end: a signal, at once when it comes twice, or a fault that nobody caught. */

/** Milliseconds from the first signal to the end, whatever is not done by then. */
const LONGEST = 9_800;

/** Resolves with the first of them; `code` is the exit code that it calls for. */
export function firstSignal(fault: (cause: unknown) => void): { readonly asked: Promise<void>; code(): number } {
  let code = 0;
  const asked = new Promise<void>((resolve) => {
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
  return { asked, code: () => code };
}
