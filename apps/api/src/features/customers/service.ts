import type { Customer, CustomerContent } from '@bayledger/contract/customers'
import type { CustomerLanguageCode } from '@bayledger/ledger/customer-language-code'
import { Id } from '@bayledger/ledger/text'
import { v7 as newId } from 'uuid'
import * as z from 'zod/mini'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import { fromCursor, toCursor } from '../../core/cursor.ts'
import { once } from '../../core/once.ts'
import { mayHaveContact } from '../../core/sides-for.ts'
import { recordMerged, staleVersion } from '../../core/stale-version.ts'
import type { Deps } from '../../deps.ts'
import { findCustomerIds } from '../search/service.ts'
import { presentCustomer, withoutContact } from './present.ts'
import * as store from './store.ts'

/** All customers by name, or the first whose name or telephone number matches what was typed. */
export const listCustomers = async (
  deps: Deps,
  actor: StaffActor,
  { q, cursor }: { q?: string | undefined; cursor?: string | undefined },
) => {
  if (q !== undefined && q.trim() !== '') {
    const ids = await findCustomerIds(deps, actor, q)
    const found = await store.listCustomersById(deps.prisma, deps.shopId, ids)
    return { customers: found.map(presentCustomer), next: null }
  }
  const place = fromCursor(cursor, z.tuple([z.string(), Id]))
  const after = place && { name: place[0], id: place[1] }
  const rows = await store.listCustomers(deps.prisma, deps.shopId, after)
  const page = rows.slice(0, store.pageSize)
  const last = page.at(-1)
  return {
    customers: page.map(presentCustomer),
    next: rows.length > store.pageSize && last ? toCursor([last.name, last.id]) : null,
  }
}

export const createCustomer = (
  deps: Deps,
  actor: StaffActor,
  key: { key: string; requestHash: string },
  content: CustomerContent,
): Promise<Customer> => {
  const at = deps.clock.now()
  return once(deps.prisma, { shopId: deps.shopId, actor: actor.staffId, ...key, at }, async (tx) =>
    presentCustomer(await store.insertCustomer(tx, deps.shopId, newId(), content, at)),
  )
}

/** The customer whose record this is, or was before it was merged. @throws CUSTOMER_NOT_FOUND */
export const getCustomer = async (deps: Deps, customerId: string): Promise<Customer> => {
  const row = await store.findSurvivingCustomer(deps.prisma, deps.shopId, customerId)
  if (!row) throw new AppError({ code: 'CUSTOMER_NOT_FOUND' })
  return presentCustomer(row)
}

/** A customer as this person may see them: without telephone and e-mail if the person may have neither. */
export const getCustomerFor = async (
  deps: Deps,
  actor: StaffActor,
  customerId: string,
): Promise<Customer> => {
  const customer = await getCustomer(deps, customerId)
  return mayHaveContact(actor) ? customer : withoutContact(customer)
}

/** The customer's own choice. Whoever edits the card at that moment is shown that it changed. */
export const chooseLanguage = async (
  deps: Deps,
  customerId: string,
  language: CustomerLanguageCode,
): Promise<void> => {
  const customer = await getCustomer(deps, customerId)
  await store.updateLanguage(deps.prisma, deps.shopId, customer.customerId, language, deps.clock.now())
}

export const putCustomer = async (
  deps: Deps,
  customerId: string,
  version: number,
  content: CustomerContent,
): Promise<Customer> => {
  const row = await store.updateCustomer(
    deps.prisma,
    deps.shopId,
    customerId,
    version,
    content,
    deps.clock.now(),
  )
  if (row) return presentCustomer(row)
  const found = await store.findSurvivingCustomer(deps.prisma, deps.shopId, customerId)
  if (found?.erasedAt) throw new AppError({ code: 'CUSTOMER_ERASED' })
  const current = await getCustomer(deps, customerId)
  throw current.customerId === customerId
    ? staleVersion('customer', current, content)
    : recordMerged('customer', current.name, current, content)
}
