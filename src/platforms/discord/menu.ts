/** Discord's menu: at most twenty entries, named as people look for them, and the command that each stands for. */

import {
  type APIApplicationCommand,
  type APIApplicationCommandBasicOption,
  type APIApplicationCommandOption,
  ApplicationCommandOptionType,
  ApplicationCommandType,
  ApplicationIntegrationType,
  InteractionContextType,
  type LocalizationMap,
  type REST,
  type RESTPostAPIApplicationCommandsJSONBody,
  Routes,
} from 'discord.js';
import type { Command } from '../../chat/command.ts';
import { fullName, optionsOf } from '../../input/command-shape.ts';
import { CHAT } from '../../text/chat-text.ts';
import { CHOICE_TEXT, COMMAND_CHOICES, COMMAND_DESCRIPTION, COMMAND_OPTIONS } from './limits.ts';
import { label } from './page.ts';

/** A name and a description in each of the languages that the menu speaks. */
type Spoken = readonly [name: string, description: string];

/** Entries of our own, which are no commands elsewhere. */
export type OwnEntry = 'ask' | 'project' | 'recent' | 'help';

export interface MenuEntry {
  readonly name: string;
  /** The command, by its full name; or what of our own it is. */
  readonly command?: string;
  readonly own?: OwnEntry;
  /** Instead of the command's own summary. */
  readonly description?: string;
  /** What options are called here, where their own name would say nothing in a menu. */
  readonly renamed?: Readonly<Record<string, string>>;
  readonly es: Spoken;
  readonly de: Spoken;
  readonly fr: Spoken;
  readonly pt: Spoken;
}

