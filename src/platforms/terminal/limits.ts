/** What a terminal can show. */

/** Columns when the terminal does not tell its own. */
export const COLUMNS = 80;
/** Narrower than this, tables are written as lists. */
export const NARROWEST_TABLE = 48;
/** Lines of history kept. */
export const HISTORY = 500;
