/** What a plain sentence comes to: an ask, a fact to ask back, or nothing. */

/** What can be asked about; those from trim on are known by their words and not all of them are worked out yet. */
export type Topic =
  | 'planks'
  | 'tape'
  | 'safety'
  | 'sources'
  | 'help'
  | 'trim'
  | 'tear-out'
  | 'squeaks'
  | 'level'
  | 'moisture'
  | 'patch'
  | 'finish';

/** Texts by option. */
export type ReadLine = ReadonlyMap<string, string>;

/** A sentence read: `told` is in the grammar's words, by option, and holds only what its readers read. */
export type Plain =
  | { readonly kind: 'ask'; readonly topic: Topic; readonly optionTexts: ReadLine; readonly assumed: readonly string[] }
  | {
      readonly kind: 'ask-back';
      readonly topic: Topic;
      readonly optionTexts: ReadLine;
      readonly assumed: readonly string[];
      /** The option that is missing or in doubt; 'ask' for something that no option could be found for. */
      readonly missing: string;
      readonly got: string;
      readonly why: string;
      /** What was told of any option, read or not: for a form. */
      readonly said?: ReadLine | undefined;
      /** What was told of the options in doubt as it may be meant, where the request is whole with it: nothing that was not typed. */
      readonly mends?: ReadLine | undefined;
      /** The options that are missing, where nothing told is in doubt. */
      readonly notGiven?: readonly string[] | undefined;
    }
  | { readonly kind: 'nothing' };
