import type { InstrumentContent, TorquedWheel } from '@bayledger/contract/instruments'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import { createRecord, type Kept, listRecordVersions, putRecord } from '../../core/record-versions.ts'
import { askAbout, refuseFields } from '../../core/refused-fields.ts'
import type { Deps } from '../../deps.ts'
import { registerWords } from '../../words/doubt-words.ts'
import { allowedWords } from '../../words/field-words.ts'
import { doubtsOf } from './policy.ts'
import { listTorquedWheels } from './store/torqued-wheels.ts'
import * as store from './store.ts'

type Sure = readonly string[] | undefined

export const listInstruments = (deps: Deps) => store.listInstruments(deps.prisma, deps.shopId)

/** @throws RECORD_NOT_FOUND */
export const findInstrument = async (deps: Deps, id: string): Promise<store.KeptInstrument> => {
  const found = await store.findInstrument(deps.prisma, deps.shopId, id)
  if (found === null) throw new AppError({ code: 'RECORD_NOT_FOUND', what: 'instrument' })
  return found
}

/** An instrument with who changed what, newest first. @throws RECORD_NOT_FOUND */
export const getInstrument = async (deps: Deps, id: string) => {
  const record = await findInstrument(deps, id)
  return { record, history: await listRecordVersions(deps.prisma, deps.shopId, 'instrument', id) }
}

export const createInstrument = async (
  deps: Deps,
  actor: StaffActor,
  key: { key: string; requestHash: string },
  content: InstrumentContent,
  sure: Sure,
): Promise<store.KeptInstrument> => {
  await check(deps, null, content, sure)
  const made = await createRecord(deps, actor, key, store.instrumentRecords, content)
  return { ...made, cycles: 0 }
}

export const putInstrument = async (
  deps: Deps,
  actor: StaffActor,
  sent: Kept<InstrumentContent>,
  sure: Sure,
): Promise<store.KeptInstrument> => {
  await check(deps, sent.id, sent.content, sure)
  await putRecord(deps, actor, store.instrumentRecords, sent)
  return findInstrument(deps, sent.id)
}

/** Wheels for which a wrench that was found out of calibration counts. @throws RECORD_NOT_FOUND */
export const listWheelsTorquedWith = async (
  deps: Deps,
  id: string,
  since: string,
): Promise<TorquedWheel[]> => {
  await findInstrument(deps, id)
  const rows = await listTorquedWheels(deps.pool, deps.shopId, id, since)
  return rows.map(({ torquedAt, by, ...wheel }) => ({
    ...wheel,
    by: by ?? '',
    torquedAt: torquedAt.toISOString(),
  }))
}

/** What no schema can say of an instrument: a code that is taken, a place of another shop, a day to come. */
const check = async (
  deps: Deps,
  id: string | null,
  content: InstrumentContent,
  sure: Sure,
): Promise<void> => {
  const { prisma, shopId } = deps
  const today = deps.clock.now().toISOString().slice(0, 10)
  const { code, kind, locationId } = content
  const read = content.kind === 'wrench' ? content.calibratedOn : content.checkedOn
  const [holder, place, before] = await Promise.all([
    store.idOfCode(prisma, shopId, code),
    store.isPlace(prisma, shopId, locationId),
    id === null ? null : store.findInstrument(prisma, shopId, id),
  ])
  refuseFields([
    ...(holder === null || holder === id
      ? []
      : [{ field: 'content.code', found: code, allowed: registerWords.freeCode }]),
    ...(place ? [] : [{ field: 'content.locationId', found: locationId, allowed: allowedWords.location }]),
    ...(before === null || before.content.kind === kind
      ? []
      : [{ field: 'content.kind', found: kind, allowed: registerWords.sameKind }]),
    ...(read === null || read <= today
      ? []
      : [
          {
            field: content.kind === 'wrench' ? 'content.calibratedOn' : 'content.checkedOn',
            found: read,
            allowed: registerWords.notInFuture,
          },
        ]),
  ])
  askAbout(doubtsOf(content, today), sure)
}
