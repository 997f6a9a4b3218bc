import type { PayloadOf } from '@bayledger/ledger/registry'
import type { OrderState } from '@bayledger/ledger/state'
import { readWheelReadings } from '@bayledger/reckoning/scan/read-wheel-readings'
import { type WheelReading, writeWheelReadings } from '@bayledger/reckoning/scan/wheel-readings'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { expectedIds } from '../../../features/sensor-ids/known-ids.ts'
import { readingFaultWords } from '../../../features/wheel-readings/reading-words.ts'
import { type Phase, wheelsAsked } from './wheels-asked.ts'

/** What a text says of the wheels of one vehicle, before anybody has confirmed it. */
export type AllWheels = {
  readonly readings: readonly WheelReading[]
  /** Line by line, in words. */
  readonly faults: readonly string[]
  /** Wheels whose sensor is asked and of which nothing was read. */
  readonly missing: readonly WheelPosition[]
}

const whyLeftOut: Readonly<Record<Phase, string>> = {
  arrival: 'the sheet says that this wheel has no sensor. It is left out.',
  closing: 'no step of the plan reads its sensor now. It is left out.',
}

/** Reads a text; a wheel whose sensor is not asked is told and left out. */
export const allWheels = (state: OrderState, phase: Phase, text: string): AllWheels => {
  const wheels = wheelsAsked(state, phase).map(({ wheel }) => wheel)
  const { readings, faults } = readWheelReadings(text)
  const here = readings.filter(({ wheel, answer }) => wheels.includes(wheel) || answer === 'not-tried')
  const strangers = readings.filter((reading) => !here.includes(reading))
  return {
    readings: here,
    faults: [
      ...faults.map(readingFaultWords),
      ...strangers.map(({ wheel }) => `${wheel}: ${whyLeftOut[phase]}`),
    ],
    missing: wheels.filter((wheel) => !here.some((reading) => reading.wheel === wheel)),
  }
}

/** An example in the text's own form, with wheels of this vehicle and the IDs that are to be expected there. */
export const exampleText = (state: OrderState, phase: Phase): string =>
  writeWheelReadings(
    wheelsAsked(state, phase)
      .slice(0, 2)
      .map(({ wheel }, index) => ({
        wheel,
        answer: 'answered',
        id: expectedIds(state, wheel)[0]?.id ?? `1A2B3C1${index}`,
        pressure: { value: 31.5, unit: 'psi' },
        temperature: { value: 68, unit: 'F' },
        battery: 'ok',
        frequencyMHz: null,
      })),
  )

/** The entries that record what was read; a wheel that nobody asked gets none. Silent tries add up over the visit. */
export const wheelEntries = (
  state: OrderState,
  phase: Phase,
  readings: readonly WheelReading[],
): PayloadOf<'wheel.checked'>[] =>
  readings.flatMap((reading) => {
    if (reading.answer === 'not-tried') return []
    const { wheel, ...answer } = reading
    const before = state[phase].wheels[wheel]?.sensor?.reading
    const stepKey = wheelsAsked(state, phase).find((one) => one.wheel === wheel)?.stepKey ?? null
    const silentTries = before?.answer === 'silent' ? before.tries : 0
    return [
      {
        phase,
        stepKey,
        wheel,
        mounted: null,
        gauge: null,
        sensor:
          answer.answer === 'silent'
            ? answer
            : { ...answer, tries: silentTries + 1, followsPressure: null, learnRefusals: null },
        notPossible: [],
      },
    ]
  })
