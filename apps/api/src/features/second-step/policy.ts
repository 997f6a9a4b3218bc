/** 160 bits, as RFC 4226, section 4, recommends. */
export const secretBytes = 20

/** Ten, each of 100 random bits: nobody guesses one, so that its plain digest is enough. */
export const recoveryCodes = { count: 10, groups: 4, signsEach: 5 } as const
