/** Everything that Discord would refuse in a payload: by the schemas of its published interface, and by what those leave out. */

import { field, list } from './json-field.ts';

export type PayloadKind = 'callback' | 'edit' | 'follow-up' | 'command' | 'post' | 'change' | 'thread';

const V2 = 1 << 15;

/** Documented: 40 components and 4,000 characters a message; about 10,170 bytes fail, from memory. */
const MOST = { components: 40, characters: 4000, bytes: 10_000, attachments: 10 };

interface Schema {
  safeParse(value: unknown): { readonly success: boolean; readonly error?: { readonly issues: readonly unknown[] } };
}

// The package has no declarations for its schemas; its name is not written into the import, so that none are looked for.
const SPEC: string = 'discord-api-spec/zod';
const spec = (await import(SPEC)) as Readonly<Record<string, Schema>>;

/** Flaws as lines; `files` are the names of the files sent with it. A sound payload has none. */
export function payloadFlaws(kind: PayloadKind, body: unknown, files: readonly string[] = []): readonly string[] {
  const result = schemaOf(kind, body).safeParse(body);
  const schema = result.success ? [] : [`schema: ${JSON.stringify(result.error?.issues.slice(0, 2)).slice(0, 400)}`];
  if (kind === 'thread') return schema;
  return [...schema, ...(kind === 'command' ? commandFlaws(body) : messageFlaws(kind, body, files))];
}

function schemaOf(kind: PayloadKind, body: unknown): Schema {
  const name = schemaName(kind, field(body, 'type'));
  const schema = spec[name];
  if (!schema) throw new Error(`no schema ${name}`);
  return schema;
}

function schemaName(kind: PayloadKind, type: unknown): string {
  if (kind === 'edit') return 'IncomingWebhookUpdateRequestPartialSchema';
  if (kind === 'follow-up') return 'IncomingWebhookRequestPartialSchema';
  if (kind === 'thread') return 'CreateTextThreadWithoutMessageRequestSchema';
  if (kind === 'post') return 'MessageCreateRequestSchema';
  if (kind === 'change') return 'MessageEditRequestPartialSchema';
  if (kind === 'command') return 'ApplicationCommandCreateRequestSchema';
  if (type === 8) return 'ApplicationCommandAutocompleteCallbackRequestSchema';
  if (type === 9) return 'ModalInteractionCallbackRequestSchema';
  return type === 6 || type === 7
    ? 'UpdateMessageInteractionCallbackRequestSchema'
    : 'CreateMessageInteractionCallbackRequestSchema';
}

function messageFlaws(kind: PayloadKind, body: unknown, files: readonly string[]): readonly string[] {
  const data = kind === 'callback' ? field(body, 'data') : body;
  const type = kind === 'callback' ? field(body, 'type') : undefined;
  if (type === 8) return choiceFlaws(data);
  const components = list(field(data, 'components'));
  const all = components.flatMap(nested);
  const ids = all.flatMap((one) => {
    const id = field(one, 'custom_id');
    return typeof id === 'string' ? [id] : [];
  });
  const flaws = [
    ...(all.length > MOST.components ? [`${all.length} components`] : []),
    ...ids.filter((id, i) => ids.indexOf(id) !== i).map((id) => `custom id twice: ${id}`),
    ...ids.filter((id) => id.length > 100).map((id) => `custom id too long: ${id}`),
  ];
  if (type === 9) return [...flaws, ...modalFlaws(components)];
  if (type === 5 || type === 6) return [...flaws, ...(components.length > 0 ? ['a defer with components'] : [])];
  return [...flaws, ...textFlaws(data, all), ...fileFlaws(data, all, files), ...mentionFlaws(data)];
}

function textFlaws(data: unknown, all: readonly unknown[]): readonly string[] {
  const texts = all.filter((one) => field(one, 'type') === 10).map((one) => String(field(one, 'content')));
  const [characters, bytes] = [texts.join('').length, Buffer.byteLength(texts.join(''))];
  const v2 = (Number(field(data, 'flags') ?? 0) & V2) !== 0;
  const poll = field(data, 'poll') !== undefined;
  const beside = field(data, 'content') || field(data, 'embeds') || poll;
  return [
    ...(characters > MOST.characters ? [`${characters} characters`] : []),
    ...(bytes > MOST.bytes ? [`${bytes} bytes`] : []),
    ...texts.filter((text) => text.trim() === '').map(() => 'an empty text'),
    ...(all.length > 0 && !v2 ? ['components without their flag'] : []),
    ...(v2 && beside ? ['content, embeds or a poll beside components'] : []),
    ...(all.length === 0 && !poll ? ['an empty message'] : []),
  ];
}

