import type { Author } from '@bayledger/ledger/entry'
import type { OrderState, Written } from '@bayledger/ledger/state'
import type { Step } from '@bayledger/reckoning/step'
import type { ArrivalTask } from '../../../features/arrival/arrival-tasks.ts'
import { screenOfForm } from '../order/selected-screen.ts'

/** What another tablet recorded while its form was half filled in here: a step, or a task of the arrival check. */
export type ClosedElsewhere = {
  readonly closed: { readonly step: Step } | { readonly task: ArrivalTask }
  readonly by: Author
  /** UTC text. */
  readonly writtenAt: string
  /** The form's key on this tablet, and what was typed there, in words. */
  readonly formKey: string
  readonly typed: string
}

/** Half-filled forms by their key, and how many entries of the order were known here when each was begun. */
export type HalfFilled = {
  readonly forms: ReadonlyMap<string, unknown>
  readonly begunAt: ReadonlyMap<string, number>
}

/**
 * Steps of the plan that another device closed, and tasks of the arrival check that it recorded since the form was begun, of
 * which something is still typed here. A task may be recorded as often as one likes; a step only once.
 */
export const closedElsewhere = (
  state: OrderState,
  deviceId: string | null,
  { forms, begunAt }: HalfFilled,
): ClosedElsewhere[] => {
  if (deviceId === null) return []
  return [...forms].flatMap(([formKey, content]) => {
    const typed = formKey.startsWith(`${state.orderId}/`) ? typedWords(content) : ''
    const found = typed === '' ? null : (stepClosed(state, formKey) ?? taskRecorded(state, formKey, begunAt))
    if (found === null || found.written.deviceId === deviceId) return []
    const { closed, written } = found
    return [{ closed, by: written.by, writtenAt: written.writtenAt, formKey, typed }]
  })
}

type Found = Pick<ClosedElsewhere, 'closed'> & { readonly written: Written }

const stepClosed = (state: OrderState, formKey: string): Found | null => {
  const rest = formKey.slice(state.orderId.length + 1)
  const step = state.plan?.plan.steps.find(
    ({ stepKey }) => rest === stepKey || rest.startsWith(`${stepKey}/`),
  )
  const written = step && state.closed[step.stepKey]?.written
  return written ? { closed: { step }, written } : null
}

const taskRecorded = (state: OrderState, formKey: string, begunAt: HalfFilled['begunAt']): Found | null => {
  const screen = screenOfForm(state, formKey)
  if (screen?.at !== 'task') return null
  const written = recordOf(state, screen.task)
  const begun = begunAt.get(formKey)
  return written && begun !== undefined && written.seq > begun
    ? { closed: { task: screen.task }, written }
    : null
}

const recordOf = (state: OrderState, task: ArrivalTask): Written | undefined => {
  const { wheels, tires, module, telltale } = state.arrival
  switch (task.what) {
    case 'gauge':
    case 'sensor':
      return wheels[task.wheel]?.[task.what]?.written
    case 'tire':
      return tires[task.wheel]?.written
    case 'surroundings':
      return state.surroundings?.written
    case 'warning-light':
      return telltale?.written
    case 'control-module':
      return module?.written
    default:
      return undefined
  }
}

const begun = new Map<string, number>()

/** Notes which forms of an order were begun since the last time, after so many of its entries; gives all of them. */
export const noteBegun = (
  orderId: string,
  headSeq: number,
  forms: ReadonlyMap<string, unknown>,
): ReadonlyMap<string, number> => {
  const isTyped = (key: string) => typedWords(forms.get(key)) !== ''
  for (const key of begun.keys()) if (!isTyped(key)) begun.delete(key)
  for (const key of forms.keys())
    if (key.startsWith(`${orderId}/`) && !begun.has(key) && isTyped(key)) begun.set(key, headSeq)
  return begun
}

/** What was typed into a form, for a person: empty where nothing was. */
export const typedWords = (content: unknown): string => {
  if (Array.isArray(content)) return content.length === 0 ? '' : `moved: ${content.join(', ')}`
  if (typeof content !== 'object' || content === null) return ''
  const values = 'values' in content ? content.values : content
  return Object.values(values as Readonly<Record<string, unknown>>)
    .filter((value) => typeof value === 'string' && value.trim() !== '')
    .join(', ')
}
