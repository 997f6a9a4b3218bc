import { entryRows } from './entries.ts'
import { messageRows } from './messages.ts'
import type { Projection } from './projection.ts'
import { sealedReportRows } from './sealed-reports.ts'
import { seenSensorRows } from './seen-sensors.ts'
import { allSideRows } from './sides.ts'
import { stockMovementRows } from './stock-movements.ts'
import { wrenchCycleRows } from './wrench-cycles.ts'

/** Everything that an append writes beside the heads, instruments before stock. */
export const allProjections: readonly Projection[] = [
  entryRows,
  ...allSideRows,
  wrenchCycleRows,
  stockMovementRows,
  seenSensorRows,
  sealedReportRows,
  messageRows,
]
