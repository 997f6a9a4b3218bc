import type {
  AskedChannel,
  AskedPurpose,
  MessageChannel,
  MessagePurpose,
  MessageState,
} from '@bayledger/contract/messages'
import { listSameRecords } from '../../core/same-records.ts'
import type { Deps, Parts } from '../../deps.ts'

export type MessageRow = Awaited<ReturnType<typeof listMessages>>[number]

export const listMessages = ({ prisma, shopId }: Deps, orderId: string) =>
  prisma.message.findMany({ where: { shopId, orderId }, orderBy: [{ createdAt: 'asc' }, { id: 'asc' }] })

export const findCausedBy = ({ prisma, shopId }: Deps, causedBy: string) =>
  prisma.message.findFirst({ where: { shopId, causedBy } })

export type NewMessage = {
  readonly id: string
  readonly orderId: string
  readonly purpose: MessagePurpose
  readonly channel: MessageChannel
  readonly causedBy: string
  readonly madeBy: object
  readonly inQuietHours: boolean
}

/** Adds a message that no entry causes; asked for twice under one name it is one. */
export const insertMessage = async ({ prisma, shopId, clock }: Deps, message: NewMessage): Promise<void> => {
  const at = clock.now()
  await prisma.message.createMany({
    data: [{ shopId, ...message, createdAt: at, dueAt: at, nextTryAt: at }],
    skipDuplicates: true,
  })
}

/** Withdraws a message that nobody is sending; `false` where it waits no more, or is on its way. */
export const withdrawMessage = async (
  { prisma, shopId, clock }: Deps,
  orderId: string,
  id: string,
): Promise<boolean> => {
  const now = clock.now()
  const { count } = await prisma.message.updateMany({
    where: {
      ...{ shopId, orderId, id, state: 'waiting' satisfies MessageState },
      OR: [{ leaseUntil: null }, { leaseUntil: { lt: now } }],
    },
    data: { state: 'withdrawn', endedAt: now, linkSecret: null, leaseUntil: null },
  })
  return count === 1
}

/** What the customer said last of each purpose and channel. */
export const listChoices = async ({ prisma, shopId }: Deps, customerId: string) =>
  prisma.messageChoice.findMany({
    where: { shopId, customerId: { in: await listSameRecords(prisma, shopId, 'customer', customerId) } },
    distinct: ['purpose', 'channel'],
    orderBy: [{ purpose: 'asc' }, { channel: 'asc' }, { madeAt: 'desc' }, { id: 'desc' }],
  })

export type NewChoice = {
  readonly id: string
  readonly customerId: string
  readonly purpose: AskedPurpose
  readonly channel: AskedChannel
  readonly allowed: boolean
  readonly madeBy: object
}

export const insertChoice = async ({ prisma, shopId, clock }: Deps, choice: NewChoice): Promise<void> => {
  await prisma.messageChoice.create({ data: { shopId, ...choice, madeAt: clock.now() } })
}

/** The message that a link to end messages is of, with its shop and customer; `null` for any other. */
export const findByStopToken = ({ prisma }: Parts, unsubscribe: string) =>
  prisma.message.findUnique({
    where: { unsubscribe },
    include: { order: { include: { customer: true } } },
  })

/** Whether the vehicle was opened on another order since. */
export const cameBackSince = async ({ prisma, shopId }: Deps, vehicleId: string, since: Date) =>
  (await prisma.orderHead.count({
    where: {
      shopId,
      vehicleId: { in: await listSameRecords(prisma, shopId, 'vehicle', vehicleId) },
      openedAt: { gt: since },
    },
    take: 1,
  })) > 0
