/** How much a request may ask for. The document says the same figures. House convention, no source. */
export const MAX_BODY_BYTES = 256 * 1024;
/** Objects and lists within one another. */
export const MAX_BODY_DEPTH = 32;
