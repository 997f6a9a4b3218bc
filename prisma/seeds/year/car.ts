import type { OrderState } from '@bayledger/ledger/state'
import { airPressureAtAltitude } from '@bayledger/reckoning/pressure/air-pressure'
import { shiftPressure } from '@bayledger/reckoning/pressure/shift-pressure'
import { placardOf, sensorOf } from '@bayledger/reckoning/sheet'
import { metersFromFeet } from '@bayledger/reckoning/units/length-units'
import { inKilopascals, kilopascalsIn } from '@bayledger/reckoning/units/pressure-units'
import { inKelvin } from '@bayledger/reckoning/units/temperature-units'
import { vinCheckDigit } from '@bayledger/reckoning/vehicle/check-digit'
import { axleOf, type RoadPosition, readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import { type DemoCustomer, type DemoVisitor, vehicles } from '../demo/customers.ts'
import { tamberStreet } from '../demo/places.ts'
import { demoId } from '../demo/seeded.ts'
import { type SheetKey, sheets } from '../demo/sheets.ts'
import type { Chance } from './chance.ts'
import { weatherOn } from './weather.ts'

/** The air of one tire as somebody left it. */
type AirSet = { readonly psi: number; readonly fahrenheit: number; readonly day: number }

export type SensorIds = Record<RoadPosition, string> & { SP?: string }

/** A vehicle through the year: what changes between its visits and at them. Days are counted as `dayNumberOf` does. */
export type Car = {
  readonly key: string
  readonly sheetKey: SheetKey
  readonly visitor: DemoVisitor
  readonly customer: DemoCustomer
  readonly milesPerDay: number
  odometer: { miles: number; day: number }
  ids: SensorIds
  /** The other season's wheels. */
  otherIds: SensorIds | null
  sensorMade: Record<WheelPosition, number>
  tiresMade: number
  tread: { depth32nds: number; miles: number }
  air: Record<WheelPosition, AirSet>
  /** What each tire seeps, psi a day. */
  seeps: Record<WheelPosition, number>
  /** Its finished orders, oldest first. */
  visits: OrderState[]
  last: { readonly orderId: string; readonly day: number; readonly off: readonly RoadPosition[] } | null
}

const weights: readonly (readonly [number, SheetKey])[] = [
  [30, 'linnet'],
  [38, 'tarn'],
  [22, 'moor'],
  [16, 'haywain'],
  [12, 'finch'],
  [14, 'dunnock'],
  [8, 'gloaming'],
  [8, 'wren'],
  [12, 'pannier'],
]

const starts = [
  'Ash',
  'Bram',
  'Cald',
  'Dun',
  'Elder',
  'Fen',
  'Gorse',
  'Hazel',
  'Ings',
  'Kel',
  'Lark',
  'Marl',
] as const
const ends = [
  'bank',
  'croft',
  'down',
  'field',
  'garth',
  'holt',
  'lea',
  'mere',
  'shaw',
  'thwaite',
  'wath',
  'wold',
] as const
const colors = ['silver', 'white', 'graphite', 'blue', 'dark green', 'red', 'sand', 'black'] as const
const districts = ['HBR', 'STN', 'LKE', 'WDS'] as const

/** A vehicle that comes for the first time on a day, with its invented owner. `index` tells it from the others. */
export const carOf = (chance: Chance, index: number, today: number): Car => {
  const sheetKey = chance.weighted(weights)
  const sheet = sheets[sheetKey]
  const key = `year-${index}`
  const name = `${'ABCDEFGHJKLMNPRSTW'[index % 18]}. ${starts[index % 12]}${ends[(index * 5 + Math.floor(index / 12)) % 12]}`
  const customer: DemoCustomer = {
    id: demoId(`customer/${key}`),
    name,
    phone: `+1${556 + Math.floor(index / 100)}55501${String(index % 100).padStart(2, '0')}`,
    email: `${name.toLowerCase().replace(/[^a-z]+/g, '.')}@example.com`,
    mayText: chance.isOf(0.7),
    mayEmail: chance.isOf(0.8),
    mayCall: true,
  }
  const modelYear = Number(sheet.name.slice(-4))
  const made = Date.parse(`${modelYear}-01-15`) / 86_400_000 + chance.whole(-120, 200)
  const ageDays = today - made
  const milesPerDay = chance.between(18, 46)
  const miles = Math.round(ageDays * milesPerDay)
  const vehicle = {
    id: demoId(`vehicle/${key}`),
    customerId: customer.id,
    plate: `${districts[index % 4]} ${1_000 + ((index * 37) % 9_000)}`,
    vin: vinOf(sheetKey, index),
    description: sheet.name,
    color: chance.pick(colors),
    sheetId: sheet.sheetId,
  }
  const tiresMade = Math.max(made, today - chance.whole(200, 2_000))
  // Somebody set the tires when it was last warmer or colder than today.
  const setDay = today - chance.whole(20, 120)
  const places = placardOf(sheet)
  return {
    key,
    sheetKey,
    visitor: { vehicle, sheet, ownerName: name },
    customer,
    milesPerDay,
    odometer: { miles, day: today },
    ids: newIds(chance, sensorOf(sheet) !== null && sheet.spareMonitored),
    otherIds: null,
    sensorMade: perWheel(() => made - chance.whole(20, 90)),
    tiresMade,
    tread: {
      depth32nds: Math.max(5, Math.round(10 - ((today - tiresMade) * milesPerDay) / 9_000)),
      miles,
    },
    air: perWheel((wheel) => ({
      psi: (places?.[axleOf(wheel)]?.psi ?? 35) + chance.between(-0.4, 0.4),
      fahrenheit: Math.round(weatherOn(dayText(setDay)).mean),
      day: setDay,
    })),
    seeps: perWheel(() => chance.between(0.004, 0.014)),
    visits: [],
    last: null,
  }
}

const dayText = (day: number): string => new Date(day * 86_400_000).toISOString().slice(0, 10)

export const perWheel = <T>(of: (wheel: WheelPosition) => T): Record<WheelPosition, T> =>
  Object.fromEntries(readingOrder.map((wheel) => [wheel, of(wheel)])) as Record<WheelPosition, T>

export const newId = (chance: Chance): string =>
  chance.whole(0x10000000, 0xefffffff).toString(16).toUpperCase()

export const newIds = (chance: Chance, withSpare: boolean): SensorIds => ({
  LF: newId(chance),
  RF: newId(chance),
  RR: newId(chance),
  LR: newId(chance),
  ...(withSpare ? { SP: newId(chance) } : {}),
})

/** A VIN like the demo's own of this model: of no maker, with its check digit right. */
const vinOf = (sheetKey: SheetKey, index: number): string => {
  const like = vehicles.find(({ sheetId }) => sheetId === sheets[sheetKey].sheetId)?.vin ?? ''
  const unchecked = `${like.slice(0, 8)}0${like.slice(9, 11)}${String(400_000 + index * 37)}`
  return `${unchecked.slice(0, 8)}${vinCheckDigit(unchecked)}${unchecked.slice(9)}`
}

/** What a gauge shows on a tire that is as cold as the air around it, to a tenth of a psi: gas law and seepage. */
export const coldPressure = (car: Car, wheel: WheelPosition, day: number, outdoor: number): number => {
  const { psi, fahrenheit, day: setDay } = car.air[wheel]
  const left = psi - car.seeps[wheel] * (day - setDay)
  const air = airPressureAtAltitude(metersFromFeet(tamberStreet.altitudeFeet))
  const now = shiftPressure({
    gauge: inKilopascals({ value: left, unit: 'psi' }),
    from: inKelvin({ value: fahrenheit, unit: 'F' }),
    to: inKelvin({ value: outdoor, unit: 'F' }),
    airBefore: air,
    airAfter: air,
  })
  return Math.round(kilopascalsIn('psi', now) * 10) / 10
}

export const milesOn = (car: Car, day: number): number =>
  Math.round(car.odometer.miles + (day - car.odometer.day) * car.milesPerDay)

export const treadOn = (car: Car, miles: number): number =>
  Math.max(5, Math.round(car.tread.depth32nds - (miles - car.tread.miles) / 6_500))

/** Full months between two days. */
export const monthsBetween = (from: number, to: number): number =>
  Math.max(0, Math.floor((to - from) / 30.44))
