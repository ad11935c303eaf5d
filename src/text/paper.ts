/** The words on printed sheets that are on no answer. */

export const PAPER = {
  all: 'job sheets',
  title: (project: string, sheet: string) => `${project}: ${sheet}`,
  page: (no: number, all: number) => `${no} of ${all}`,
  pageHead: 'Page',
  none: 'Nothing to print yet.',
} as const;
