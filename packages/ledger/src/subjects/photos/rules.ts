import type { Rules } from '../../admit/rule.ts'
import type { photoKinds } from './kinds.ts'

export const photoRules: Rules<keyof typeof photoKinds> = {
  'photo.attached': [],
}
