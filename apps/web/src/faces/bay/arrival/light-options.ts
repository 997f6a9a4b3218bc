import type { LightBehavior } from '@bayledger/reckoning/evidence/evidence'
import { lights } from '@bayledger/wording/en/lights'
import type { RowOption } from '../../../ui/rows/rows.ts'

export const behaviorOptions: readonly (RowOption & { readonly value: LightBehavior })[] = (
  ['off', 'solid', 'flash-then-solid', 'flash-continuous', 'intermittent-cold', 'intermittent-other'] as const
).map((value) => ({ value, ...lights.choice[value] }))

export const lampOptions: readonly RowOption[] = [
  { value: 'lights', label: 'Lights at key-on' },
  { value: 'dark', label: 'Stays dark', detail: 'no lamp check' },
]
