import type { LegalHold } from '@bayledger/contract/holds'
import { v7 as newId } from 'uuid'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import type { Deps } from '../../deps.ts'
import { presentHold } from './present.ts'
import * as store from './store.ts'

type Asked = Pick<LegalHold, 'subject' | 'subjectId' | 'reason'>

export const listHolds = async ({ prisma, shopId }: Deps): Promise<LegalHold[]> => {
  const rows = await store.listHolds(prisma, shopId)
  const names = await store.listNames(
    prisma,
    shopId,
    rows.map(({ subjectId }) => subjectId),
  )
  return rows.map((row) => presentHold(row, names))
}

const readHold = async ({ prisma, shopId }: Deps, holdId: string): Promise<LegalHold> => {
  const row = await store.findHold(prisma, shopId, holdId)
  if (!row) throw new AppError({ code: 'HOLD_NOT_FOUND' })
  return presentHold(row, await store.listNames(prisma, shopId, [row.subjectId]))
}

/** Places a hold. @throws CUSTOMER_NOT_FOUND, ORDER_NOT_FOUND, CUSTOMER_ERASED, HOLD_NOT_CHANGED where there is one already */
export const placeHold = async (deps: Deps, actor: StaffActor, asked: Asked): Promise<LegalHold> => {
  const { shopId } = deps
  const { subject, subjectId, reason } = asked
  const id = newId()
  await deps.prisma.$transaction(async (tx) => {
    const order = subject === 'order' ? await store.findOrder(tx, shopId, subjectId) : null
    if (subject === 'order' && order === null) throw new AppError({ code: 'ORDER_NOT_FOUND' })
    const customer = await store.lockCustomer(tx, shopId, order?.customerId ?? subjectId)
    if (customer === null) throw new AppError({ code: 'CUSTOMER_NOT_FOUND' })
    if (customer.erasedAt !== null) throw new AppError({ code: 'CUSTOMER_ERASED' })
    const hold = { shopId, id, subject, subjectId, reason }
    const placed = { placedBy: actor.staffId, placedAt: deps.clock.now() }
    if (!(await store.insertHold(tx, { ...hold, ...placed })))
      throw new AppError({ code: 'HOLD_NOT_CHANGED', why: 'held-before' })
  })
  return readHold(deps, id)
}

/** Lifts a hold. @throws HOLD_NOT_FOUND, HOLD_NOT_CHANGED where somebody was first */
export const liftHold = async (deps: Deps, actor: StaffActor, holdId: string): Promise<LegalHold> => {
  await readHold(deps, holdId)
  const lifted = { liftedBy: actor.staffId, liftedAt: deps.clock.now() }
  if (!(await store.liftHold(deps.prisma, deps.shopId, holdId, lifted)))
    throw new AppError({ code: 'HOLD_NOT_CHANGED', why: 'lifted-before' })
  return readHold(deps, holdId)
}
