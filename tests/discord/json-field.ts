/** Fields of JSON that nobody has vouched for. */

/** The field of an object; undefined where there is none. */
export function field(value: unknown, name: string): unknown {
  return typeof value === 'object' && value !== null ? Object.getOwnPropertyDescriptor(value, name)?.value : undefined;
}

/** A list as it is; anything else is empty. */
export function list(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

/** The text components of a message in order, read as one. */
export function textOf(message: unknown): string {
  return list(field(message, 'components'))
    .flatMap((one) => {
      const content = field(one, 'content');
      return typeof content === 'string' ? [content] : [];
    })
    .join('\n');
}

/** Every custom id of a message, a label or placeholder with each. */
export function buttonsOf(message: unknown): readonly { readonly id: string; readonly label: string }[] {
  return list(field(message, 'components')).flatMap((row) =>
    list(field(row, 'components')).map((one) => ({
      id: String(field(one, 'custom_id')),
      label: String(field(one, 'label') ?? field(one, 'placeholder')),
    })),
  );
}
