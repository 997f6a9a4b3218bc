import { type CompleteSheet, type LoadClass, SpecificationSheet } from '@bayledger/reckoning/sheet'
import * as z from 'zod/mini'

const isComplete = (sheet: SpecificationSheet): sheet is CompleteSheet =>
  sheet.placard !== 'missing' &&
  sheet.tire !== 'missing' &&
  sheet.sensor !== 'missing' &&
  sheet.studs !== 'missing' &&
  sheet.relearn !== 'missing' &&
  sheet.sources.placard !== null &&
  sheet.sources.placard.kind !== 'memory' &&
  sheet.sources.studTorque !== null &&
  sheet.sources.studTorque.kind !== 'memory' &&
  sheet.sources.frequency?.kind !== 'memory' &&
  sheet.spare !== 'unknown'

/** Version 4 of `sheet.chosen`: only the safety figures had a source of their own, and every label was typed in psi. */
export const SheetVersion4 = z.strictObject({
  sheet: SpecificationSheet.check(
    z.refine(
      ({ sources: { relearn, system, lifting } }) =>
        relearn === undefined && system === undefined && lifting === undefined,
      { path: ['sources'], error: 'a sheet of version 4 names no source but of its safety figures' },
    ),
    z.refine(
      ({ placard }) =>
        placard === 'missing' ||
        [placard.front, placard.rear, placard.spare].every((printed) => printed?.typed === undefined),
      { path: ['placard'], error: 'a sheet of version 4 has labels in psi only' },
    ),
  ),
})

/** Version 3 of `sheet.chosen`: sheets on which every figure had to be, read from a source. */
export const SheetVersion3 = z.strictObject({
  sheet: SpecificationSheet.check(
    z.refine(isComplete, { error: 'a sheet of version 3 has every figure, each from a source' }),
  ),
})

const classes: ReadonlySet<LoadClass> = new Set(['SL', 'XL', 'LT-C', 'LT-D', 'LT-E'])

/** Versions 1 and 2 of `sheet.chosen`: sheets that knew five load classes. */
export const SheetVersion2 = z.strictObject({
  sheet: SpecificationSheet.check(
    z.refine(isComplete, { error: 'a sheet of version 2 has every figure, each from a source' }),
    z.refine(
      ({ tire }) =>
        tire === 'missing' ||
        [tire.front, tire.rear, tire.spare].every((one) => !one || classes.has(one.loadClass)),
      { path: ['tire'], error: 'a sheet of version 2 has only the load classes that version 2 knew' },
    ),
  ),
})
