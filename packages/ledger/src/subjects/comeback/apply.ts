import { type Appliers, recorded } from '../../fold/foldable.ts'
import type { comebackKinds } from './kinds.ts'

export const applyComeback: Appliers<keyof typeof comebackKinds> = {
  'comeback.judged': (state, entry) => ({ ...state, comeback: recorded(entry.payload, entry) }),
}
