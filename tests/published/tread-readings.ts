import type { Grooves, TreadReadings } from '@bayledger/reckoning/tire/judge-tread'
import type { Length } from '@bayledger/reckoning/units/length-units'

const thirtySeconds = (value: number): Length => ({ value, unit: '1/32 in' })

/** Three grooves at one place, in 32nds of an inch, one digit each: '113'. */
const placeOf = (digits: string): Grooves => {
  const [one = 0, two = 0, three = 0] = [...digits].map(Number)
  return [thirtySeconds(one), thirtySeconds(two), thirtySeconds(three)]
}

/** Three places, written '113 222 333'; a single one means all three. */
export const treadOf = (text: string): TreadReadings => {
  const [one = '', two = one, three = one] = text.split(' ')
  return [placeOf(one), placeOf(two), placeOf(three)]
}
