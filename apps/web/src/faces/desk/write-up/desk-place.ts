const key = 'bayledger.place'

/** The location that this desk last wrote up for, or whose day it last looked at; a desk does not move, so the desk is asked once. */
export const rememberedPlace = (known: readonly string[]): string | null => {
  try {
    const stored = localStorage.getItem(key)
    if (stored !== null && known.includes(stored)) return stored
  } catch {
    // Storage is disabled: ask each time.
  }
  return known.length === 1 ? (known[0] ?? null) : null
}

export const rememberPlace = (locationId: string): void => {
  try {
    localStorage.setItem(key, locationId)
  } catch {
    // As above.
  }
}
