import type { StockPart } from '@bayledger/contract/settings'
import { isSameFrequency } from '@bayledger/reckoning/sensor/frequency'
import { type SpecificationSheet, sensorOf } from '@bayledger/reckoning/sheet'
import { useQuery } from '@tanstack/react-query'
import { stockQuery } from '../../../features/settings/queries.ts'
import { tooLong } from '../../../lib/fault-words.ts'
import type { RowOption } from '../../../ui/rows/rows.ts'
import type { Row } from '../form/rows.ts'

/** The stock list of the place where an order is; empty while it is not loaded. */
export const useStock = (locationId: string | null): readonly StockPart[] =>
  (useQuery(stockQuery).data?.parts ?? []).filter((part) => part.locationId === locationId)

/** What a scanner may read off any part of the stock. */
export const partNumbers = (stock: readonly StockPart[]): string[] =>
  stock.map(({ partNumber }) => partNumber)

/** Sensors on the list that the sheet allows: those on hand first, those held back never. */
export const sensorsFor = (stock: readonly StockPart[], sheet: SpecificationSheet | null): StockPart[] => {
  const need = sensorOf(sheet)
  if (!need) return []
  return stock
    .filter(
      ({ kind, heldBack, stem, frequenciesMHz, protocols = [] }) =>
        kind === 'sensor' &&
        heldBack === null &&
        (stem === null || stem === need.stem) &&
        (protocols.length === 0 || protocols.includes(need.protocol)) &&
        frequenciesMHz.some((megahertz) => isSameFrequency(megahertz, need.frequencyMHz)),
    )
    .sort((one, other) => Math.sign(other.onHand) - Math.sign(one.onHand))
}

/** The frequency of a listed part, in MHz: of a dual one, the one that the sheet requires. */
export const frequencyFor = (
  { frequenciesMHz }: StockPart,
  sheet: SpecificationSheet | null,
): number | null => {
  const wanted = sensorOf(sheet)?.frequencyMHz
  return (
    frequenciesMHz.find((megahertz) => wanted !== undefined && isSameFrequency(megahertz, wanted)) ??
    frequenciesMHz[0] ??
    null
  )
}

/** Kits on the list for a stem. */
export const kitsFor = (stock: readonly StockPart[], stem: 'snap-in' | 'clamp-in' | null): StockPart[] =>
  stock.filter((part) => part.kind === 'kit' && part.heldBack === null && part.stem === stem)

/** The lots of the last deliveries can be picked. A list that a tablet kept from before names none. */
export const lotRow = (key: string, label: string, part: StockPart | undefined): Row => ({
  kind: 'text',
  key,
  label,
  exact: true,
  optional: 'not marked',
  aside: true,
  suggestions: (part?.lots ?? []).map((lot) => ({ value: lot, label: lot })),
  fault: (text) => tooLong(text, 60, 'signs'),
})

/** "TS-315-C", with what it is and how many are there. */
export const partOption = ({ partNumber, words, onHand }: StockPart): RowOption => ({
  value: partNumber,
  label: partNumber,
  detail: `${words} · ${onHand} on hand`,
})
