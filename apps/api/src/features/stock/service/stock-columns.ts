import type { StockContent } from '@bayledger/contract/stock'
import {
  type Cell,
  centsCell,
  choiceCell,
  maybe,
  maybeTextCell,
  numberCell,
  severalCell,
  textCell,
  wholeNumberCell,
} from '../../../core/csv/cells.ts'
import type { RowOf } from '../../../core/csv/csv-table.ts'
import { cellWords } from '../../../words/csv-words.ts'

const torque = numberCell({ from: 1, to: 200, unit: 'lbf·in' })

const frequencies: Cell<readonly number[]> = {
  read: (text) => {
    const list = severalCell(2).read(text)
    if (!('value' in list)) return list
    const numbers: number[] = []
    for (const one of list.value) {
      const read = numberCell({ from: 100, to: 3_000, unit: 'MHz' }).read(one)
      if (!('value' in read)) return read
      numbers.push(read.value)
    }
    return { value: numbers }
  },
  write: (list) => list.join('; '),
}

const month: Cell<string> = {
  read: (text) => (/^\d{4}-(0[1-9]|1[0-2])$/.test(text.trim()) ? { value: text.trim() } : cellWords.noMonth),
  write: (value) => value,
}

/** What a file of the stock lists holds. `on_hand` of a line that is there is a count. */
export const stockColumns = {
  place: textCell(80),
  part_number: textCell(60),
  kind: choiceCell(['sensor', 'kit', 'repair-unit', 'tire', 'fastener', 'supply']),
  words: textCell(120),
  on_hand: wholeNumberCell({ from: -99_999, to: 99_999, unit: 'pieces' }),
  frequencies_mhz: frequencies,
  stem: maybe(choiceCell(['snap-in', 'clamp-in'])),
  hole_mm: maybe(numberCell({ from: 5, to: 30, unit: 'mm' })),
  protocols: severalCell(60),
  rated_psi: maybe(numberCell({ from: 20, to: 200, unit: 'psi' })),
  nut_lbf_in: maybe(torque),
  screw_lbf_in: maybe(torque),
  made_month: maybe(month),
  shelf_months: maybe(wholeNumberCell({ from: 1, to: 36, unit: 'months' })),
  held_back: maybe(maybeTextCell(200)),
  minimum: maybe(wholeNumberCell({ from: 0, to: 9_999, unit: 'pieces' })),
  lead_days: maybe(wholeNumberCell({ from: 0, to: 365, unit: 'days' })),
  core_deposit: maybe(centsCell({ fromCents: 0, toCents: 1_000_000 })),
  supplier: maybe(maybeTextCell(120)),
}
export type StockRow = RowOf<typeof stockColumns>

/** A line as a row; `place` by its name, because a file is read by people. */
export const rowOfStock = (content: StockContent, onHand: number, place: string): StockRow => ({
  place,
  part_number: content.partNumber,
  kind: content.kind,
  words: content.words,
  on_hand: onHand,
  frequencies_mhz: content.frequenciesMHz,
  stem: content.stem,
  hole_mm: content.holeMillimeters,
  protocols: content.protocols,
  rated_psi: content.ratedPsi,
  nut_lbf_in: content.nutLbfIn,
  screw_lbf_in: content.screwLbfIn,
  made_month: content.madeMonth,
  shelf_months: content.shelfMonths,
  held_back: content.heldBack,
  minimum: content.minimum,
  lead_days: content.leadDays,
  core_deposit: content.coreDepositCents,
  supplier: content.supplier,
})

export const contentOfRow = (row: StockRow, locationId: string): StockContent => ({
  partNumber: row.part_number,
  locationId,
  kind: row.kind,
  words: row.words,
  frequenciesMHz: [...row.frequencies_mhz],
  stem: row.stem,
  holeMillimeters: row.hole_mm,
  protocols: [...row.protocols],
  ratedPsi: row.rated_psi,
  nutLbfIn: row.nut_lbf_in,
  screwLbfIn: row.screw_lbf_in,
  madeMonth: row.made_month,
  shelfMonths: row.shelf_months,
  heldBack: row.held_back,
  minimum: row.minimum,
  leadDays: row.lead_days,
  coreDepositCents: row.core_deposit,
  supplier: row.supplier,
})
