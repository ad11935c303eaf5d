/** The words of the safety answer. */

/** Tasks that are no deed by their bare name. */
const DEEDS: Readonly<Record<string, string>> = { subfloor: 'subfloor work', leak: 'you clean up a leak' };

export const SAFETY = {
  headline: (task: string, cautions: number) =>
    `Before ${DEEDS[task] ?? task}: ${cautions === 1 ? 'one thing' : `${cautions} things`} that can hurt you.`,
  first:
    'Local code, makers’ instructions and licensed trades come first. Limits for workers are given as benchmarks. If something does not look right, stop and ask.',
  noiseTitle: 'Noise in your day',
  noiseColumns: ['Noise', 'Hours', 'Level', 'Recommended at most', 'Share', 'Employer’s limit', 'Share of it'],
  level: (level: string) => `${level} dBA`,
  uncounted: 'not counted below 80 dBA',
  recommended: (percent: string, times: string | undefined) =>
    times === undefined
      ? `In all ${percent} of what NIOSH recommends in a day (85 dBA for 8 h).`
      : `In all ${times} times what NIOSH recommends in a day (85 dBA for 8 h): ${percent}.`,
  dose: (percent: string, level: string) =>
    `By OSHA’s rule for employers, which allows more, ${percent}, as loud as ${level} dBA for 8 h.`,
  quiet: 'Nothing in this day is loud enough to count.',
  overBoth: 'Over both: cut the hours, use quieter tools, and wear muffs or plugs all the time.',
  over: 'Over what is recommended: cut the hours, use quieter tools, and wear muffs or plugs all the time.',
  under: 'Within both: still wear muffs or plugs whenever you must raise your voice at arm’s length.',
  tooLoud: 'Above 115 dBA no steady noise is allowed for any time: use another tool.',
} as const;
