import type { Pressure } from '../quantity.ts'
import type { TemperatureQuality } from '../sheet.ts'

const decimals: Readonly<Record<Pressure['unit'], number>> = { psi: 1, kPa: 0, bar: 2 }

/** The note beside a target, for the person with the air hose. */
export const targetWords = {
  labelOverSidewall: (placard: Pressure, maximum: Pressure): string =>
    `The label asks for ${placard.value} ${placard.unit} and this tire's sidewall allows ${maximum.value} ${maximum.unit} at most. Do not inflate it. Read both figures again: the tire or one of them is wrong.`,

  temperatureUnknown: ({ value, unit }: Pressure): string =>
    `The label's ${value} ${unit}: nobody measured the tire, and a warm one will read low once it is cold. Measure it.`,

  set: (target: Pressure, placard: Pressure, quality: TemperatureQuality, capped: boolean): string => {
    const places = decimals[target.unit]
    const over = (target.value - placard.value).toFixed(places)
    if (capped)
      return `Set ${target.value.toFixed(places)} ${target.unit} at most now, and set the tire again when it is cold.`
    if (Number(over) === 0) return `The label's ${placard.value} ${placard.unit}, as it is.`
    return `${over} ${target.unit} over the label's ${placard.value}, because the tire is warm (temperature ${quality}).`
  },
}
