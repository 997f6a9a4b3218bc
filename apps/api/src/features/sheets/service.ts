import type { SheetContent, SheetOrder, StoredSheet } from '@bayledger/contract/sheets'
import type { Prisma } from '@bayledger/db/generated/client'
import type { SpecificationSheet } from '@bayledger/reckoning/sheet'
import { v7 as newId } from 'uuid'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import { once } from '../../core/once.ts'
import { askAbout } from '../../core/refused-fields.ts'
import { staleVersion } from '../../core/stale-version.ts'
import type { Deps } from '../../deps.ts'
import { torqueDoubtsOf } from './policy.ts'
import { presentSheet, presentSheetOrder, presentStoredSheet } from './present.ts'
import { figureSources } from './service/figure-sources.ts'
import * as store from './store.ts'

type Key = { readonly key: string; readonly requestHash: string }

export const listSheets = async (deps: Deps) =>
  (await store.listNewestSheets(deps.prisma, deps.shopId))
    .map(presentSheet)
    .toSorted((one, other) => one.name.localeCompare(other.name))

export const getSheet = async (deps: Deps, sheetId: string): Promise<StoredSheet[]> => {
  const rows = await store.listVersions(deps.prisma, deps.shopId, sheetId)
  if (rows.length === 0) throw notFound()
  return rows.map(presentStoredSheet)
}

export const createSheet = (
  deps: Deps,
  actor: StaffActor,
  key: Key,
  content: SheetContent,
): Promise<StoredSheet> => {
  askAbout(torqueDoubtsOf(content.studs), content.sure)
  const at = deps.clock.now()
  return once(deps.prisma, { shopId: deps.shopId, actor: actor.staffId, ...key, at }, async (tx) => {
    const sheetId = newId()
    await store.insertSheet(tx, deps.shopId, sheetId)
    const by = { shopId: deps.shopId, staffId: actor.staffId, at }
    const made = await store.insertVersion(tx, sheetId, 1, await bodyOf(tx, by, content, null), by)
    await store.linkVehicles(tx, deps.shopId, [{ sheetId, name: content.name }], at)
    return presentStoredSheet(made)
  })
}

/** Adds a version on top of the one that was read; orders keep the version that they used. */
export const createVersion = (
  deps: Deps,
  actor: StaffActor,
  key: Key,
  given: { readonly sheetId: string; readonly version: number; readonly content: SheetContent },
): Promise<StoredSheet> => {
  askAbout(torqueDoubtsOf(given.content.studs), given.content.sure)
  return changeSheet(deps, actor, key, given, () => given.content)
}

/** The same where what is saved follows from what is stored. @throws SHEET_NOT_FOUND, VERSION_STALE */
export const changeSheet = (
  deps: Deps,
  actor: StaffActor,
  key: Key,
  given: { readonly sheetId: string; readonly version: number },
  change: (before: SpecificationSheet) => SheetContent,
): Promise<StoredSheet> => {
  const at = deps.clock.now()
  return once(deps.prisma, { shopId: deps.shopId, actor: actor.staffId, ...key, at }, async (tx) => {
    const newest = await store.lockNewestVersion(tx, deps.shopId, given.sheetId)
    if (!newest) throw notFound()
    const before = presentSheet(newest)
    const content = change(before)
    if (newest.version !== given.version) throw staleVersion('sheet', presentStoredSheet(newest), content)
    const by = { shopId: deps.shopId, staffId: actor.staffId, at }
    const body = await bodyOf(tx, by, content, before)
    return presentStoredSheet(await store.insertVersion(tx, given.sheetId, newest.version + 1, body, by))
  })
}

/** The orders that used a sheet, newest first, each with the version that it used last. */
export const listOrders = async (deps: Deps, sheetId: string): Promise<SheetOrder[]> => {
  if ((await store.listVersions(deps.prisma, deps.shopId, sheetId)).length === 0) throw notFound()
  return (await store.listOrders(deps.prisma, deps.shopId, sheetId)).map(presentSheetOrder)
}

/** What is stored: the figures as sent, each with the people whom the server knows of. */
export const bodyOf = async (
  tx: Prisma.TransactionClient,
  by: { readonly shopId: string; readonly staffId: string; readonly at: Date },
  content: SheetContent,
  before: SpecificationSheet | null,
): Promise<store.SheetBody> => {
  const { verified: _verified, sure: _sure, ...figures } = content
  return { ...figures, sources: await figureSources(tx, by, content, before) }
}

const notFound = () => new AppError({ code: 'SHEET_NOT_FOUND' })
