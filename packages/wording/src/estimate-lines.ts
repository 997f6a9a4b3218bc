import type { EstimateLine, LineCode } from '@bayledger/reckoning/estimate'

/** How a language calls the lines of an estimate. `megahertz` is of the sensor that is sold. */
export type EstimateLinesWording = {
  readonly names: Readonly<Record<Exclude<LineCode, 'sensor'>, string>>
  readonly sensor: (megahertz: number, stem: 'snap-in' | 'clamp-in') => string
}

/** What a line is called; one that a person wrote keeps their words. */
export const lineWords = (
  words: EstimateLinesWording,
  { code, words: written, sensor }: EstimateLine,
): string => {
  if (code === null) return written ?? ''
  return code === 'sensor'
    ? words.sensor(sensor?.frequencyMHz ?? 0, sensor?.stem ?? 'snap-in')
    : words.names[code]
}