export const MENU: readonly MenuEntry[] = [
  {
    name: 'ask',
    own: 'ask',
    description: 'Ask anything about your floor, in your own words',
    es: ['preguntar', 'Pregunta lo que quieras sobre tu suelo (respuestas en inglés)'],
    de: ['frage', 'Frag alles zu deinem Boden, in eigenen Worten (Antworten auf Englisch)'],
    fr: ['demander', 'Posez votre question sur votre sol (réponses en anglais)'],
    pt: ['perguntar', 'Pergunte o que quiser sobre o seu piso (respostas em inglês)'],
  },
  {
    name: 'boxes',
    command: 'floor planks',
    es: ['cajas', 'Cuántas cajas necesitan tus habitaciones y cómo colocar cada fila'],
    de: ['pakete', 'Wie viele Pakete deine Räume brauchen, und wie Reihe für Reihe verlegt wird'],
    fr: ['paquets', 'Combien de paquets il faut pour vos pièces, et la pose rang par rang'],
    pt: ['caixas', 'Quantas caixas seus cômodos precisam e como assentar fila por fila'],
  },
  {
    name: 'estimate',
    command: 'floor estimate',
    es: ['presupuesto', 'Cajas y costo solo con la superficie'],
    de: ['schätzung', 'Pakete und Kosten allein aus der Fläche'],
    fr: ['estimation', 'Paquets et coût à partir de la surface seule'],
    pt: ['estimativa', 'Caixas e custo só pela área'],
  },
  {
    name: 'compare',
    command: 'floor compare',
    es: ['comparar', 'Compara hasta cinco tablas para las mismas habitaciones'],
    de: ['vergleich', 'Bis zu fünf Dielen für dieselben Räume vergleichen'],
    fr: ['comparer', 'Comparer jusqu’à cinq lames pour les mêmes pièces'],
    pt: ['comparar', 'Compare até cinco réguas para os mesmos cômodos'],
  },
  {
    name: 'layout',
    command: 'floor layout',
    es: ['plano', 'La guía de colocación de una habitación, con su dibujo'],
    de: ['verlegeplan', 'Der Verlegeplan eines Raums, mit größerem Bild'],
    fr: ['plan-de-pose', 'Le plan de pose d’une pièce, avec une plus grande image'],
    pt: ['plano', 'O guia de assentamento de um cômodo, com desenho maior'],
  },
  {
    name: 'baseboard',
    command: 'trim list',
    es: ['rodapié', 'Qué rodapiés comprar y dónde cortar cada uno'],
    de: ['sockelleisten', 'Welche Leisten du kaufst und wo jede geschnitten wird'],
    fr: ['plinthes', 'Les plinthes à acheter et où couper chacune'],
    pt: ['rodapé', 'Quais rodapés comprar e onde cortar cada um'],
  },
  {
    name: 'doorways',
    command: 'trim edges',
    es: ['puertas', 'El perfil para cada puerta donde termina el suelo'],
    de: ['türen', 'Das Profil für jede Tür, an der der Boden endet'],
    fr: ['portes', 'Le profilé pour chaque porte où le sol s’arrête'],
    pt: ['portas', 'O perfil para cada porta onde o piso termina'],
  },
  {
    name: 'paint',
    command: 'trim finish',
    description: 'Paint, caulk, nails and filler for your baseboard',
    es: ['pintura', 'Pintura, sellador, clavos y masilla para el rodapié'],
    de: ['farbe', 'Farbe, Acryl, Nägel und Spachtel für die Sockelleisten'],
    fr: ['peinture', 'Peinture, mastic, clous et enduit pour les plinthes'],
    pt: ['tinta', 'Tinta, selante, pregos e massa para o rodapé'],
  },
  {
    name: 'tear-out',
    command: 'prep tearout',
    es: ['retirar', 'Retirar el suelo viejo: piezas, peso, viajes y orden'],
    de: ['ausbau', 'Den alten Boden ausbauen: Stücke, Gewicht, Fuhren, Reihenfolge'],
    fr: ['dépose', 'Déposer l’ancien sol : morceaux, poids, trajets, ordre'],
    pt: ['remover', 'Remover o piso antigo: pedaços, peso, viagens e ordem'],
  },
  {
    name: 'squeaks',
    command: 'prep squeaks',
    es: ['crujidos', 'Tornillos para que el suelo no cruja: cuántos y dónde'],
    de: ['knarren', 'Schrauben gegen ein Knarren: wie viele, wie lang, wie weit auseinander'],
    fr: ['grincements', 'Vis contre les grincements : combien, longueur, écart'],
    pt: ['rangidos', 'Parafusos para parar rangidos: quantos e onde'],
  },
  {
    name: 'soft-spot',
    command: 'prep patch',
    es: ['parche', 'Reparar un trozo del subsuelo: cortes, tableros, tornillos'],
    de: ['weiche-stelle', 'Ein Stück Unterboden ersetzen: Schnitte, Platten, Schrauben'],
    fr: ['point-mou', 'Remplacer un morceau du support : coupes, panneaux, vis'],
    pt: ['remendo', 'Reparar um pedaço do contrapiso: cortes, painéis, parafusos'],
  },
  {
    name: 'level',
    command: 'prep level',
    es: ['nivelar', '¿Está bastante plano? Relleno y sacos según tus medidas'],
    de: ['ebenheit', 'Ist der Boden eben genug? Spachtel und Säcke aus deinen Messungen'],
    fr: ['niveler', 'Le sol est-il assez plan ? Ragréage et sacs selon vos mesures'],
    pt: ['nivelar', 'O piso é plano o bastante? Massa e sacos pelas suas medidas'],
  },
  {
    name: 'moisture',
    command: 'prep moisture',
    es: ['humedad', '¿Está bastante seco para colocar? Medidas en madera u hormigón'],
    de: ['feuchte', 'Ist es trocken genug? Messwerte von Holz oder Beton gegen ihre Grenze'],
    fr: ['humidité', 'Est-ce assez sec pour poser ? Mesures sur bois ou béton'],
    pt: ['umidade', 'Está seco o bastante? Medidas em madeira ou concreto'],
  },
  {
    name: 'tape',
    command: 'tape',
    es: ['cinta', 'Suma, resta y convierte medidas con exactitud'],
    de: ['maßband', 'Längen genau zusammenzählen, abziehen und umrechnen'],
    fr: ['mètre', 'Additionner, soustraire et convertir des longueurs'],
    pt: ['trena', 'Some, subtraia e converta medidas com exatidão'],
  },
  {
    name: 'project',
    own: 'project',
    description: 'Your floor as a project: rooms, planks, notes, sharing, settings',
    es: ['proyecto', 'Tu suelo como proyecto: habitaciones, tablas, notas, compartir'],
    de: ['projekt', 'Dein Boden als Projekt: Räume, Dielen, Notizen, Teilen, Einstellungen'],
    fr: ['projet', 'Votre sol comme projet : pièces, lames, notes, partage, réglages'],
    pt: ['projeto', 'Seu piso como projeto: cômodos, réguas, notas, compartilhar'],
  },
  {
    name: 'shopping',
    command: 'project shopping',
    renamed: { do: 'bought' },
    es: ['compras', 'Todo lo que hay que comprar; marca lo que ya tienes'],
    de: ['einkauf', 'Alles, was zu kaufen ist; hake ab, was du hast'],
    fr: ['achats', 'Tout ce qu’il faut acheter ; cochez ce que vous avez'],
    pt: ['compras', 'Tudo o que comprar; marque o que já tem'],
  },
  {
    name: 'progress',
    command: 'project progress',
    renamed: { do: 'done' },
    es: ['avance', 'Cómo va cada habitación y qué sigue'],
    de: ['fortschritt', 'Wie weit jeder Raum ist und was als Nächstes kommt'],
    fr: ['avancement', 'Où en est chaque pièce, et la suite'],
    pt: ['andamento', 'Como está cada cômodo e o que vem a seguir'],
  },
  {
    name: 'recent',
    own: 'recent',
    description: 'Your last answers, to open again',
    es: ['recientes', 'Tus últimas respuestas, para abrirlas otra vez'],
    de: ['verlauf', 'Deine letzten Antworten, zum erneuten Öffnen'],
    fr: ['récents', 'Vos dernières réponses, à rouvrir'],
    pt: ['recentes', 'Suas últimas respostas, para abrir de novo'],
  },
  {
    name: 'help',
    command: 'help',
    own: 'help',
    description: 'What you can ask, and how',
    es: ['ayuda', 'Qué puedes preguntar y cómo'],
    de: ['hilfe', 'Was du fragen kannst, und wie'],
    fr: ['aide', 'Ce que vous pouvez demander, et comment'],
    pt: ['ajuda', 'O que você pode perguntar e como'],
  },
];

