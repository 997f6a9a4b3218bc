import type { PayloadOf } from '@bayledger/ledger/registry'
import type { OrderState } from '@bayledger/ledger/state'
import { readWheelReadings } from '@bayledger/reckoning/scan/read-wheel-readings'
import { type WheelReading, writeWheelReadings } from '@bayledger/reckoning/scan/wheel-readings'
import { readingOrder, roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'
import { readingFaultWords } from '../../../features/wheel-readings/reading-words.ts'

/** What a text says of the wheels of one vehicle, before anybody has confirmed it. */
export type AllWheels = {
  readonly readings: readonly WheelReading[]
  /** Line by line, in words. */
  readonly faults: readonly string[]
  /** Wheels with a sensor of which nothing was read. */
  readonly missing: readonly WheelPosition[]
}

const wheelsWithSensor = (state: OrderState): readonly WheelPosition[] =>
  state.sheet?.sheet.spareMonitored ? readingOrder : roadPositions

/** Reads a text; a wheel without a sensor is told and left out. */
export const allWheels = (state: OrderState, text: string): AllWheels => {
  const wheels = wheelsWithSensor(state)
  const { readings, faults } = readWheelReadings(text)
  const here = readings.filter(({ wheel, answer }) => wheels.includes(wheel) || answer === 'not-tried')
  const strangers = readings.filter((reading) => !here.includes(reading))
  return {
    readings: here,
    faults: [
      ...faults.map(readingFaultWords),
      ...strangers.map(
        ({ wheel }) => `${wheel}: the sheet says that this wheel has no sensor. It is left out.`,
      ),
    ],
    missing: wheels.filter((wheel) => !here.some((reading) => reading.wheel === wheel)),
  }
}

/** An example in the text's own form, with wheels and stored IDs of this vehicle. */
export const exampleText = (state: OrderState): string =>
  writeWheelReadings(
    wheelsWithSensor(state)
      .slice(0, 2)
      .map((wheel, index) => ({
        wheel,
        answer: 'answered',
        id: state.arrival.module?.ids[wheel] ?? `1A2B3C1${index}`,
        pressure: { value: 31.5, unit: 'psi' },
        temperature: { value: 68, unit: 'F' },
        battery: 'ok',
        frequencyMHz: null,
      })),
  )

/** The entries that record what was read; a wheel that nobody asked gets none. Silent tries add up over the visit. */
export const wheelEntries = (
  state: OrderState,
  readings: readonly WheelReading[],
): PayloadOf<'wheel.checked'>[] =>
  readings.flatMap((reading) => {
    if (reading.answer === 'not-tried') return []
    const { wheel, ...answer } = reading
    const before = state.arrival.wheels[wheel]?.sensor?.reading
    const silentTries = before?.answer === 'silent' ? before.tries : 0
    return [
      {
        phase: 'arrival',
        stepKey: null,
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
