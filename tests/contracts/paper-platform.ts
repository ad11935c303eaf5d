/** A platform of paper for the platform contract: people put slips into a box, and answers come out as sheets with numbered buttons. */

import { type Asker, accountKey } from '../../src/accounts/asker.ts';
import type { Answer } from '../../src/chat/pipeline.ts';
import { keepAnswer, keptAnswer, mintId } from '../../src/chat/saved-replies.ts';
import type { Platform, PlatformContext } from '../../src/platforms/platform.ts';
import type { PlatformName } from '../../src/text/platform-names.ts';

/** A sheet that somebody sees; a later one of the same id takes its place. */
export interface Sheet {
  readonly id: string;
  readonly to: string;
  readonly text: string;
  readonly buttons: readonly string[];
}

/** The office where slips come in and sheets go out. */
export class PaperOffice {
  readonly sheets: Sheet[] = [];
  /** Whether what is sent is lost. */
  lost = false;
  onSlip: (slip: Slip) => Promise<void> = async () => {
    throw new Error('the office is closed');
  };

  deliver(sheet: Sheet): void {
    if (this.lost) throw new Error('lost in the mail');
    this.sheets.push(sheet);
  }
}

/** What somebody hands in: a request, or a button of a sheet. */
interface Slip {
  readonly by: string;
  readonly text?: string;
  readonly pressed?: { readonly id: string; readonly button: number };
}

// A real platform adds its name to the list of names instead.
const NAME: string = 'paper';
const PAPER = NAME as PlatformName;

const A_WEEK = 7 * 24 * 3_600_000;

function textOf(answer: Answer): string {
  if ('reference' in answer) return answer.reference;
  if ('problems' in answer) return answer.problems.map(({ expected }) => expected).join('\n');
  if ('why' in answer) return `${answer.why}\n${answer.call}`;
  const blocks = answer.blocks.map((block) => JSON.stringify(block));
  return [answer.headline, ...blocks, ...answer.cautions.map(({ text }) => text)].join('\n');
}

export function paperPlatform(office: PaperOffice): Platform {
  return {
    name: PAPER,
    runs: 'configured',
    settings: { configured: () => true, lacks: () => [] },
    accountPattern: /^paper:[a-z]+$/,
    render: async (answer) => [textOf(answer)],
    start: async (context) => {
      const begun = new Set<Promise<void>>();
      office.onSlip = (slip) => {
        const work = handle(slip, office, context);
        begun.add(work);
        return work.finally(() => begun.delete(work));
      };
      return {
        routes: [],
        connected: () => true,
        close: async () => {
          office.onSlip = async () => {
            throw new Error('the office is closed');
          };
          await Promise.allSettled(begun);
        },
      };
    },
  };
}

async function handle({ by, text, pressed }: Slip, office: PaperOffice, context: PlatformContext): Promise<void> {
  const asker: Asker = { platform: PAPER, id: by };
  const account = accountKey(asker);
  const { kept } = context.ports.store;
  const saved = pressed && (await keptAnswer(kept, pressed.id, account));
  const request = text ?? saved?.reply.actions[pressed?.button ?? 0]?.ask;
  if (request === undefined) return office.deliver({ id: mintId(), to: by, text: 'This is gone.', buttons: [] });
  const { units, decimal, currency } = context.config;
  const id = mintId();
  for await (const answer of context.answer({ asker, preferences: { units, decimal, currency }, text: request })) {
    const buttons = 'actions' in answer ? answer.actions.map(({ label }) => label) : [];
    if ('headline' in answer) await keepAnswer(kept, id, { by: account, text: request, reply: answer, shown: false });
    try {
      office.deliver({ id, to: by, text: textOf(answer), buttons });
    } catch (cause) {
      context.ports.fault('paper', cause);
      await kept.set(missedBy(account), id, A_WEEK);
      return;
    }
  }
  await bringMissed(asker, office, context);
}

/** What reached nobody comes behind the next answer, once. */
async function bringMissed(asker: Asker, office: PaperOffice, { ports }: PlatformContext): Promise<void> {
  const account = accountKey(asker);
  const { kept } = ports.store;
  const id = await kept.get(missedBy(account));
  if (typeof id !== 'string' || !(await kept.delete(missedBy(account)))) return;
  const answer = await keptAnswer(kept, id, account);
  if (answer) office.deliver({ id, to: asker.id, text: textOf(answer.reply), buttons: [] });
}

function missedBy(account: string): string {
  return `lost:${account}`;
}
