/** When a vehicle will be ready, as its customer reads or hears it. Times are made by `whenWords`. */
export type ReadyWording = {
  readonly about: (when: string) => string
  /** `part`: when the part comes that it waits for. */
  readonly afterPart: (of: { readonly when: string; readonly part: string }) => string
  readonly partWithoutDate: string
  /** Read out when it will be later than was promised. */
  readonly later: (of: {
    readonly vehicle: string
    readonly when: string
    readonly promised: string
  }) => string
}

/** "3:40 PM" on the shop's day of `now`, else "Tue, Jan 13, 7:50 AM". Instants are UTC text. */
export const whenWords = (
  instant: string,
  { locale, timeZone, now }: { readonly locale: string; readonly timeZone: string; readonly now: string },
): string => {
  const day = (at: string) =>
    new Intl.DateTimeFormat(locale, { timeZone, dateStyle: 'short' }).format(new Date(at))
  const time = { hour: 'numeric', minute: '2-digit', hour12: true } as const
  const options =
    day(instant) === day(now)
      ? time
      : ({ ...time, weekday: 'short', month: 'short', day: 'numeric' } as const)
  // Programs differ in the space before AM and PM, and a line must not break there.
  return new Intl.DateTimeFormat(locale, { timeZone, ...options })
    .format(new Date(instant))
    .replace(/[\u202f\u00a0 ](?=[AaPp]\.?[\u00a0 ]?[Mm])/g, '\u00a0')
}
