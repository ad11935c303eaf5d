/** The words of the safety answer. */

export const SAFETY = {
  headline: (task: string, cautions: number) => `Before ${task}: ${cautions} things that can hurt you.`,
  first:
    'Local code, makers’ instructions and licensed trades come first. Limits for workers are given as benchmarks. If something does not look right, stop and ask.',
} as const;
