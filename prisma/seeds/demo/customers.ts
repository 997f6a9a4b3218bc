import { demoId } from './seeded.ts'
import { type SheetKey, sheets } from './sheets.ts'

export type DemoCustomer = {
  readonly id: string
  readonly name: string
  readonly phone: string
  readonly email: string
  readonly mayText: boolean
  readonly mayEmail: boolean
  readonly mayCall: boolean
}

export type DemoVehicle = {
  readonly id: string
  readonly customerId: string
  readonly plate: string
  readonly vin: string
  readonly description: string
  readonly color: string
  readonly sheetId: string
}

type Row = readonly [
  key: string,
  sheet: SheetKey,
  customer: string,
  plate: string,
  vin: string,
  color: string,
]

/**
 * Every vehicle with its owner. The VINs belong to no maker; their check digits (49 CFR 565.15) are right. The
 * telephone numbers lie in the block kept free for fiction.
 */
const rows: readonly Row[] = [
  ['linnet-a', 'linnet', 'P. Lindqvist-Roe', 'TMB 4127', '1ZZLN2B53KT104417', 'slate'],
  ['linnet-b', 'linnet', 'R. Ilves-Thorn', 'TMB 2260', '1ZZLN2B5XKT112336', 'white'],
  ['linnet-c', 'linnet', 'D. Hallworth', 'TMB 7814', '1ZZLN2B56KT120255', 'dark blue'],
  ['linnet-d', 'linnet', 'A. Pryce-Holm', 'TMB 3395', '1ZZLN2B52KT128174', 'silver'],
  ['linnet-e', 'linnet', 'B. Norwood', 'TMB 9041', '1ZZLN2B59KT136093', 'black'],
  ['linnet-f', 'linnet', 'G. Silverthorn', 'TMB 5572', '1ZZLN2B51KT144012', 'sand'],
  ['tarn-a', 'tarn', 'W. Dunmore-Gray', 'BRF 6083', '1ZZTR4D81GT151931', 'pine'],
  ['tarn-b', 'tarn', 'C. Abernethy-Wu', 'BRF 1748', '1ZZTR4D88GT159850', 'silver'],
  ['tarn-c', 'tarn', 'N. Sarkany-Bly', 'BRF 4416', '1ZZTR4D8XGT167769', 'white'],
  ['tarn-d', 'tarn', 'E. Maddock-Ruiz', 'BRF 8237', '1ZZTR4D86GT175688', 'graphite'],
  ['moor-a', 'moor', 'S. Achterberg', 'BRF 3952', '2ZZMR3C67CW183607', 'brown'],
  ['moor-b', 'moor', 'L. Fontaine-Reed', 'BRF 7105', '2ZZMR3C63CW191526', 'blue'],
  ['haywain-a', 'haywain', 'J. Quill', 'MLR 2894', '4ZZHW8E94MW199445', 'black'],
  ['haywain-b', 'haywain', 'K. Vance-Oduya', 'MLR 6610', '4ZZHW8E92MW207364', 'white'],
  ['finch', 'finch', 'M. Okoye-Lane', 'MLR 1379', '4ZZFN1A26HP215283', 'yellow'],
  ['gloaming', 'gloaming', 'H. Castellane', 'MLR 8802', '4ZZGL2G77NA223202', 'dark gray'],
  ['wren', 'wren', 'T. Brightwater', 'MLR 5043', '4ZZWR2F14PP231121', 'pearl'],
  ['pannier-a', 'pannier', 'Cobble Lane Flowers', 'CLF 0001', '1ZZPN6H46LD239040', 'cream'],
  ['pannier-b', 'pannier', 'Cobble Lane Flowers', 'CLF 0002', '1ZZPN6H4XLD246959', 'cream'],
  ['dunnock', 'dunnock', 'F. Delacroix-Ames', 'MLR 7468', '4ZZDN2E39MP254878', 'steel blue'],
  // Was here once, in 2024: one of its wheels is on Tarn D now.
  ['linnet-g', 'linnet', 'I. Marsh-Calder', 'TMB 6158', '1ZZLN2B5XKT151931', 'green'],
]

const addressOf = (name: string): string =>
  `${name
    .toLowerCase()
    .replace(/[^a-z]+/g, '.')
    .replace(/^\.|\.$/g, '')}@example.com`

export const customers: readonly DemoCustomer[] = [...new Set(rows.map(([, , name]) => name))].map(
  (name, index) => ({
    id: demoId(`customer/${name}`),
    name,
    phone: `+155555501${String(10 + index).padStart(2, '0')}`,
    email: addressOf(name),
    mayText: true,
    mayEmail: index % 3 !== 2,
    mayCall: true,
  }),
)

export const vehicles: readonly DemoVehicle[] = rows.map(([key, sheet, customer, plate, vin, color]) => ({
  id: demoId(`vehicle/${key}`),
  customerId: demoId(`customer/${customer}`),
  plate,
  vin,
  description: sheets[sheet].name,
  color,
  sheetId: sheets[sheet].sheetId,
}))

/** A vehicle that comes to the shop, with what is on file of it. */
export type DemoVisitor = {
  readonly vehicle: DemoVehicle
  readonly sheet: (typeof sheets)[SheetKey]
  readonly ownerName: string
}

/** The vehicle of a key such as `tarn-a`, with its owner's name; a key that the demo lacks throws a RangeError. */
export const vehicleOf = (key: string): DemoVisitor => {
  const row = rows.find(([candidate]) => candidate === key)
  const vehicle = vehicles.find(({ id }) => id === demoId(`vehicle/${key}`))
  if (!row || !vehicle) throw new RangeError(`the demo has no vehicle "${key}"`)
  return { vehicle, sheet: sheets[row[1]], ownerName: row[2] }
}

/** The customer of an id; an id that the demo lacks throws a RangeError. */
export const customerOf = (id: string): DemoCustomer => {
  const customer = customers.find((candidate) => candidate.id === id)
  if (!customer) throw new RangeError(`the demo has no customer ${id}`)
  return customer
}
