import { openClient } from '@bayledger/db/client'
import { openPool } from '@bayledger/db/pool'
import type { DemoCustomer, DemoVehicle, DemoVisitor } from '../../prisma/seeds/demo/customers.ts'
import { shopId } from '../../prisma/seeds/demo/places.ts'
import { demoId } from '../../prisma/seeds/demo/seeded.ts'
import { type SheetKey, sheets } from '../../prisma/seeds/demo/sheets.ts'
import type { TestDatabase } from './database.ts'

/** A vehicle on file in the demo shop that is not in it today, so that a journey may write it up. */
export type FreeVehicle = {
  readonly plate: string
  /** The name of its owner. */
  readonly customer: string
  readonly owner: DemoCustomer
  readonly visitor: DemoVisitor
}

const free = (key: string, sheetKey: SheetKey, name: string, plate: string, vin: string): FreeVehicle => {
  const owner: DemoCustomer = {
    id: demoId(`customer/${key}`),
    name,
    // In the block that is kept free for fiction, after those of the demo.
    phone: `+155555501${plate.slice(-2)}`,
    email: `${key}@example.com`,
    mayText: true,
    mayEmail: true,
    mayCall: true,
  }
  const vehicle: DemoVehicle = {
    id: demoId(`vehicle/${key}`),
    customerId: owner.id,
    plate,
    vin,
    description: sheets[sheetKey].name,
    color: 'gray',
    sheetId: sheets[sheetKey].sheetId,
  }
  return { plate, customer: name, owner, visitor: { vehicle, sheet: sheets[sheetKey], ownerName: name } }
}

/** One of a kind each; the second sedan for journeys that need four vehicles at once. */
export const freeMoor = free('free.moor', 'moor', 'V. Larkin-Stowe', 'BRF 9104', '2ZZMR3C64CW262717')
export const freeTarn = free('free.tarn', 'tarn', 'Z. Ambrose-Teale', 'BRF 9220', '1ZZTR4D82GT270636')
export const freeLinnet = free('free.linnet', 'linnet', 'Q. Danforth-Lea', 'TMB 9347', '1ZZLN2B57KT278555')
export const otherLinnet = free(
  'free.other-linnet',
  'linnet',
  'U. Merrow-Kyle',
  'TMB 9452',
  '1ZZLN2B53KT286474',
)

export const freeVehicles = [freeMoor, freeTarn, freeLinnet, otherLinnet] as const

/** Puts them on file in a database that holds the demo shop. */
export const addFreeVehicles = async ({ serviceUrl }: TestDatabase): Promise<void> => {
  const pool = openPool({ url: serviceUrl, onIdleError: () => undefined })
  const prisma = openClient(pool)
  const createdAt = new Date()
  await prisma.customer.createMany({
    data: freeVehicles.map(({ owner }) => ({ shopId, ...owner, createdAt })),
  })
  await prisma.vehicle.createMany({
    data: freeVehicles.map(({ visitor }) => ({ shopId, ...visitor.vehicle, createdAt })),
  })
  await prisma.$disconnect()
  await pool.end()
}
