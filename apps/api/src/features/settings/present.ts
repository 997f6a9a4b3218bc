import { Instrument, type StockPart } from '@bayledger/contract/settings'
import { GaugeBody, WrenchBody } from '../../core/instrument-body.ts'
import { contentOf } from '../../core/part-family.ts'
import { readShopHead, type ShopHead } from '../../core/shop-head.ts'
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
  const content = contentOf(row.family)
  if (content === null) return []
  const { kind, words, frequenciesMHz, stem, holeMillimeters, protocols, ratedPsi, madeMonth } = content
  const { partNumber, locationId, onHand, changes } = row
  return [
    {
      partNumber,
      locationId,
      kind,
      words,
      frequenciesMHz,
      stem,
      holeMillimeters,
      protocols,
      ratedPsi,
      nutLbfIn: content.nutLbfIn,
      screwLbfIn: content.screwLbfIn,
      madeMonth,
      shelfMonths: content.shelfMonths,
      heldBack: content.heldBack,
      onHand,
      lots: [...new Set(changes.flatMap(({ lot }) => lot ?? []))],
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

/** The newest version of the setting `report-head`, with its number; 0 where there is none. */
export const presentShopHead = (
  settings: readonly { readonly kind: string; readonly version: number; readonly body: unknown }[],
): ShopHead & { readonly version: number } => {
  const head = settings.find(({ kind }) => kind === 'report-head')
  return { version: head?.version ?? 0, ...readShopHead(head?.body) }
}
