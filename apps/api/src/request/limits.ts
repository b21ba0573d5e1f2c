/** How much a request may ask for. The document says the same figures. House convention, no source. */
export const MAX_BODY_BYTES = 256 * 1024;
/** A piece of a file. */
export const MAX_PIECE_BYTES = 1024 * 1024;
/** Objects and lists within one another. */
export const MAX_BODY_DEPTH = 32;
/** From the first byte of a request to the last of its body. */
export const REQUEST_SECONDS = 30;
/** What the database may take for one statement, waiting for others included. */
export const STATEMENT_SECONDS = 30;
