/** The request of a saved answer as text: its options and their values. */

/**
 * Every option of every command whose answers can be saved, past or present. A test keeps it in line with the commands.
 */
const OPTIONS = [
  'acclimate',
  'apart',
  'area',
  'bag',
  'bay',
  'bead',
  'below',
  'boards',
  'box',
  'breaks',
  'built',
  'bundle-length',
  'bundle-weight',
  'carpet-weight',
  'carry',
  'casing',
  'clearance',
  'coats',
  'corners',
  'country',
  'coverage',
  'damage',
  'direction',
  'doors',
  'doorways',
  'doubt',
  'end-trim',
  'entry',
  'extra',
  'first-joist',
  'first-stud',
  'floor',
  'flooring',
  'found',
  'from',
  'gap',
  'glue-up',
  'grip',
  'have',
  'heated',
  'height',
  'hole',
  'hole-apart',
  'hole-edge',
  'holes',
  'inside-joint',
  'insurer',
  'joist-depth',
  'joist-kind',
  'joist-width',
  'joists',
  'kerf',
  'leak',
  'level',
  'leveller-dry',
  'limit',
  'line',
  'list',
  'load',
  'margin',
  'method',
  'mistakes',
  'mould',
  'nail',
  'nails-per-stud',
  'narrowest-strip',
  'near',
  'notch',
  'notch-length',
  'notch-place',
  'often',
  'only',
  'pack',
  'pad',
  'pattern',
  'payload',
  'plank',
  'planks',
  'pour',
  'price',
  'primer',
  'ramp',
  'reach',
  'reach-end',
  'readings',
  'room',
  'rule',
  'run',
  'sales-tax',
  'saw-reach',
  'set-down',
  'shape',
  'sheet',
  'shoe',
  'shoe-thickness',
  'shortest-end',
  'so-far',
  'spacing',
  'spares',
  'stagger',
  'stairs',
  'stock',
  'stretch',
  'strip',
  'stud-spacing',
  'tax',
  'tested',
  'thickness',
  'to',
  'trim',
  'tube',
  'twist',
  'twist-end',
  'vehicle',
  'wallboard',
  'walls',
  'water',
  'way',
  'weight',
];

const LABEL = new RegExp(
  `(?<=^|[\\s,;])(${[...OPTIONS].sort((one, other) => other.length - one.length).join('|')}):`,
  'g',
);

interface Part {
  readonly option: string;
  readonly from: number;
  readonly to: number;
}

function partsOf(request: string): readonly Part[] {
  const labels = [...request.matchAll(LABEL)];
  return labels.map((label, i) => ({
    option: label[1] ?? '',
    from: label.index + label[0].length,
    to: labels[i + 1]?.index ?? request.length,
  }));
}

export function requestOptions(request: string): ReadonlyMap<string, string> {
  return new Map(
    partsOf(request).map(({ option, from, to }) => [
      option,
      request.slice(from, to).replace(/^\s+|(?<![\s,;])[\s,;]+$/g, ''),
    ]),
  );
}

export function withOptionsSaid(request: string, options: readonly string[], change: (text: string) => string): string {
  return partsOf(request).reduceRight(
    (line, { option, from, to }) =>
      options.includes(option) ? line.slice(0, from) + change(line.slice(from, to)) + line.slice(to) : line,
    request,
  );
}

/** Options whose texts may name rooms. */
export const NAMING = [
  'room',
  'doorways',
  'holes',
  'doors',
  'corners',
  'bay',
  'only',
  'damage',
  'area',
  'readings',
  'found',
  'so-far',
  'walls',
];
