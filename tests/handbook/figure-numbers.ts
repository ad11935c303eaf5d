/** The numbers in a quoted figure's words, in their order: '3 1/4 in' is 3.25, '1,100 °F' is 1100. */

import type { QuotedFigure } from '../../src/figures/cited.ts';

const NUMBER = /(\d+) (\d+)\/(\d+)|(\d+)\/(\d+)|\d+(?:,\d{3})*(?:\.\d+)?/g;

export function figureNumbers(
  figures: readonly QuotedFigure[],
  id: string,
  units: 'us' | 'metric' = 'us',
): readonly number[] {
  const words = figures.find((figure) => figure.id === id)?.[units];
  if (words === undefined) throw new Error(`No figure ${id} in ${units}`);
  return [...words.replace(/m[²³]/g, 'm').matchAll(NUMBER)].map(([all, whole, top, bottom, over, under]) => {
    if (whole !== undefined) return Number(whole) + Number(top) / Number(bottom);
    if (over !== undefined) return Number(over) / Number(under);
    return Number(all.replaceAll(',', ''));
  });
}
