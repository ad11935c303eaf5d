/** A herringbone as people type it, with or without a border: `herringbone`, `herringbone with a border of 2`. */

/** `border`: courses of boards along the walls. */
export interface ToldHerringbone {
  readonly name: 'herringbone';
  readonly border: number;
}

export const HERRINGBONE = 'herringbone';

const NUMBERS: Readonly<Record<string, number>> = { one: 1, two: 2, three: 3, four: 4 };
const FORM =
  /^herring[- ]?bones?(?: pattern)?(?:[ ,:+]+(?:with |and |plus )?(?<no>no |without (?:a )?)?(?:an? )?(?:(?<before>one|two|three|four|[0-4])[ -]*)?(?:(?:boards?|courses?|rows?|planks?)[ -])?(?:wide )?border(?:,? (?:of |x )?(?<after>one|two|three|four|[0-4])(?: (?:boards?|courses?|rows?|planks?))?(?: wide)?)?)?$/;

/** Reads plain, lower-case text; undefined when it is no herringbone. */
export function readHerringbone(plain: string): ToldHerringbone | undefined {
  const found = FORM.exec(plain);
  if (!found) return undefined;
  const { no, before, after } = found.groups ?? {};
  const told = after ?? before;
  if (no !== undefined || !plain.includes('border')) return { name: HERRINGBONE, border: 0 };
  return { name: HERRINGBONE, border: told === undefined ? 1 : (NUMBERS[told] ?? Number(told)) };
}
