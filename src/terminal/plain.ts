/** What a terminal must not be sent: control characters that an asker's own words could hold. */

/** The text without control characters; our own bold marks stay. */
export function plain(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
  return text.replace(/\u001b\[(?:1|22)m|[\u0000-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g, (match) =>
    match.length > 1 ? match : ' ',
  );
}
