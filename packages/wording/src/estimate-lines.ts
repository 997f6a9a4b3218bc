import type { EstimateLine, LineCode } from '@bayledger/reckoning/estimate'

/** What a language calls the lines of an estimate. `megahertz`: the frequency of the sensor that is sold. */
export type EstimateLinesWording = {
  readonly names: Readonly<Record<Exclude<LineCode, 'sensor'>, string>>
  readonly sensor: (megahertz: number, stem: 'snap-in' | 'clamp-in') => string
}

/** A line's name; a line that a person wrote keeps their words. */
export const lineWords = (
  words: EstimateLinesWording,
  { code, words: written, sensor }: EstimateLine,
): string => {
  if (code === null) return written ?? ''
  return code === 'sensor'
    ? words.sensor(sensor?.frequencyMHz ?? 0, sensor?.stem ?? 'snap-in')
    : words.names[code]
}
