import {
  centsCell,
  choiceCell,
  maybe,
  maybeTextCell,
  numberCell,
  textCell,
  yesNoCell,
} from '../../../core/csv/cells.ts'

/** Nothing of these files is read back in: limits are as wide as what the ledger holds. */
const text = textCell(400)
const maybeText = maybeTextCell(400)
const number = numberCell({ from: -1e9, to: 1e9, unit: '' })
const maybeNumber = maybe(number)
const yesNo = yesNoCell()
const cents = maybe(centsCell({ fromCents: -100_000_000, toCents: 100_000_000 }))
const wheel = maybe(choiceCell(['LF', 'RF', 'RR', 'LR', 'SP']))

/** Which order of which place, and when the server received what the row says, by the place's clock. */
const of = { order: text, place: text, at: text }
/** Who wrote it, when by the clock of their device, and whether it was withdrawn since. */
const written = { device_at: text, by: maybeText, withdrawn: yesNo }

export const orderColumns = {
  order: text,
  place: text,
  opened_at: text,
  promised_at: maybeText,
  waits: yesNo,
  open: yesNo,
  sealed: yesNo,
  ended_at: maybeText,
  vehicle: text,
  plate: maybeText,
  vin: maybeText,
  customer: maybeText,
  telephone: maybeText,
  email: maybeText,
}

export const readingColumns = {
  ...of,
  when: choiceCell(['arrival', 'closing', 'as-left']),
  wheel,
  pressure: maybeNumber,
  pressure_unit: maybeText,
  gauge: maybeText,
  gauge_offset_psi: maybeNumber,
  sensor: maybe(choiceCell(['answered', 'silent', 'not-tried'])),
  sensor_id: maybeText,
  sensor_pressure: maybeNumber,
  sensor_pressure_unit: maybeText,
  sensor_temperature: maybeNumber,
  sensor_temperature_unit: maybeText,
  sensor_battery: maybeText,
  ...written,
}

export const torqueColumns = {
  ...of,
  wheel,
  round: text,
  figure: number,
  figure_unit: text,
  clicked: number,
  studs: number,
  moved: maybeText,
  wrench: text,
  wrench_due_on: text,
  checked_by: maybeText,
  ...written,
}

export const partColumns = {
  ...of,
  wheel,
  part_number: text,
  quantity: number,
  lot: maybeText,
  made_month: maybeText,
  ...written,
}

export const saleColumns = {
  ...of,
  sold: text,
  line: text,
  wheels: maybeText,
  kind: text,
  tax_class: maybeText,
  quantity: maybeNumber,
  unit_price: cents,
  amount: cents,
  would_cost: cents,
  warranty: maybeText,
}
