const minute = 60_000

/** A desk locks after half an hour without use; nobody stays signed in beyond a long working day. */
export const deskLimits = { idleMs: 30 * minute, absoluteMs: 12 * 60 * minute } as const

/** A tablet locks its own screen after 90 s; the session lasts the shift, so that unsent entries can be delivered. */
export const bayLimits = { idleMs: 12 * 60 * minute, absoluteMs: 12 * 60 * minute } as const

/** A tablet asks to go on with the server as soon as it has heard the server's time; what it signed is old after this. */
export const resumeMs = 5 * minute

/** From this try in a row on there is a wait of a minute, doubling with each further one, a day at most. */
export const freeTries = 5

export const isOver = (
  session: { readonly kind: 'desk' | 'bay'; readonly lastSeenAt: Date; readonly expiresAt: Date },
  now: Date,
): boolean => {
  const { idleMs } = session.kind === 'desk' ? deskLimits : bayLimits
  return now >= session.expiresAt || now.getTime() - session.lastSeenAt.getTime() > idleMs
}
