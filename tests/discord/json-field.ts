/** Fields of JSON that nobody has vouched for. */

/** The field of an object; undefined where there is none. */
export function field(value: unknown, name: string): unknown {
  return typeof value === 'object' && value !== null ? Object.getOwnPropertyDescriptor(value, name)?.value : undefined;
}

/** A list as it is; anything else is empty. */
export function list(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

/** All components of a message in order, those within others too. */
export function allIn(message: unknown): readonly unknown[] {
  return list(field(message, 'components')).flatMap((one) => [one, ...allIn(one)]);
}

/** The text components of a message in order, read as one. */
export function textOf(message: unknown): string {
  return allIn(message)
    .flatMap((one) => {
      const content = field(one, 'content');
      return typeof content === 'string' ? [content] : [];
    })
    .join('\n');
}

/** Every custom id of a message, a label or placeholder with each. */
export function buttonsOf(message: unknown): readonly { readonly id: string; readonly label: string }[] {
  return allIn(message)
    .filter((one) => field(one, 'custom_id') !== undefined)
    .map((one) => ({
      id: String(field(one, 'custom_id')),
      label: String(field(one, 'label') ?? field(one, 'placeholder')),
    }));
}

/** What can be pressed or chosen by its label: its custom id, and its value where it is a line of a list. */
export function controlOf(message: unknown, wanted: string): { readonly id: string; readonly value?: string } {
  for (const one of allIn(message)) {
    const id = String(field(one, 'custom_id'));
    if (field(one, 'label') === wanted || field(one, 'placeholder') === wanted) return { id };
    const option = list(field(one, 'options')).find((of) => field(of, 'label') === wanted);
    if (option) return { id, value: String(field(option, 'value')) };
  }
  throw new Error(`no ${wanted} among ${labelsOf(message).join(', ')}`);
}

/** The label of all that can be pressed or chosen. */
export function labelsOf(message: unknown): readonly string[] {
  return allIn(message).flatMap((one) => {
    const options = list(field(one, 'options')).map((of) => String(field(of, 'label')));
    return field(one, 'custom_id') === undefined
      ? []
      : [String(field(one, 'label') ?? field(one, 'placeholder')), ...options];
  });
}
