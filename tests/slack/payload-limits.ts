/** Slack's limits, walked through a payload: what its types do not say. Published in Slack's Block Kit reference unless marked. */

const PLAIN: Readonly<Record<string, number>> = { button: 75, header: 150, label: 2000, hint: 2000, placeholder: 150 };

/** Known from use, in no published page. */
const FROM_USE = { tables: 1, cells: 10_000, message: 13_200 } as const;

type Node = Readonly<Record<string, unknown>>;

/** What of a message Slack would not take. */
export function messageFlaws({
  text,
  blocks,
}: {
  readonly text?: unknown;
  readonly blocks?: unknown;
}): readonly string[] {
  const list = Array.isArray(blocks) ? blocks : [];
  const flaws = blockFlaws(list, 50);
  if (typeof text !== 'string' || text === '' || text.length > 40_000) flaws.push('a text of no length or too long');
  if (typeof text === 'string' && /[<>]|&(?!(?:amp|lt|gt);)/.test(text)) flaws.push(`markup in the text: ${text}`);
  if (list.filter(({ type }) => type === 'table').length > FROM_USE.tables) flaws.push('more than one table');
  if (lettersIn(list) > FROM_USE.message) flaws.push(`${lettersIn(list)} characters`);
  return flaws;
}

/** What of a view Slack would not take. */
export function viewFlaws(view: Node): readonly string[] {
  const blocks = Array.isArray(view.blocks) ? view.blocks : [];
  const flaws = blockFlaws(blocks, 100);
  const short = (name: string): void => {
    const text = view[name] as Node | undefined;
    if (text !== undefined && !fits(text.text, 24)) flaws.push(`${name} of ${`${text.text}`.length}`);
  };
  for (const name of ['title', 'submit', 'close']) short(name);
  if (view.type === 'modal' && view.title === undefined) flaws.push('a form without a title');
  const input = blocks.some(({ type }) => type === 'input');
  if (input && view.submit === undefined) flaws.push('inputs and nothing to submit them');
  if (`${view.private_metadata ?? ''}`.length > 3000) flaws.push('too much carried along');
  if (`${view.callback_id ?? ''}`.length > 255) flaws.push('a callback id too long');
  return flaws;
}

function blockFlaws(blocks: readonly Node[], most: number): string[] {
  const flaws: string[] = [];
  if (blocks.length === 0 || blocks.length > most) flaws.push(`${blocks.length} blocks`);
  const seen = (name: string, within: unknown): void => {
    const ids = idsOf(within, name);
    if (new Set(ids).size < ids.length) flaws.push(`${name} twice: ${ids.join(' ')}`);
    if (ids.some((id) => id.length > 255)) flaws.push(`${name} too long`);
  };
  seen('block_id', blocks);
  for (const block of blocks) {
    seen('action_id', block);
    walk(block, flaws);
  }
  return flaws;
}

function walk(node: unknown, flaws: string[], place = ''): void {
  if (Array.isArray(node)) for (const one of node) walk(one, flaws, place);
  if (typeof node !== 'object' || node === null || Array.isArray(node)) return;
  const here = node as Node;
  const flaw = (broken: boolean, why: string): void => {
    if (broken) flaws.push(`${place}/${here.type ?? ''} ${why}: ${JSON.stringify(here).slice(0, 200)}`);
  };
  const count = (name: string, most: number): void => {
    const list = here[name];
    if (Array.isArray(list)) flaw(list.length === 0 || list.length > most, `${list.length} ${name}`);
  };
  for (const [name, most] of Object.entries(PLAIN)) {
    const text = (name === 'button' || name === 'header' ? here.type === name && here.text : here[name]) as
      | Node
      | false;
    if (text) flaw(!fits(text.text, most), `${name} text`);
  }
  switch (here.type) {
    case 'mrkdwn':
      flaw(true, 'markup, in which a name would ring');
      break;
    case 'plain_text':
      flaw(!fits(here.text, 3000), 'text');
      break;
    case 'text':
    case 'raw_text':
      flaw(!fits(here.text, 3000), 'text');
      break;
    case 'user':
    case 'usergroup':
    case 'channel':
    case 'broadcast':
    case 'team':
    case 'link':
    case 'emoji':
      flaw(place.includes('rich_text'), 'a mention, a link or an emoji');
      break;
    case 'actions':
      count('elements', 25);
      break;
    case 'button':
      flaw(`${here.value ?? ''}`.length > 2000, 'value');
      break;
    case 'image':
      flaw(!fits(here.alt_text, 2000), 'alt text');
      flaw(!/^F[A-Z0-9]{8,}$/.test(`${(here.slack_file as Node | undefined)?.id}`), 'file');
      break;
    case 'static_select':
      count('options', 100);
      count('option_groups', 100);
      if (here.initial_option) {
        const among = JSON.stringify(here.options ?? here.option_groups);
        flaw(!among.includes(JSON.stringify(here.initial_option)), 'an option chosen that is none');
      }
      break;
    case 'checkboxes':
      count('options', 10);
      break;
    case 'plain_text_input':
      flaw(here.initial_value !== undefined && !fits(here.initial_value, 3000), 'initial value');
      break;
    case 'table': {
      const rows = here.rows as readonly (readonly Node[])[];
      flaw(rows.length === 0 || rows.length > 100, `${rows.length} rows`);
      flaw(new Set(rows.map(({ length }) => length)).size > 1, 'rows of different lengths');
      flaw((rows[0]?.length ?? 0) > 20 || ((here.column_settings as unknown[]) ?? []).length > 20, 'columns');
      flaw(lettersIn(rows) > FROM_USE.cells, 'characters in cells');
      break;
    }
  }
  if ('value' in here && 'text' in here && here.type === undefined) {
    flaw(!fits(here.value, 150), 'option value');
    flaw(!fits((here.text as Node).text, 75), 'option text');
  }
  for (const [name, one] of Object.entries(here)) walk(one, flaws, `${place}/${here.type ?? name}`);
}

function fits(text: unknown, most: number): boolean {
  return typeof text === 'string' && text.length > 0 && text.length <= most;
}

function lettersIn(node: unknown): number {
  if (Array.isArray(node)) return node.reduce((sum: number, one) => sum + lettersIn(one), 0);
  if (typeof node !== 'object' || node === null) return 0;
  return Object.entries(node).reduce((sum, [name, one]) => {
    if (typeof one !== 'string') return sum + lettersIn(one);
    return name === 'text' || name === 'alt_text' ? sum + one.length : sum;
  }, 0);
}

function idsOf(node: unknown, name: string): readonly string[] {
  if (Array.isArray(node)) return node.flatMap((one) => idsOf(one, name));
  if (typeof node !== 'object' || node === null) return [];
  const own = (node as Node)[name];
  return [...(typeof own === 'string' ? [own] : []), ...Object.values(node).flatMap((one) => idsOf(one, name))];
}
