/**
 * The physics of a tire's air, in SI, by the gas law and the standard atmosphere. It shares no line and no constant
 * with the pressures of the product, so that an error there cannot hide an error here.
 */
const pascalsInPsi = 6_894.757

export const kelvinOf = (fahrenheit: number): number => (fahrenheit + 459.67) / 1.8

/**
 * Pressure of the open air in pascals at a height in meters: 101,325 · (1 − 0.0065·h ÷ 288.15)^5.25588.
 * Source: ICAO standard atmosphere, layer up to 11 km.
 */
export const openAir = (meters: number): number => 101_325 * (1 - (0.0065 * meters) / 288.15) ** 5.25588

/** Where a pressure is taken: the tire's own air, and the height above the sea. */
export type Place = { readonly fahrenheit: number; readonly meters: number }

/**
 * Air in a tire whose volume stays as it is, as n·R ÷ V in pascals per kelvin: what stays the same in heat, in cold and
 * on a mountain, and grows less only where air is lost.
 */
export type Air = number

export const airOf = (gaugePsi: number, { fahrenheit, meters }: Place): Air =>
  (gaugePsi * pascalsInPsi + openAir(meters)) / kelvinOf(fahrenheit)

/** What a perfect gauge shows in psi. */
export const gaugeOf = (air: Air, { fahrenheit, meters }: Place): number =>
  (air * kelvinOf(fahrenheit) - openAir(meters)) / pascalsInPsi

/** What a perfect sensor that takes the open air at the sea for the open air around it sends, in psi. */
export const seaLevelGaugeOf = (air: Air, { fahrenheit }: Place): number =>
  gaugeOf(air, { fahrenheit, meters: 0 })

/**
 * The pressure in psi at or under which a warning light must come on: the higher of 75 % of the label and a floor by the
 * tire's kind. Source: 49 CFR 571.138, S4.2(a) [read] and its Table 1 [from memory].
 */
export const warningPoint = (label: number, loadClass: LoadClass): number =>
  Math.max(0.75 * label, floors[loadClass])

const floors = { SL: 20, XL: 23, 'LT-C': 29, 'LT-D': 38, 'LT-E': 46 } as const
export type LoadClass = keyof typeof floors
