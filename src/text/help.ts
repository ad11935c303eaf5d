/** The words of help. */

export const HELP = {
  headline: (commands: number) => `${commands} commands; type “help planks” for one of them.`,
  about: (name: string, summary: string) => `${name}: ${summary}.`,
  title: 'Commands',
  columns: ['Command', 'What it answers', 'Type for instance'],
  options: 'Options',
  optionColumns: ['Option', 'What to tell', 'If not told', 'For instance'],
  needed: 'needed',
  examples: 'Examples',
  grammar:
    'Type “option: value” pairs in any order with commas between them; what comes first without a name goes to the first option. Lengths as you write them: 12\'6", 12.5 ft, 3,80 m, 3800 mm.',
  unknown: (name: string, near: string) => ({
    option: 'command',
    got: name,
    expected: `There is no command “${name}”; the nearest is “${near}”.`,
    fix: near,
  }),
} as const;
