import type { LightBehavior } from '@bayledger/reckoning/evidence/evidence'
import type { RowOption } from '../form/rows.ts'

export const behaviorOptions: readonly (RowOption & { readonly value: LightBehavior })[] = [
  { value: 'off', label: 'Off', detail: 'after the lamp check' },
  { value: 'solid', label: 'Solid', detail: 'stays lit' },
  { value: 'flash-then-solid', label: 'Flashes, then solid', detail: 'about a minute' },
  { value: 'flash-continuous', label: 'Never stops flashing' },
  { value: 'intermittent-cold', label: 'Only when cold', detail: 'seen to go out' },
  { value: 'intermittent-other', label: 'Comes and goes' },
]

export const lampOptions: readonly RowOption[] = [
  { value: 'lights', label: 'Lights at key-on' },
  { value: 'dark', label: 'Stays dark', detail: 'no lamp check' },
]
