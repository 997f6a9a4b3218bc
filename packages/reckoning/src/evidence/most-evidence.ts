/** In bytes of JSON. A vehicle takes about 5 kB; whoever sends more than this sends something else. */
export const mostEvidenceBytes = 1_000_000
