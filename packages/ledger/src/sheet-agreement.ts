import type { SheetFigure, SpecificationSheet } from '@bayledger/reckoning/sheet'
import { digestOf } from './digests.ts'

type Figures = Omit<SpecificationSheet, 'sheetId' | 'version' | 'sources'> & {
  readonly sources: {
    readonly [Figure in SheetFigure]?:
      | { readonly kind: string; readonly reference: string }
      | null
      | undefined
  }
}

/**
 * SHA-256 of what a second person verifies of a sheet: one figure of one vehicle type, with the source that it
 * was read from. Who entered it is no part of it. `null`: the sheet gives no source, so that nothing can be verified.
 */
export const sheetFigureDigest = (sheet: Figures, figure: SheetFigure): string | null => {
  const source = sheet.sources[figure] ?? null
  if (source === null) return null
  const { kind, reference } = source
  return digestOf({ vehicle: sheet.name, figure, of: figureOf(sheet, figure), source: { kind, reference } })
}

const figureOf = (sheet: Figures, figure: SheetFigure): unknown => {
  switch (figure) {
    case 'placard':
      return { placard: sheet.placard, tire: sheet.tire }
    case 'studTorque':
      return sheet.studs
    case 'frequency':
      return sheet.sensor
    case 'relearn':
      return sheet.relearn
    case 'system': {
      const { system, pressureDisplay, locatesWheels, spareMonitored, staggered, warnAtPsi } = sheet
      return { system, pressureDisplay, locatesWheels, spareMonitored, staggered, warnAtPsi }
    }
    case 'lifting':
      return sheet.liftNotes
  }
}