function fileFlaws(data: unknown, all: readonly unknown[], files: readonly string[]): readonly string[] {
  const attachments = list(field(data, 'attachments'));
  const named = attachments.flatMap((one) => field(one, 'filename') ?? []);
  const kept = attachments.filter((one) => field(one, 'filename') === undefined).length;
  const urls = JSON.stringify(all).match(/attachment:\/\/[^"]+/g) ?? [];
  const shown = new Set(urls.map((url) => url.replace('attachment://', '')));
  return [
    ...(attachments.length > MOST.attachments ? [`${attachments.length} attachments`] : []),
    ...(JSON.stringify(named) === JSON.stringify(files) ? [] : [`lists ${named.join()} but sends ${files.join()}`]),
    ...[...shown]
      .filter((name) => kept === 0 && !files.includes(name))
      .map((name) => `shows ${name}, which is not sent`),
    ...files.filter((name) => !shown.has(name)).map((name) => `sends ${name}, which nothing shows`),
    ...all
      .filter((one) => field(one, 'type') === 12)
      .flatMap((one) => list(field(one, 'items')))
      .filter((item) => !field(item, 'description'))
      .map(() => 'a picture without a description'),
  ];
}

function mentionFlaws(data: unknown): readonly string[] {
  return JSON.stringify(field(data, 'allowed_mentions')) === '{"parse":[]}' ? [] : ['may mention somebody'];
}

function modalFlaws(components: readonly unknown[]): readonly string[] {
  return [
    ...(components.length < 1 || components.length > 5 ? [`${components.length} fields`] : []),
    ...components.filter((one) => field(one, 'type') !== 18).map(() => 'a field without a label'),
    ...components.flatMap((one) => {
      const input = field(one, 'component');
      const value = field(input, 'value');
      const defaults = list(field(input, 'options')).filter((option) => field(option, 'default') === true).length;
      return [
        ...(typeof value === 'string' && value.length > 4000 ? ['a value too long'] : []),
        ...(defaults > 1 ? ['several defaults'] : []),
      ];
    }),
  ];
}

function choiceFlaws(data: unknown): readonly string[] {
  const choices = list(field(data, 'choices'));
  const texts = choices.flatMap((one) => [String(field(one, 'name')), String(field(one, 'value'))]);
  return [
    ...(choices.length > 25 ? [`${choices.length} choices`] : []),
    ...texts.filter(({ length }) => length < 1 || length > 100).map(({ length }) => `a choice of ${length} characters`),
  ];
}

/** Names unique, required options first, 25 at most, 8,000 characters in all. */
function commandFlaws(body: unknown): readonly string[] {
  const options = list(field(body, 'options'));
  const required = options.map((option) => field(option, 'required') === true);
  const names = options.map((option) => field(option, 'name'));
  const late = required.includes(false) && required.lastIndexOf(true) > required.indexOf(false);
  return [
    ...(late ? ['a required option behind another'] : []),
    ...(new Set(names).size === names.length ? [] : ['an option twice']),
    ...(options.length > 25 ? [`${options.length} options`] : []),
    ...(charactersOf(body) > 8000 ? [`${charactersOf(body)} characters`] : []),
    ...options.flatMap(commandFlaws),
  ];
}

function charactersOf(command: unknown): number {
  const own = ['name', 'description', 'value'].map((name) => String(field(command, name) ?? '').length);
  const below = [...list(field(command, 'options')), ...list(field(command, 'choices'))].map(charactersOf);
  return [...own, ...below].reduce((sum, one) => sum + one, 0);
}

/** A component and all within it, but not the options of a select or the items of a gallery. */
function nested(component: unknown): readonly unknown[] {
  const single = [field(component, 'component'), field(component, 'accessory')].filter((one) => one !== undefined);
  const within = [...list(field(component, 'components')), ...single];
  return [component, ...within.flatMap(nested)];
}
