import { randomBytes } from 'node:crypto'
import { setImmediate } from 'node:timers/promises'
import type { PrismaClient } from '@bayledger/db/generated/client'
import { sha256Hex } from '@bayledger/ledger/digests'
import { sheetFigureDigest } from '@bayledger/ledger/sheet-agreement'
import { SafetyFigure } from '@bayledger/reckoning/sheet'
import type { DemoLine, DemoPhoto } from './demo/order-pen.ts'
import { people } from './demo/people.ts'
import { playedHours } from './demo/played-hours.ts'
import { demoId } from './demo/seeded.ts'
import type { DemoLink, DemoOrder } from './demo/written-order.ts'
import { type DemoShop, demoShop } from './demo-shop.ts'

/** What loading the demo needs of the program that runs it: seeds know no application. */
export type DemoSeeding = {
  readonly prisma: PrismaClient
  readonly demo: DemoShop
  /** Of a password or a PIN, as the database keeps it. */
  readonly hashPassword: (secret: string) => Promise<string>
  /** Appends entries of one order the way the server does; rejects when the ledger refuses one. */
  readonly appendEntries: (lines: readonly DemoLine[]) => Promise<void>
  /** Makes the customer's link under its id, with a secret of its own. */
  readonly issueLink: (orderId: string, link: DemoLink) => Promise<void>
  /** Sends a photo in pieces, as its tablet does. */
  readonly sendPhoto: (photo: DemoPhoto, at: string) => Promise<void>
  /** Composes, seals, stores and appends the report of an order's present state. */
  readonly sealReport: (order: { orderId: string; sealedBy: string; sealedAt: string }) => Promise<void>
  readonly progress: (words: string) => void
}

/**
 * Loads the demo shop and the orders that are in the works into an empty database: base rows as rows, orders entry by entry through
 * `appendEntry`, so that every ledger is one that the product would have written. `finishDemo` does the rest. Rejects on a
 * database with a shop in it.
 */
export const seedDemo = async (seeding: DemoSeeding): Promise<void> => {
  const { prisma, demo, progress } = seeding
  if ((await prisma.shop.count()) > 0)
    throw new Error(
      'This database already holds a shop; the demo loads into an empty one only. Point DATABASE_URL at an empty database, or delete ./data.',
    )
  const loading = loadShop(seeding)
  await writeWhile(loading, ordersOf(demo))
  await loading
  progress(
    `${demo.shop.name}: ${demo.staff.length} people, ${demo.customers.length} customers, ${demo.vehicles.length} vehicles, ${demo.sheets.length} sheets, ${demo.instruments.length} instruments, ${demo.stock.length} kinds of part.`,
  )
  await loadOrders(
    ordersOf(demo).filter((order) => !isFinishedLater(order)),
    seeding,
  )
}

/** Orders that have ended, each with its report to draw, and those that came back after one of them. */
const isFinishedLater = ({ end, after }: DemoOrder): boolean => end !== null || after !== null

/** The orders that `finishDemo` loads. */
export const ordersLeft = (demo: DemoShop): readonly DemoOrder[] => ordersOf(demo).filter(isFinishedLater)

/** Loads the orders that `seedDemo` left, and says of each when it is whole. */
export const finishDemo = (seeding: DemoSeeding, isWhole: (orderId: string) => void): Promise<void> =>
  loadOrders(ordersLeft(seeding.demo), seeding, isWhole)

const ordersOf = ({ earlier, orders }: DemoShop): readonly DemoOrder[] => [...earlier, ...orders]

/** The demo of a day, of which `now` plays 11:40; its orders are written in memory as far as the other work leaves time. */
export const writeDemoWhile = async (other: Promise<unknown>, now: string): Promise<DemoShop> => {
  const demo = demoShop(now)
  await writeWhile(other, ordersOf(demo))
  return demo
}

/** Writes orders in memory until the other work, which is done elsewhere, is done. */
const writeWhile = async (other: Promise<unknown>, orders: readonly DemoOrder[]): Promise<void> => {
  let isDone = false
  const done = () => {
    isDone = true
  }
  other.then(done, done)
  for (const order of orders) {
    await setImmediate()
    if (isDone) return
    void order.lines
  }
}

/** Loads order after order. A report is drawn on a thread of its own, and the next order waits for it only if it rests on it. */
const loadOrders = async (
  orders: readonly DemoOrder[],
  seeding: DemoSeeding,
  isWhole: (orderId: string) => void = () => undefined,
): Promise<void> => {
  const ends = new Map<string, Promise<void>>()
  for (const order of orders) {
    if (order.after) await ends.get(order.after)
    await loadOrder(order, seeding)
    const end = endOrder(order, seeding).then(() => isWhole(order.orderId))
    // A refusal is thrown below, once all are loaded.
    end.catch(() => undefined)
    ends.set(order.number, end)
  }
  await Promise.all(ends.values())
}