/** The free texts of our own entries. */
export const FREE = {
  ask: { name: 'question', description: 'For example: how many boxes for a 12 by 14 room, 7x48 planks, 10 a box?' },
  what: { name: 'what', description: 'What to do with it: pick from the list, or say it' },
  details: { name: 'details', description: 'What it needs, if you know it: bedroom 11 x 12, or a name' },
} as const;

/** The localizations of an entry, by Discord's names of languages. */
export function spoken({ es, de, fr, pt }: MenuEntry): {
  readonly name_localizations: LocalizationMap;
  readonly description_localizations: LocalizationMap;
} {
  const each = (at: 0 | 1): LocalizationMap => ({
    'es-ES': es[at],
    'es-419': es[at],
    de: de[at],
    fr: fr[at],
    'pt-BR': pt[at],
  });
  return { name_localizations: each(0), description_localizations: each(1) };
}

/** Why answers come in English, to whoever reads Discord in another of the menu's languages. */
export const ENGLISH_ONLY: Readonly<Record<string, string>> = {
  es: 'Por ahora las respuestas están en inglés.',
  de: 'Die Antworten gibt es vorerst auf Englisch.',
  fr: 'Pour l’instant, les réponses sont en anglais.',
  pt: 'Por enquanto, as respostas são em inglês.',
};

// The entries as they are registered.

/** For servers and for people, in servers, in the bot's messages and in everybody else's. */
const EVERYWHERE = {
  integration_types: [ApplicationIntegrationType.GuildInstall, ApplicationIntegrationType.UserInstall],
  contexts: [InteractionContextType.Guild, InteractionContextType.BotDM, InteractionContextType.PrivateChannel],
};

/** Every entry to register, in the order of the menu; what is rare is reached by `/ask`, `/project`, buttons and forms. */
export function registered(all: readonly Command[]): readonly RESTPostAPIApplicationCommandsJSONBody[] {
  return [
    ...MENU.map((entry) => entryOf(entry, all)),
    { type: ApplicationCommandType.Message, name: CHAT.menu, ...EVERYWHERE },
  ];
}

function entryOf(entry: MenuEntry, all: readonly Command[]): RESTPostAPIApplicationCommandsJSONBody {
  const command = all.find((known) => fullName(known) === entry.command);
  if (entry.command !== undefined && !command) throw new Error(`no command ${entry.command} for /${entry.name}`);
  return {
    type: ApplicationCommandType.ChatInput,
    name: entry.name,
    description: label(entry.description ?? command?.summary ?? '', COMMAND_DESCRIPTION),
    ...spoken(entry),
    options: command ? optionsIn(command, entry) : freeOf(entry),
    ...EVERYWHERE,
  };
}

function freeOf({ own }: MenuEntry): APIApplicationCommandBasicOption[] {
  const type = ApplicationCommandOptionType.String as const;
  if (own === 'ask') return [{ type, ...FREE.ask }];
  return own === 'project'
    ? [
        { type, ...FREE.what, autocomplete: true },
        { type, ...FREE.details },
      ]
    : [];
}

/** None is required: what is not told may be known from a project, and a form asks for the rest. */
function optionsIn(command: Command, { renamed = {} }: MenuEntry): APIApplicationCommandBasicOption[] {
  return optionsOf(command)
    .slice(0, COMMAND_OPTIONS)
    .map(({ name, summary, kind, choices }) => {
      const option = {
        type: ApplicationCommandOptionType.String as const,
        name: renamed[name] ?? name,
        description: label(summary, COMMAND_DESCRIPTION),
      };
      if (kind !== 'choice' || !choices || choices.length > COMMAND_CHOICES) return { ...option, autocomplete: true };
      const fitting = choices.filter((choice) => choice.length <= CHOICE_TEXT);
      return { ...option, choices: fitting.map((choice) => ({ name: choice, value: choice })) };
    });
}

