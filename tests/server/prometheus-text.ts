/** Prometheus' text format 0.0.4, read as its documentation tells (“Exposition formats”), and what is amiss in it. */

interface Sample {
  readonly name: string;
  readonly labels: ReadonlyMap<string, string>;
  readonly value: number;
}

const SAMPLE = /^([a-zA-Z_:][\w:]*)(?:\{(.*)\})? (\S+)(?: -?\d+)?$/;
const LABEL = /^([a-zA-Z_]\w*)="((?:[^"\\\n]|\\["\\n])*)"(?:,|$)/;
const PARTS: Readonly<Record<string, readonly string[]>> = {
  histogram: ['_bucket', '_sum', '_count'],
  summary: ['', '_sum', '_count'],
  counter: [''],
  gauge: [''],
};

/** Flaws, a sentence each: lines out of form, samples of no type, series told twice, buckets that do not add up, names against the conventions. */
export function flawsOf(text: string): readonly string[] {
  const flaws: string[] = text.endsWith('\n') ? [] : ['the last line has no end'];
  const types = new Map<string, string>();
  const samples: Sample[] = [];
  const seen = new Set<string>();
  for (const line of text.split('\n').filter((one) => one !== '')) {
    const [, kind = '', name = '', rest = ''] = /^# (HELP|TYPE) (\S+) (.+)$/.exec(line) ?? [];
    if (kind === 'TYPE') {
      if (types.has(name)) flaws.push(`${name}: its type is told twice`);
      types.set(name, rest);
    } else if (kind === '') {
      const sample = sampleOf(line);
      if (!sample) flaws.push(`no sample: ${line}`);
      else samples.push(sample);
      const series = line.slice(0, line.lastIndexOf(' '));
      if (seen.has(series)) flaws.push(`told twice: ${series}`);
      seen.add(series);
    }
  }
  for (const { name, labels, value } of samples) {
    const family = [...types].find(([of, type]) => PARTS[type]?.some((part) => name === of + part));
    if (!family) flaws.push(`${name}: of no type told`);
    if (family?.[1] === 'counter' && value < 0) flaws.push(`${name}: a counter below nothing`);
    if (name.endsWith('_bucket') && !labels.has('le')) flaws.push(`${name}: a bucket without its bound`);
  }
  return [...flaws, ...namesAmiss(types), ...bucketsAmiss(samples)];
}

function sampleOf(line: string): Sample | undefined {
  const [, name = '', given = '', number = ''] = SAMPLE.exec(line) ?? [];
  const labels = new Map<string, string>();
  for (let left = given; left !== ''; ) {
    const [whole = '', label = '', value = ''] = LABEL.exec(left) ?? [];
    if (whole === '' || labels.has(label)) return undefined;
    labels.set(label, value);
    left = left.slice(whole.length);
  }
  // A number is whatever Go's ParseFloat takes, which minds no capitals.
  const none = /^nan$/i.test(number);
  const value = /^\+inf$/i.test(number) ? Number.POSITIVE_INFINITY : Number(none ? 'NaN' : number);
  return name === '' || (!none && Number.isNaN(value)) ? undefined : { name, labels, value };
}

/** Ours begin alike, count in _total and measure in base units (Prometheus, “Metric and label naming”). */
function namesAmiss(types: ReadonlyMap<string, string>): readonly string[] {
  return [...types].flatMap(([name, type]) => {
    if (!name.startsWith('floorhand_')) return [];
    if ((type === 'counter') !== name.endsWith('_total')) return [`${name}: _total is for counters, and for each`];
    return type === 'histogram' && !name.endsWith('_seconds') ? [`${name}: a time without its unit`] : [];
  });
}

/** Buckets of a series grow, and the last holds as many as are counted. */
function bucketsAmiss(samples: readonly Sample[]): readonly string[] {
  const series = new Map<string, Sample[]>();
  for (const sample of samples.filter(({ name }) => name.endsWith('_bucket'))) {
    const rest = [...sample.labels].filter(([label]) => label !== 'le').sort();
    const key = JSON.stringify([sample.name.slice(0, -'_bucket'.length), rest]);
    series.set(key, [...(series.get(key) ?? []), sample]);
  }
  return [...series].flatMap(([key, buckets]) => {
    const [name, rest] = JSON.parse(key) as [string, [string, string][]];
    const counted = samples.find(
      (one) => one.name === `${name}_count` && JSON.stringify([...one.labels].sort()) === JSON.stringify(rest),
    );
    const values = buckets.map(({ value }) => value);
    const grows = values.every((value, i) => i === 0 || value >= (values[i - 1] ?? 0));
    const last = buckets.at(-1);
    const whole = last?.labels.get('le') === '+Inf' && last.value === counted?.value;
    return grows && whole ? [] : [`${key}: its buckets do not add up`];
  });
}
