/** The words of a length answer. */

export const NOT_A_TICK = 'The result was rounded once, to 1/8128 in.';

export const TAPE = {
  about: (figure: string, onTape: string) => `${figure}, about ${onTape}`,
  imperial: 'Feet and inches',
  inches: 'Inches',
  metric: 'Metric',
  millimetres: 'Millimetres',
  squareFeet: 'Square feet',
  squareMetres: 'Square metres',
} as const;
