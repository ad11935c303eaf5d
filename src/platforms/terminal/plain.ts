/** What a terminal must not be sent: control characters that an asker's own words could hold. */

/** The text with a space in place of every control character and every mark that turns the writing direction. */
export function plain(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
  return text.replace(/[\u0000-\u001f\u007f-\u009f\u200e\u200f\u2028-\u202e\u2066-\u2069]/g, ' ');
}
