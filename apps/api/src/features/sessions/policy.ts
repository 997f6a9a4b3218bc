const minute = 60_000
const day = 24 * 60 * minute

/** A desk locks after half an hour without use; nobody stays signed in beyond a long working day. */
export const deskLimits = { idleMs: 30 * minute, absoluteMs: 12 * 60 * minute } as const

/** A tablet locks its own screen after 90 s; the session lasts the shift, so that unsent entries can be delivered. */
export const bayLimits = { idleMs: 12 * 60 * minute, absoluteMs: 12 * 60 * minute } as const

/** A tablet asks to go on with the server as soon as it has heard the server's time; what it signed is old after this. */
export const resumeMs = 5 * minute

/** For how long a password that somebody else gave is taken: long enough to come back from a week off. */
export const firstPasswordMs = 7 * day

/** For how long a browser is known in which nobody signs in: the longest that a browser keeps a cookie. */
export const knownBrowserMs = 400 * day

/**
 * Tries that are counted together. From the `free`th wrong one in a row on there is a wait of a minute, doubling with each
 * further one, `longestWaitMs` at most; each `forgetMs` without a try takes one away.
 */
export type Tries = {
  readonly who: string
  readonly place: string
  readonly free: number
  readonly forgetMs: number
}

export const longestWaitMs = 15 * minute

const few = { free: 5, forgetMs: 15 * minute } as const

/** A browser in which a person has signed in counts for itself: whoever guesses elsewhere cannot lock them out of it. */
export const triesInKnownBrowser = (staffId: string, browserHash: string): Tries => ({
  who: staffId,
  place: `browser:${browserHash}`,
  ...few,
})

/** All other browsers count together, whoever the person is by whom one tries to come in. */
export const triesElsewhere = (who: string): Tries => ({ who, place: 'desk', ...few })

/** A whole shop may have one address, so it has more tries, and time forgets them sooner. */
export const triesOfAddress = (address: string): Tries => ({
  who: address,
  place: 'address',
  free: 15,
  forgetMs: minute,
})

/** Whoever proves again that it is them is signed in already. */
export const triesInSession = (staffId: string, sessionId: string): Tries => ({
  who: staffId,
  place: `session:${sessionId}`,
  ...few,
})

/**
 * A PIN is short: tries at it count for the whole shop, whichever tablet or desk they are made on. The one tablet on which the
 * person signed in last counts for itself, so that guesses elsewhere do not lock them out of their work.
 */
export const triesAtPin = (staffId: string, isOwnTablet: boolean): Tries => ({
  who: staffId,
  place: isOwnTablet ? 'pin-on-own-tablet' : 'pin',
  ...few,
})

export const isOver = (
  session: { readonly kind: 'desk' | 'bay'; readonly lastSeenAt: Date; readonly expiresAt: Date },
  now: Date,
): boolean => {
  const { idleMs } = session.kind === 'desk' ? deskLimits : bayLimits
  return now >= session.expiresAt || now.getTime() - session.lastSeenAt.getTime() > idleMs
}

/** Of an authenticator app: 160 bits, as RFC 4226, section 4, recommends. */
export const secretBytes = 20

/** Ten, each of 125 random bits, where ASVS V6.5.2 asks for 112: nobody guesses one, so that its plain digest is enough. */
export const recoveryCodes = { count: 10, groups: 5, signsEach: 5 } as const

/** With which an owner sets another password: 140 random bits, where ASVS V6.5.2 asks for 112 for a plain digest. */
export const ownerCode = { groups: 7, signsEach: 4 } as const

/** Long enough to fetch a key from a coat (Web Authentication, section 15.1: five to ten minutes with user verification). */
export const challengeMs = 5 * 60_000

/** Of random bits; Web Authentication, section 13.4.3, asks for 16 bytes at least. */
export const challengeBytes = 32

export const mostPasskeys = 10

/** What a challenge is for; one that was made for one purpose is none for another. */
export type Purpose = 'sign-in' | 'proof' | 'adding'

/** Of whom a challenge is: a session, or a browser in which nobody is signed in. */
export type Holder = { readonly sessionId: string } | { readonly browserHash: string }
