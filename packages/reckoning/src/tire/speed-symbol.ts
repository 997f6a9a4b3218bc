import { type KilometersPerHour, kilometersPerHour } from '../units/measured.ts'

/** From the slowest to the fastest. H comes between U and V; I, O and X mean no speed. */
const kilometersPerHourOf = {
  A1: 5,
  A2: 10,
  A3: 15,
  A4: 20,
  A5: 25,
  A6: 30,
  A7: 35,
  A8: 40,
  B: 50,
  C: 60,
  D: 65,
  E: 70,
  F: 80,
  G: 90,
  J: 100,
  K: 110,
  L: 120,
  M: 130,
  N: 140,
  P: 150,
  Q: 160,
  R: 170,
  S: 180,
  T: 190,
  U: 200,
  H: 210,
  V: 240,
  W: 270,
  Y: 300,
  '(Y)': 300,
} as const

export type SpeedSymbol = keyof typeof kilometersPerHourOf

/** The speed up to which a symbol holds; `above`: it means more than that, and only the tire's maker says how much. */
export type SpeedRating = { readonly kilometersPerHour: KilometersPerHour; readonly above: boolean }

/**
 * What a speed symbol means. It is what the tire was tested for, not permission to drive that fast.
 *
 * @formula the table above
 * @units km/h
 * @source UN R30 and ETRTO, table of speed symbols (read in public code files that agree); that (Y) means more
 * than 300 km/h: from memory
 */
export const speedOfSymbol = (symbol: SpeedSymbol): SpeedRating => ({
  kilometersPerHour: kilometersPerHour(kilometersPerHourOf[symbol]),
  above: symbol === '(Y)',
})

/**
 * What ZR in a size means: more than 240 km/h (149 mph). The speed symbol beside it says how much
 * more or, where none is printed, the tire's maker.
 *
 * @units km/h
 * @source an owner handbook's words on sizes (quoted)
 */
export const speedOfZr: SpeedRating = { kilometersPerHour: kilometersPerHour(240), above: true }

/**
 * Whether a text is one of the speed symbols as a tire prints it, in capital letters.
 *
 * @source as for `speedOfSymbol`
 */
export const isSpeedSymbol = (text: string): text is SpeedSymbol => Object.hasOwn(kilometersPerHourOf, text)

/**
 * Whether the first symbol means less than the second: H is faster than U, and (Y) is faster than Y.
 *
 * @source as for `speedOfSymbol`
 */
export const isSlower = (symbol: SpeedSymbol, than: SpeedSymbol): boolean => rank(symbol) < rank(than)

const rank = (symbol: SpeedSymbol): number => Object.keys(kilometersPerHourOf).indexOf(symbol)
