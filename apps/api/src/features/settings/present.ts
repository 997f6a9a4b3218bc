import { Instrument, type StockPart } from '@bayledger/contract/settings'
import * as z from 'zod/mini'
import { GaugeBody, WrenchBody } from '../../core/instrument-body.ts'
import { frequenciesOf, PartFamily } from '../../core/part-family.ts'
import type { InstrumentRow, LocationRow, StockRow } from './store.ts'

export const presentInstrument = (row: InstrumentRow): Instrument => {
  const shared = {
    instrumentId: row.id,
    locationId: row.locationId,
    code: row.code,
    dueOn: row.dueOn?.toISOString().slice(0, 10) ?? null,
    quarantined: row.quarantined,
  }
  return Instrument.parse(
    row.kind === 'gauge'
      ? { kind: 'gauge', ...shared, ...GaugeBody.parse(row.body) }
      : { kind: 'wrench', ...shared, cycles: row.cycles, ...WrenchBody.parse(row.body) },
  )
}

/** None for a line that says nothing of its part. */
export const presentStockPart = (row: StockRow): StockPart[] => {
  const family = PartFamily.safeParse(row.family)
  if (!family.success) return []
  const { kind, words, stem, madeMonth, blocked } = family.data
  const { partNumber, locationId, onHand } = row
  return [
    {
      partNumber,
      locationId,
      kind,
      words,
      frequenciesMHz: frequenciesOf(family.data),
      stem,
      madeMonth,
      heldBack: blocked,
      onHand,
    },
  ]
}

export const presentLocation = (row: LocationRow) => ({
  locationId: row.id,
  name: row.name,
  altitudeFeet: row.altitudeFeet,
  timeZone: row.timeZone,
  lawProfile: row.lawProfile as Record<string, unknown>,
})

/** The setting `report-head`: the lines printed under the shop's name, and the telephone number to call. */
export const presentShopHead = (
  settings: readonly { readonly kind: string; readonly version: number; readonly body: unknown }[],
): { readonly version: number; readonly lines: readonly string[]; readonly telephone: string | null } => {
  const head = settings.find(({ kind }) => kind === 'report-head')
  const body = ShopHead.safeParse(head?.body)
  return {
    version: head?.version ?? 0,
    lines: body.success ? body.data.lines : [],
    telephone: body.success ? body.data.telephone : null,
  }
}

const ShopHead = z.object({ lines: z.array(z.string()), telephone: z.nullable(z.string()) })