/** What Discord counts of a command: names, descriptions and choices, subcommands and their options too. */
export function charactersOf({ name, ...rest }: RESTPostAPIApplicationCommandsJSONBody): number {
  const description = ('description' in rest ? rest.description : undefined) ?? '';
  const options: readonly APIApplicationCommandOption[] = ('options' in rest ? rest.options : undefined) ?? [];
  return name.length + description.length + options.reduce((sum, option) => sum + charactersIn(option), 0);
}

function charactersIn(option: APIApplicationCommandOption): number {
  const choices = 'choices' in option ? (option.choices ?? []) : [];
  const options: readonly APIApplicationCommandOption[] = 'options' in option ? (option.options ?? []) : [];
  const own = option.name.length + option.description.length;
  const chosen = choices.reduce((sum, choice) => sum + choice.name.length + String(choice.value).length, 0);
  return own + chosen + options.reduce((sum, one) => sum + charactersIn(one), 0);
}

// Brings Discord's menus up to date with the commands: only what differs is written, and what is no longer
// ours is taken away.

/** What is to be done, by the names of commands. */
interface Difference {
  readonly write: readonly RESTPostAPIApplicationCommandsJSONBody[];
  readonly remove: readonly { readonly id: string; readonly name: string }[];
  readonly same: readonly string[];
}

/** Where commands are registered: for everybody, or in one server while trying things out. */
interface Place {
  readonly application: string;
  readonly guild?: string;
}

/** The commands of a place as they should be there: one server's own have no places of their own. */
export function wantedIn(
  place: Place,
  commands: readonly RESTPostAPIApplicationCommandsJSONBody[],
): readonly RESTPostAPIApplicationCommandsJSONBody[] {
  if (place.guild === undefined) return commands;
  return commands.map(({ integration_types: _types, contexts: _contexts, ...command }) => command);
}

/** What differs from what Discord has. An entry point that Discord made for itself stays. */
export function differenceOf(
  wanted: readonly RESTPostAPIApplicationCommandsJSONBody[],
  there: readonly APIApplicationCommand[],
): Difference {
  const found = (command: RESTPostAPIApplicationCommandsJSONBody) =>
    there.find(
      ({ name, type }) => name === command.name && type === (command.type ?? ApplicationCommandType.ChatInput),
    );
  const isSame = (command: RESTPostAPIApplicationCommandsJSONBody): boolean => {
    const old = found(command);
    return old !== undefined && plain(command, command) === plain(old, command);
  };
  const kept = new Set(wanted.flatMap((command) => found(command)?.id ?? []));
  return {
    write: wanted.filter((command) => !isSame(command)),
    remove: there
      .filter(({ id, type }) => !kept.has(id) && type !== ApplicationCommandType.PrimaryEntryPoint)
      .map(({ id, name }) => ({ id, name })),
    same: wanted.filter(isSame).map(({ name }) => name),
  };
}

/** What Discord has there. Rejects as the REST client does. */
export async function registeredThere(rest: REST, place: Place): Promise<readonly APIApplicationCommand[]> {
  return (await rest.get(routeOf(place))) as readonly APIApplicationCommand[];
}

/** Writes and removes what differs. Rejects at the first refusal; what was written stays, and running again goes on. */
export async function register(rest: REST, place: Place, { write, remove }: Difference): Promise<void> {
  for (const { id } of remove) await rest.delete(`${routeOf(place)}/${id}`);
  // Posting a command of a name that is there replaces it.
  for (const body of write) await rest.post(routeOf(place), { body });
}

function routeOf({ application, guild }: Place): `/${string}` {
  return guild === undefined
    ? Routes.applicationCommands(application)
    : Routes.applicationGuildCommands(application, guild);
}

/** The fields that we set, in one order, without what stands for nothing. */
function plain(command: object, like: object): string {
  const fields = Object.keys(like);
  return JSON.stringify(bare(Object.fromEntries(Object.entries(command).filter(([field]) => fields.includes(field)))));
}

function bare(value: unknown): unknown {
  if (Array.isArray(value)) return value.every((one) => typeof one === 'number') ? [...value].sort() : value.map(bare);
  if (typeof value !== 'object' || value === null) return value;
  const fields = Object.entries(value).filter(
    ([, one]) => one !== undefined && one !== null && one !== false && !isEmpty(one),
  );
  return Object.fromEntries(fields.sort(([a], [b]) => (a < b ? -1 : 1)).map(([field, one]) => [field, bare(one)]));
}

function isEmpty(value: unknown): boolean {
  return Array.isArray(value) && value.length === 0;
}
