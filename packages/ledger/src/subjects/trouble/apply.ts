import { type Appliers, recorded } from '../../fold/foldable.ts'
import { parkWheel } from '../../fold/park-wheel.ts'
import type { troubleKinds } from './kinds.ts'

export const applyTrouble: Appliers<keyof typeof troubleKinds> = {
  'trouble.found': (state, entry) => parkWheel(state, recorded(entry.payload, entry)),
}
