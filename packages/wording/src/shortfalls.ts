import type { WheelShortfall } from '@bayledger/reckoning/diagnosis/facts/wheel-shortfall'

/** What a tire lacks, and what took it. Every figure is psi as text, and positive. */
export type ShortfallsWording = {
  readonly lacks: (psi: string) => string
  readonly colder: (psi: string) => string
  readonly warmer: (psi: string) => string
  readonly lower: (psi: string) => string
  readonly higher: (psi: string) => string
  readonly lost: (psi: string) => string
  readonly setHigher: (psi: string) => string
  /** What is left is no more than the readings may be off by. */
  readonly withinError: (most: string) => string
  readonly notKnown: Readonly<Record<Extract<WheelShortfall['why'], string>, string>>
}

/** What one tire lacks, in sentences: how much, what colder air or another altitude did, and what is lost air. */
export const shortfallWords = (words: ShortfallsWording, { lacks, why }: WheelShortfall): string => {
  const whole = words.lacks(lacks.toFixed(1))
  if (typeof why === 'string') return `${whole} ${words.notKnown[why]}`
  const part = (psi: number, took: (psi: string) => string, added: (psi: string) => string): string[] =>
    psi === 0 ? [] : [(psi > 0 ? took : added)(Math.abs(psi).toFixed(1))]
  return [
    whole,
    ...part(why.byTemperature, words.colder, words.warmer),
    ...part(why.byAltitude, words.lower, words.higher),
    ...(why.isBeyondError
      ? part(why.byLostAir, words.lost, words.setHigher)
      : [words.withinError(why.most.toFixed(1))]),
  ].join(' ')
}
