/** A platform of paper for the platform contract: people put slips into a box, and answers come out as sheets with numbered buttons. */

import { type Asker, accountKey } from '../../src/accounts/records.ts';
import type { Answer } from '../../src/chat/pipeline.ts';
import { keptAnswer, mintId } from '../../src/chat/saved-replies.ts';
import type { Platform, PlatformContext } from '../../src/platforms/platform.ts';
import {
  type AnswerSession,
  deliverAnswers,
  lookUpPress,
  type Saves,
  savesUnderway,
  storeForButtons,
} from '../../src/platforms/session.ts';
import type { PlatformName } from '../../src/text/answer-text.ts';
import { WRONG } from '../../src/text/reader-text.ts';

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
  readonly pressed?: { readonly id: string; readonly button: number; readonly label: string };
}

// A real platform adds its name to the list of names instead.
const NAME: string = 'paper';
const PAPER = NAME as PlatformName;

function textOf(answer: Answer): string {
  if ('reference' in answer) return answer.reference;
  if ('problems' in answer) return answer.problems.map(({ expected }) => expected).join('\n');
  if ('why' in answer) return `${answer.why}\n${answer.call}`;
  const { headline, blocks, cautions } = answer;
  return [headline, ...blocks.map((one) => JSON.stringify(one)), ...cautions.map(({ text }) => text)].join('\n');
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
      const saves = savesUnderway();
      office.onSlip = (slip) => {
        const work = handle(slip, office, saves, context);
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

async function handle(
  { by, text, pressed }: Slip,
  office: PaperOffice,
  saves: Saves,
  context: PlatformContext,
): Promise<void> {
  const asker: Asker = { platform: PAPER, id: by };
  const account = accountKey(asker);
  const { kept } = context.ports.store;
  const kind = pressed?.label === WRONG.label ? 'wrong' : 'ask';
  const press = pressed && ({ kind, id: pressed.id, place: pressed.button } as const);
  const looked = press && (await lookUpPress(press, account, { kept, saves }));
  const found = looked?.found === 'request' ? looked : undefined;
  const request = found?.text ?? text;
  if (request === undefined) return office.deliver({ id: mintId(), to: by, text: 'This is gone.', buttons: [] });
  const { units, decimal, currency } = context.config;
  const mistaken = found?.mistaken && { mistaken: found.mistaken };
  const answers = context.answer({ asker, preferences: { units, decimal, currency }, text: request, ...mistaken });
  const put = (answer: Answer, { id, save }: AnswerSession): void => {
    void save(answer);
    const wrong = 'understood' in answer ? [WRONG.label] : [];
    const buttons = 'actions' in answer ? [...answer.actions.map(({ label }) => label), ...wrong] : [];
    office.deliver({ id, to: by, text: textOf(answer), buttons });
  };
  let lost = false;
  await deliverAnswers(
    answers,
    { patience: { over: context.wait(200) }, saves },
    {
      send: async (session) => {
        const { answer, last } = await session.first;
        put(answer, session);
        return last;
      },
      edit: async (last, session) => put(last, session),
      save: (answer, id) =>
        storeForButtons(kept, id, answer, { by: account, text: request, shown: false }).then(() => true),
      lost: async (cause, { id }) => {
        context.ports.fault('paper', cause);
        lost = true;
        await kept.set(missedBy(account), id, 7 * 24 * 3_600_000);
      },
    },
  );
  if (!lost) await bringMissed(asker, office, context);
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
