/** Dollars as they are typed, in cents; `null` where they are no amount from 0 to 100,000 with at most two decimals. */
export const centsTyped = (typed: string): number | null => {
  const read = /^\$?(\d{1,6}|\d{1,3},\d{3})(?:\.(\d{1,2}))?$/.exec(typed.trim())
  if (!read) return null
  const cents = Number(read[1]?.replace(',', '')) * 100 + Number((read[2] ?? '').padEnd(2, '0'))
  return cents <= 10_000_000 ? cents : null
}

/** A quantity as it is typed, in hundredths; `null` where it is none from 0.01 to 999. */
export const quantityTyped = (typed: string): number | null => {
  const read = /^(\d{1,3})(?:\.(\d{1,2}))?$/.exec(typed.trim())
  const hundredths = read ? Number(read[1]) * 100 + Number((read[2] ?? '').padEnd(2, '0')) : 0
  return hundredths > 0 ? hundredths : null
}
