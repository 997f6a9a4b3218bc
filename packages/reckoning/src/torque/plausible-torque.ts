import type { Torque } from '../quantity.ts'
import { torqueIn } from '../units/torque-units.ts'

/**
 * What is odd about a wheel torque typed for a stud, in words for whoever confirms it from the maker's source. A
 * guard against slips of the hand, never a source: a figure inside the band is not verified by that. Empty where
 * the thread is not in the table or nothing is odd.
 */
export const torqueDoubts = (thread: string, torque: Torque): string[] => {
  const band = bandOf(thread)
  if (!band) return []
  const poundFeet = torqueIn('lbf·ft', torque)
  const slipped = slippedUnit(torque)
  const inBand = isInside(poundFeet, band)
  const slippedInBand = isInside(torqueIn('lbf·ft', slipped), band)
  const usual = `${band.low} to ${band.high} lbf·ft`
  if (inBand && slippedInBand)
    return [
      `${torque.value} is usual for ${thread} in ${torque.unit} and in ${slipped.unit}: see which unit the source prints.`,
    ]
  if (inBand) return []
  return [
    `${torqueWords(torque)} is outside the usual ${usual} for ${thread}.`,
    slippedInBand ? `Is it ${slipped.value} ${slipped.unit}?` : 'Read the source again.',
  ]
}

/** A torque in the unit it was printed in, with the other unit that wrenches carry: "100 lbf·ft (136 N·m)". */
export const torqueWords = (torque: Torque): string => {
  const other = torque.unit === 'N·m' ? 'lbf·ft' : 'N·m'
  const digits = torque.unit === 'lbf·in' ? 1 : 0
  return `${torque.value} ${torque.unit} (${torqueIn(other, torque).toFixed(digits)} ${other})`
}

type Band = { readonly stud: RegExp; readonly low: number; readonly high: number }

/** lbf·ft by stud. Common practice, no source: wide, because published charts and makers differ. */
const bands: readonly Band[] = [
  { stud: /^M10\b/i, low: 35, high: 65 },
  { stud: /^M12\b/i, low: 65, high: 115 },
  { stud: /^M14\b/i, low: 80, high: 165 },
  { stud: /^M16\b/i, low: 120, high: 220 },
  { stud: /^7\/16\b/, low: 50, high: 85 },
  { stud: /^1\/2\b/, low: 70, high: 115 },
  { stud: /^9\/16\b/, low: 100, high: 180 },
  { stud: /^5\/8\b/, low: 120, high: 220 },
]

const bandOf = (thread: string): Band | undefined => bands.find(({ stud }) => stud.test(thread.trim()))

const isInside = (poundFeet: number, { low, high }: Band): boolean => poundFeet >= low && poundFeet <= high

/** The same number in the unit that it is most easily mistaken for. */
const slippedUnit = ({ value, unit }: Torque): Torque => ({
  value,
  unit: unit === 'lbf·ft' ? 'N·m' : 'lbf·ft',
})
