/** In bytes of JSON. A vehicle takes about 5 kB; anything larger is not evidence. */
export const mostEvidenceBytes = 1_000_000
