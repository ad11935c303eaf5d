/** A file that comes with an answer: told as plain data, and made of the answer's own data when it is sent. */

export interface FileMade {
  /** Small letters, figures and hyphens, with its ending. */
  readonly name: string;
  readonly title: string;
  /** What is in it, for whoever cannot open it. */
  readonly alt: string;
  readonly as: FileForm;
}

/** What it is made as. `paper`: that of the asker's units where none is told; `list`: which of the lists of a project. */
export type FileForm =
  | { readonly form: 'pdf'; readonly paper?: 'letter' | 'a4' }
  | { readonly form: 'csv'; readonly list: FileList }
  | { readonly form: 'json' };

export const FILE_LISTS = ['shopping', 'cuts', 'rows', 'pieces', 'checklist'] as const;
export type FileList = (typeof FILE_LISTS)[number];

/** Media types by form, as registered with IANA. */
export const MEDIA_TYPES: Readonly<Record<FileForm['form'], string>> = {
  pdf: 'application/pdf',
  csv: 'text/csv; charset=utf-8',
  json: 'application/json',
};
