import { Instrument } from '@bayledger/contract/settings'
import type { InstrumentRow } from './store.ts'

export const presentInstrument = (row: InstrumentRow): Instrument => {
  const body = row.body as Record<string, unknown>
  const shared = {
    instrumentId: row.id,
    locationId: row.locationId,
    code: row.code,
    dueOn: row.dueOn?.toISOString().slice(0, 10) ?? null,
    quarantined: row.quarantined,
  }
  return Instrument.parse(
    row.kind === 'gauge'
      ? { kind: 'gauge', ...shared, correctionPsi: body.correctionPsi }
      : {
          kind: 'wrench',
          ...shared,
          cycles: row.cycles,
          rangeLow: body.rangeLow,
          rangeHigh: body.rangeHigh,
          rangeUnit: body.rangeUnit,
        },
  )
}
