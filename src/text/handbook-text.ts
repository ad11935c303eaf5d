/** The words around the handbook's entries. */

export const HANDBOOK = {
  unknown: 'The handbook has nothing by that name. Type “handbook” for the list.',
  all: (count: number) => `${count} questions and answers about replacing a floor.`,
  several: (count: number) => `${count} answers have that word.`,
  topic: (topic: string, titles: readonly string[]) =>
    `${topic.charAt(0).toUpperCase()}${topic.slice(1)}: ${titles.join(' ')}`,
  asks: (question: string) => `To be exact: ${question}`,
  maybe: (titles: readonly string[]) => `Or did you mean: ${titles.join(' ')}`,
  more: 'More on this',
  figures: 'Figures',
  columns: ['Figure', 'Value', 'Standing'],
} as const;
