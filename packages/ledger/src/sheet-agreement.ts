import type { SafetyFigure, SpecificationSheet } from '@bayledger/reckoning/sheet'
import { digestOf } from './digests.ts'

type Figures = Pick<SpecificationSheet, 'name' | 'placard' | 'tire' | 'studs' | 'sensor'> & {
  readonly sources: Readonly<
    Record<SafetyFigure, { readonly kind: string; readonly reference: string } | null>
  >
}

/**
 * SHA-256 of what a second person verifies of a sheet: one safety figure of one vehicle type, with the source that it
 * was read from. Who entered it is no part of it. `null`: the sheet gives no source, so that nothing can be verified.
 */
export const sheetFigureDigest = (sheet: Figures, figure: SafetyFigure): string | null => {
  const source = sheet.sources[figure]
  if (source === null) return null
  const { kind, reference } = source
  return digestOf({ vehicle: sheet.name, figure, of: figureOf(sheet, figure), source: { kind, reference } })
}

const figureOf = (sheet: Figures, figure: SafetyFigure): unknown => {
  switch (figure) {
    case 'placard':
      return { placard: sheet.placard, tire: sheet.tire }
    case 'studTorque':
      return sheet.studs
    case 'frequency':
      return sheet.sensor
  }
}
