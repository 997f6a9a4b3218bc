import { torqueDoubts } from '@bayledger/reckoning/torque/plausible-torque'
import type { TorqueUnit } from '@bayledger/reckoning/units/torque-units'

/** Whether our guard against slips accepts a figure for a stud, even if it questions the unit. */
export const isUsual = (thread: string, value: number, unit: TorqueUnit = 'lbf·ft'): boolean =>
  torqueDoubts(thread, { value, unit }).every(({ code }) => code === 'usual-in-other-units')

/** A printed range as one check for each of its ends. */
export const ends = (rows: readonly (readonly [thread: string, low: number, high: number])[]) =>
  rows.flatMap(([thread, low, high]) => [[thread, low] as const, [thread, high] as const])