const loadOrder = async (order: DemoOrder, seeding: DemoSeeding): Promise<void> => {
  const { shop, calendar } = seeding.demo
  await seeding.appendEntries(order.lines)
  for (const photo of order.photos)
    await seeding.sendPhoto(photo, order.lines.at(-1)?.receivedAt ?? calendar.now)
  for (const link of order.links) {
    await seeding.issueLink(order.orderId, link)
    await seeding.prisma.linkOpening.createMany({
      data: link.openings.map(({ id, openedAt }) => ({ shopId: shop.id, id, linkId: link.linkId, openedAt })),
    })
  }
}

const endOrder = async ({ number, orderId, lines, end }: DemoOrder, seeding: DemoSeeding): Promise<void> => {
  if (end) {
    const { sealedBy, sealedAt, handBack } = end
    await seeding.sealReport({ orderId, sealedBy, sealedAt })
    await seeding.appendEntries([handBack])
  }
  seeding.progress(`${number}: ${lines.length + (end ? 2 : 0)} entries.`)
}

export const loadShop = async ({
  demo,
  prisma,
  hashPassword,
}: Pick<DemoSeeding, 'demo' | 'prisma' | 'hashPassword'>): Promise<void> => {
  const shopId = demo.shop.id
  const createdAt = demo.calendar.at('06:00')
  const createdBy = { kind: 'system' }
  const staff = await Promise.all(
    demo.staff.map(async ({ id, name, signInName, roles, password, pin }) => ({
      shopId,
      id,
      name,
      signInName,
      roles: [...roles],
      passwordHash: await hashPassword(password),
      pinHash: await hashPassword(pin),
    })),
  )
  await prisma.$transaction([
    prisma.shop.create({ data: { id: shopId, name: demo.shop.name, createdAt } }),
    prisma.location.createMany({
      data: demo.locations.map((place) => ({
        shopId,
        ...place,
        hours: playedHours(place, demo.calendar.now),
      })),
    }),
    prisma.staff.createMany({ data: staff }),
    // Nobody has these tablets' tokens: each must be enrolled again before it may write.
    prisma.device.createMany({
      data: demo.tablets.map((tablet) => ({
        shopId,
        ...tablet,
        tokenHash: randomBytes(32).toString('hex'),
        enrolledAt: createdAt,
      })),
    }),
    prisma.sheet.createMany({ data: demo.sheets.map(({ sheetId }) => ({ shopId, id: sheetId })) }),
    prisma.sheetVersion.createMany({
      data: demo.sheets.map((body) => ({
        shopId,
        sheetId: body.sheetId,
        version: body.version,
        body,
        createdBy,
        createdAt,
      })),
    }),
    prisma.secondPersonProof.createMany({ data: sheetProofs(demo, new Date(createdAt)) }),
    prisma.settingVersion.createMany({
      data: demo.settings.map((setting) => ({ shopId, ...setting, createdBy, createdAt })),
    }),
    prisma.instrument.createMany({
      data: demo.instruments.map(({ dueOn, ...instrument }) => ({
        shopId,
        locationId: demo.home.id,
        ...instrument,
        dueOn: dueOn === null ? null : new Date(dueOn),
      })),
    }),
    prisma.stockItem.createMany({
      data: demo.stock.map(({ lot: _lot, ...item }) => ({
        shopId,
        locationId: demo.home.id,
        ...item,
        family: { ...item.family },
      })),
    }),
    prisma.stockChange.createMany({
      data: demo.stock
        .filter(({ onHand }) => onHand !== 0)
        .map(({ id, onHand, lot }) => ({
          shopId,
          id: demoId(`stock-received/${id}`),
          stockItemId: id,
          kind: 'received',
          quantity: onHand,
          lot,
          writtenBy: { kind: 'staff', staffId: people.marguerite.id },
          writtenAt: createdAt,
        })),
    }),
    prisma.customer.createMany({
      data: demo.customers.map((customer) => ({ shopId, ...customer, createdAt })),
    }),
    prisma.vehicle.createMany({ data: demo.vehicles.map((vehicle) => ({ shopId, ...vehicle, createdAt })) }),
    prisma.orderNumber.create({ data: { shopId, ...demo.numbering } }),
  ])
}

/** What the PIN of whoever verified a figure of a sheet would have left behind. */
const sheetProofs = (demo: DemoShop, createdAt: Date) =>
  demo.sheets.flatMap((sheet) =>
    SafetyFigure.options.flatMap((figure) => {
      const staffId = sheet.sources[figure]?.verifiedBy ?? null
      const digest = sheetFigureDigest(sheet, figure)
      if (staffId === null || digest === null) return []
      return [
        {
          shopId: demo.shop.id,
          tokenHash: sha256Hex(`${sheet.sheetId}/${figure}`),
          staffId,
          orderId: sheet.sheetId,
          entryId: sheet.sheetId,
          kind: 'sheet-figure',
          digest,
          createdAt,
          expiresAt: new Date(createdAt.getTime() + 600_000),
        },
      ]
    }),
  )
