import type { Rules } from '../../admit/rule.ts'
import type { openingKinds } from './kinds.ts'

export const openingRules: Rules<keyof typeof openingKinds> = {
  'order.opened': [],
  'complaint.recorded': [],
  'authority.given': [],
  'sheet.chosen': [],
  'surroundings.recorded': [],
  'order.assigned': [],
  'wait.set': [],
  'order.moved': [],
}
