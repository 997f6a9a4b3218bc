import { refuse } from '../../admit/refusal.ts'
import type { Rules } from '../../admit/rule.ts'
import { lookFee } from '../../questions/money.ts'
import type { openingKinds } from './kinds.ts'

export const openingRules: Rules<keyof typeof openingKinds> = {
  'order.opened': [],
  'complaint.recorded': [],
  'authority.given': [
    (_state, { payload }, facts) =>
      lookFee(facts.money, payload.money) ? null : refuse('MONEY_MISSING', {}),
  ],
  'sheet.chosen': [],
  'surroundings.recorded': [],
  'order.assigned': [],
  'wait.set': [],
  'order.moved': [],
}
