import type { TemperatureQuality } from '@bayledger/reckoning/sheet'
import type { TableWording } from './table.ts'
import type { FigureRead } from './torque.ts'

/** Pressures and temperatures are figures with their unit, unless it says otherwise. */
export type ReportPressuresWording = {
  readonly title: string
  readonly noneSet: string
  readonly labelFrom: (source: FigureRead) => string
  readonly howDerived: string
  readonly set: TableWording<
    'wheel' | 'label' | 'outdoors' | 'tire' | 'computed' | 'target' | 'asLeft' | 'onceCold' | 'gauge'
  >
  readonly asTheLabel: string
  readonly atItsLimit: (pressure: string) => string
  readonly coldNotKnown: string
  /** The tire's own air; `air` is `null` where no temperature was read, and `asOthers` where it is that of the other tires. */
  readonly tireAir: (of: {
    readonly air: string | null
    readonly quality: TemperatureQuality
    readonly asOthers: boolean
  }) => string
  /** A gauge whose readings are printed corrected; `offset` signed, in psi without the unit. */
  readonly gaugeCorrected: (code: string, offset: string) => string
  /** `correction` signed, in psi without the unit. */
  readonly gauge: (code: string, correction: string) => string
  readonly margin: {
    /** `wheels`: those that are nearest to the warning light, by name; `all`: how many there are in all. */
    readonly nearest: (of: {
      readonly wheels: readonly string[]
      readonly all: number
      readonly psi: string
      readonly byMaker: boolean
    }) => string
    /** The cold, in °F without the unit, that would light it with no leak. */
    readonly coldLightsIt: (fahrenheit: string) => string
    readonly noColdLightsIt: (fahrenheit: string) => string
  }
}
