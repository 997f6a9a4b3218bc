import type { Kind } from '../registry.ts'
import type { OrderState } from '../state.ts'
import type { Foldable } from './foldable.ts'

/** Kinds that may name a step that is closed: readings are compared with one another, and the others close no step. */
const count: ReadonlySet<Kind> = new Set([
  'wheel.checked',
  'tire.inspected',
  'module.read',
  'telltale.observed',
  'trouble.found',
  'photo.attached',
])

/**
 * Whether an entry records a step once more that another one has closed: two tablets wrote it without hearing of each
 * other. Both are kept, the first counts, and a person withdraws one of them.
 */
export const recordsAgain = (state: OrderState, { kind, payload }: Foldable): boolean =>
  !count.has(kind) &&
  'stepKey' in payload &&
  payload.stepKey !== null &&
  payload.stepKey !== undefined &&
  state.closed[payload.stepKey] !== undefined

/** Whether a hold waits for a person to pick one of two records of the same step. */
export const isOfSecondRecord = (hold: OrderState['holds'][number]): boolean =>
  hold.code === 'heard-late' && 'values' in hold && hold.values.refusal === 'STEP_ALREADY_CLOSED'
