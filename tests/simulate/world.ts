import { agreementOf, withProof } from '@bayledger/ledger/agreement'
import { meanings } from '@bayledger/ledger/documents/kinds-table'
import type { Draft, DraftEnvelope } from '@bayledger/ledger/entry'
import { versionOf } from '@bayledger/ledger/registry'
import { namedOnly, type SecondPerson } from '@bayledger/ledger/second-person'
import { tokenDigest } from '../../apps/api/src/core/tokens.ts'
import { agreementMinutes } from '../../apps/api/src/features/staff/policy.ts'
import { shopId } from '../../packages/ledger/test-support/shop.ts'
import type { Work } from './bay-work.ts'
import type { RecordWatch } from './record-watch.ts'
import { type PersonName, people } from './shop-tables.ts'
import type { Database } from './simulated-database.ts'
import type { Network } from './simulated-network.ts'
import type { Timers } from './timers.ts'
import type { Accuse } from './violation.ts'
import type { Witness } from './witness.ts'

/** What a device of the simulated shop lives in. */
export type World = {
  readonly timers: Timers
  readonly database: Database
  readonly network: Network
  readonly witness: Witness
  readonly record: RecordWatch
  readonly accuse: Accuse
  /** A new id, of the form of a UUIDv7, the same at every run. */
  readonly newId: () => string
}

/** Where work is written down. */
export type Place = {
  readonly person: PersonName
  readonly device: string
  readonly deviceId: string | null
  /** Milliseconds by which the device's clock is ahead. */
  readonly clockAheadMs: number
}

/**
 * The entry that writes this work down; `null` where it takes a second person's PIN and the server, which checks PINs, is
 * out of reach.
 */
export const draftOf = (world: World, place: Place, orderId: string, work: Work): Draft | null => {
  const id = world.newId()
  const draft = {
    id,
    orderId,
    shopId,
    kind: work.kind,
    version: versionOf(work.kind),
    payload: work.payload,
    writtenAt: new Date(world.timers.now() + place.clockAheadMs).toISOString(),
    restsOn: [...(work.restsOn ?? [])],
    writtenBy: { kind: 'staff', staffId: people[place.person].id },
    deviceId: place.deviceId,
  } as Draft
  if (work.second === undefined) return draft
  return world.network.isInReach(place.device) ? proven(world, draft, work.second) : null
}

/** The second person types their PIN, and the server keeps what it proves. */
const proven = ({ database, timers }: World, draft: Draft, second: PersonName): Draft => {
  const named = naming(draft, namedOnly(people[second].id))
  const agreement = agreementOf(named)
  if (!agreement) return named
  const token = `${draft.id.replaceAll('-', '')}${'A'.repeat(11)}`
  database.proofs.set(tokenDigest(token), {
    ...agreement,
    staffId: people[second].id,
    until: new Date(timers.now() + agreementMinutes * 60_000).toISOString(),
  })
  return withProof(named, token)
}

const naming = (draft: Draft, person: SecondPerson): Draft => {
  switch (draft.kind) {
    case 'torque.checked':
      return { ...draft, payload: { ...draft.payload, checkedBy: person } }
    case 'entry.struck':
      return { ...draft, payload: { ...draft.payload, secondPerson: person } }
    case 'sealant.purged':
      return { ...draft, payload: { ...draft.payload, aware: person } }
    default:
      return draft
  }
}

/** What an entry says, for whoever reads the history of a run. */
export const saysOf = ({ kind, payload }: Pick<Draft, 'kind' | 'payload'>): string => {
  const at = 'stepKey' in payload && payload.stepKey ? payload.stepKey : 'wheel' in payload && payload.wheel
  return `${kind}${at ? ` ${at}` : ''} (${meanings[kind]})`
}

/** What a device sends of a draft: the server adds who and where. */
export const envelopeOf = ({
  id,
  orderId,
  kind,
  version,
  payload,
  writtenAt,
  restsOn,
}: Draft): DraftEnvelope => ({
  id,
  orderId,
  kind,
  version,
  payload,
  writtenAt,
  restsOn: [...restsOn],
})
