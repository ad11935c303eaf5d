/** Tables in Markdown, padded as the formatter pads them. */

/** Rows of cells, the head first. */
export function tableOf(rows: readonly (readonly string[])[]): string {
  const escaped = rows.map((cells) => cells.map((cell) => cell.replaceAll('|', '\\|')));
  const columns = escaped[0]?.map((_, i) => i) ?? [];
  const widths = columns.map((column) => Math.max(...escaped.map((cells) => [...(cells[column] ?? '')].length)));
  const line = (cells: readonly string[]): string =>
    `| ${widths.map((width, i) => (cells[i] ?? '').padEnd(width)).join(' | ')} |`;
  const [head = [], ...body] = escaped;
  return [head, widths.map((width) => '-'.repeat(width)), ...body].map(line).join('\n');
}
