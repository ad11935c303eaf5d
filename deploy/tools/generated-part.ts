/** Parts of a page that a program writes: each stands between its own two marks, and the rest of the page is left alone. */

export interface Part {
  /** The name in its mark: `<!-- generated: name -->` … `<!-- /generated -->`. */
  readonly name: string;
  /** Markdown, without the marks. */
  readonly text: string;
}

/** The page with every part written anew. Throws when a part's marks are missing, doubled or nested, or a mark names no part. */
export function withParts(page: string, parts: readonly Part[]): string {
  const names = [...page.matchAll(/<!-- generated: (.*?) -->/g)].map((mark) => mark[1]);
  for (const name of names) {
    if (!parts.some((part) => part.name === name)) throw new Error(`nothing writes the part “${name}”`);
  }
  return parts.reduce((text, part) => {
    const mark = `<!-- generated: ${part.name} -->`;
    const [before, inside, more] = text.split(mark);
    const end = inside?.indexOf('<!-- /generated -->') ?? -1;
    if (before === undefined || inside === undefined || more !== undefined || end < 0) {
      throw new Error(`the part “${part.name}” needs its two marks, once`);
    }
    if (inside.slice(0, end).includes('<!-- generated:')) throw new Error(`the part “${part.name}” is not closed`);
    return `${before}${mark}\n\n${part.text.trim()}\n\n${inside.slice(end)}`;
  }, page);
}

/** The names of the parts that the page holds otherwise than they would be written now. Throws as withParts does. */
export function staleParts(page: string, parts: readonly Part[]): readonly string[] {
  const current = withParts(page, parts);
  return current === page ? [] : parts.filter((part) => !page.includes(section(part))).map(({ name }) => name);
}

function section({ name, text }: Part): string {
  return `<!-- generated: ${name} -->\n\n${text.trim()}\n\n<!-- /generated -->`;
}
