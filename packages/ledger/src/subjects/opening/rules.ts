import { refuse } from '../../admit/refusal.ts'
import type { Rules } from '../../admit/rule.ts'
import type { openingKinds } from './kinds.ts'

export const openingRules: Rules<keyof typeof openingKinds> = {
  'order.opened': [
    (_state, _draft, facts) =>
      facts.roles.some((role) => role !== 'technician')
        ? null
        : refuse(
            'ENTRY_KIND_NOT_ALLOWED',
            'Orders are opened at the desk by an advisor, lead, manager or the owner.',
          ),
  ],
  'complaint.recorded': [],
  'authority.given': [],
  'sheet.chosen': [],
  'surroundings.recorded': [],
  'order.assigned': [],
  'wait.set': [],
  'order.moved': [],
}
