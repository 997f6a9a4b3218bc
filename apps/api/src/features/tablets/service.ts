import type { TabletContent } from '@bayledger/contract/tablets'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import { type Kept, listRecordVersions, putRecord } from '../../core/record-versions.ts'
import { refuseFields } from '../../core/refused-fields.ts'
import type { Deps } from '../../deps.ts'
import { registerWords } from '../../words/doubt-words.ts'
import { allowedWords } from '../../words/field-words.ts'
import * as store from './store.ts'

export const listTablets = (deps: Deps) => store.listTablets(deps.pool, deps.shopId)

/** @throws RECORD_NOT_FOUND */
export const findTablet = async (deps: Deps, id: string): Promise<store.KeptTablet> => {
  const [found] = await store.listTablets(deps.pool, deps.shopId, id)
  if (!found) throw new AppError({ code: 'RECORD_NOT_FOUND', what: 'tablet' })
  return found
}

/** A tablet with who changed what, newest first. @throws RECORD_NOT_FOUND */
export const getTablet = async (deps: Deps, id: string) => ({
  record: await findTablet(deps, id),
  history: await listRecordVersions(deps.prisma, deps.shopId, 'tablet', id),
})

/** Renames a tablet, moves it to another place, or puts it out; one that is out stays out. */
export const putTablet = async (deps: Deps, actor: StaffActor, sent: Kept<TabletContent>) => {
  const { locationId, isOut } = sent.content
  const before = await findTablet(deps, sent.id)
  refuseFields([
    ...((await store.isPlace(deps.pool, deps.shopId, locationId))
      ? []
      : [{ field: 'content.locationId', found: locationId, allowed: allowedWords.location }]),
    ...(before.content.isOut && !isOut
      ? [{ field: 'content.isOut', found: String(isOut), allowed: registerWords.staysOut }]
      : []),
  ])
  await putRecord(deps, actor, store.tabletRecords, sent)
  return findTablet(deps, sent.id)
}
