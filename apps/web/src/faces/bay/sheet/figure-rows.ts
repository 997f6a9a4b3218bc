import type { EnteredFigure } from '@bayledger/contract/sheets'
import type { SheetFigure } from '@bayledger/reckoning/sheet'
import type { RowValues } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'
import { labelIn, labelRows } from './label-rows.ts'
import { liftingIn, liftingRows } from './lifting-rows.ts'
import { relearnIn, relearnRows } from './relearn-rows.ts'
import { sensorIn, sensorRows } from './sensor-rows.ts'
import { studRows, studsIn } from './stud-rows.ts'
import { systemIn, systemRows } from './system-rows.ts'

type FigureForm = {
  readonly rows: (values: RowValues) => readonly Row[]
  /** Called only while every row is answered. */
  readonly entered: (values: RowValues) => EnteredFigure
}

const forms: Readonly<Record<SheetFigure, FigureForm>> = {
  placard: { rows: labelRows, entered: labelIn },
  studTorque: { rows: studRows, entered: studsIn },
  frequency: { rows: sensorRows, entered: sensorIn },
  relearn: { rows: relearnRows, entered: relearnIn },
  system: { rows: systemRows, entered: systemIn },
  lifting: { rows: liftingRows, entered: liftingIn },
}

/** The rows of one figure of a sheet, as it is read at the vehicle or in a book. */
export const figureRows = (figure: SheetFigure, values: RowValues): readonly Row[] =>
  forms[figure].rows(values)

/** What the rows say, as it is sent. Called only while every row is answered. */
export const figureIn = (figure: SheetFigure, values: RowValues): EnteredFigure =>
  forms[figure].entered(values)
