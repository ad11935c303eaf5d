/** The words of an answer written to a file. */

export const SHEET = {
  assumed: 'How it was read',
  cautions: 'Take care',
  sources: 'Sources',
  text: 'Everything',
} as const;
