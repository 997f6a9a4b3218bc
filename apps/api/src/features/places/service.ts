import type { PlaceContent } from '@bayledger/contract/places'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import { createRecord, type Kept, listRecordVersions, putRecord } from '../../core/record-versions.ts'
import { askAbout } from '../../core/refused-fields.ts'
import type { Deps } from '../../deps.ts'
import { doubtsOf } from './policy.ts'
import { placeRecords } from './service/place-records.ts'
import * as store from './store.ts'

type Sure = readonly string[] | undefined

export const listPlaces = (deps: Deps) => store.listPlaces(deps.prisma, deps.shopId)

/** A place with who changed what, newest first. @throws RECORD_NOT_FOUND */
export const getPlace = async (deps: Deps, id: string) => {
  const [record, history] = await Promise.all([
    store.findPlace(deps.prisma, deps.shopId, id),
    listRecordVersions(deps.prisma, deps.shopId, 'place', id),
  ])
  if (record === null) throw new AppError({ code: 'RECORD_NOT_FOUND', what: 'place' })
  return { record, history }
}

export const createPlace = (
  deps: Deps,
  actor: StaffActor,
  key: { key: string; requestHash: string },
  content: PlaceContent,
  sure: Sure,
) => {
  askAbout(doubtsOf(content), sure)
  return createRecord(deps, actor, key, placeRecords, content)
}

export const putPlace = (deps: Deps, actor: StaffActor, sent: Kept<PlaceContent>, sure: Sure) => {
  askAbout(doubtsOf(sent.content), sure)
  return putRecord(deps, actor, placeRecords, sent)
}
