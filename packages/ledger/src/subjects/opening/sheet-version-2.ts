import { type LoadClass, SpecificationSheet } from '@bayledger/reckoning/sheet'
import * as z from 'zod/mini'

const classes: ReadonlySet<LoadClass> = new Set(['SL', 'XL', 'LT-C', 'LT-D', 'LT-E'])

/** Versions 1 and 2 of `sheet.chosen`: sheets that knew five load classes. */
export const SheetVersion2 = z.strictObject({
  sheet: SpecificationSheet.check(
    z.refine(
      ({ tire }) => [tire.front, tire.rear, tire.spare].every((one) => !one || classes.has(one.loadClass)),
      { path: ['tire'], error: 'a sheet of version 2 has only the load classes that version 2 knew' },
    ),
  ),
})
