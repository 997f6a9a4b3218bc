import { getLastOdometer } from '@bayledger/contract/orders'
import { type OdometerDoubt, odometerDoubt } from '@bayledger/ledger/questions/odometer'
import { isConfirmable, type OdometerBefore } from '@bayledger/reckoning/vehicle/judge-odometer'
import { odometerImplausible } from '@bayledger/wording/en/odometer-implausible'
import { useQuery } from '@tanstack/react-query'
import { call } from '../../lib/api-client.ts'
import { odometerFaults } from '../../lib/fault-words.ts'
import type { TypedFigure } from '../../ui/number-text.ts'

/** How one field judges a reading, by the ledger's own rule. */
export type JudgeOdometer = (read: { value: number; unit: 'mi' }, confirmed: boolean) => OdometerDoubt | null

/** Judges by what it read before. */
export const comparedWith =
  (before: OdometerBefore | null): JudgeOdometer =>
  (read, confirmed) =>
    odometerDoubt(read, before, confirmed)

/** Why the typed odometer cannot be recorded; an empty field means "not read" and is allowed. */
export const odometerFault = (
  typed: TypedFigure,
  judge: JudgeOdometer,
  confirmed: boolean,
): string | undefined => {
  if (typed === 'unreadable' || (typed !== null && typed < 0)) return odometerFaults.noFigure
  const read = odometerRead(typed)
  const doubt = read && judge(read, confirmed)
  return doubt ? odometerImplausible(doubt) : undefined
}

/** Whether the typed figure is one that a person confirms. */
export const isUnlikely = (typed: TypedFigure, judge: JudgeOdometer): boolean => {
  const read = odometerRead(typed)
  const doubt = read && judge(read, false)
  return doubt !== null && doubt.why !== 'beyond-drive' && isConfirmable(doubt.why)
}

/** The value for the ledger; call `odometerFault` first. */
export const odometerRead = (typed: TypedFigure): { value: number; unit: 'mi' } | null =>
  typeof typed === 'number' ? { value: typed, unit: 'mi' } : null

/** What a known vehicle's odometer read at its last visit. */
export const useLastOdometer = (vehicleId: string | null) =>
  useQuery({
    queryKey: ['last-odometer', vehicleId],
    enabled: vehicleId !== null,
    queryFn: () => call(getLastOdometer, { params: { vehicleId: vehicleId ?? '' } }),
  }).data?.last ?? null
