import type { Evidence } from '../../evidence/evidence-schema.ts'
import { idKey } from '../../sensor/sensor-id.ts'
import { readingOrder, roadPositions, type WheelPosition } from '../../wheels.ts'

/** What the vehicle's control module holds. */
export type StoredFacts = {
  readonly state: 'read' | 'blank' | 'unreadable' | null
  readonly keys: Readonly<Record<WheelPosition, string | null>>
  readonly all: ReadonlySet<string>
  /** Every position that the vehicle monitors was read, so that an ID not among them is known not to be stored. */
  readonly complete: boolean
  readonly decimal: boolean
}

/** `heard`: the keys of the IDs that answered, to recognize decimal notation that nobody noted. */
export const readStored = (
  evidence: Evidence,
  spareMonitored: boolean,
  heard: ReadonlySet<string>,
): StoredFacts => {
  const module = evidence.controlModule
  const state = module?.state ?? null
  const ids = state === 'read' ? module?.ids : null
  const decimal = module?.notation
    ? module.notation === 'decimal'
    : looksDecimal(Object.values(ids ?? {}), heard)
  const keyAt = (position: WheelPosition): string | null => {
    const id = ids?.[position]
    return typeof id === 'string' ? idKey(id, decimal ? 'decimal' : 'hex') : null
  }
  const keys = { LF: keyAt('LF'), RF: keyAt('RF'), RR: keyAt('RR'), LR: keyAt('LR'), SP: keyAt('SP') }
  const needed: readonly WheelPosition[] = spareMonitored ? readingOrder : roadPositions
  return {
    state,
    keys,
    all: new Set(Object.values(keys).filter((key) => key !== null)),
    complete: needed.every((position) => keys[position] !== null),
    decimal,
  }
}

const looksDecimal = (ids: readonly (string | null | undefined)[], heard: ReadonlySet<string>): boolean => {
  const given = ids.filter((id) => typeof id === 'string')
  const known = (notation: 'hex' | 'decimal') => given.some((id) => heard.has(idKey(id, notation)))
  return given.length > 0 && given.every((id) => /^\d+$/.test(id)) && !known('hex') && known('decimal')
}
