import { refuse } from '../../admit/refusal.ts'
import type { Rules } from '../../admit/rule.ts'
import { digestOf } from '../../digests.ts'
import { lookFee } from '../../questions/money.ts'
import type { openingKinds } from './kinds.ts'

export const openingRules: Rules<keyof typeof openingKinds> = {
  'order.opened': [],
  'complaint.recorded': [],
  'authority.given': [
    (_state, { payload }, facts) =>
      lookFee(facts.money, payload.money) ? null : refuse('MONEY_MISSING', {}),
  ],
  // Who verified a figure is proven on the sheet that the shop has on file, so an order may use no other.
  'sheet.chosen': [
    (_state, { payload }, facts) =>
      facts.sheetsOnFile.has(digestOf(payload.sheet)) ? null : refuse('SHEET_NOT_ON_FILE', {}),
  ],
  'surroundings.recorded': [],
  'order.assigned': [],
  'wait.set': [],
  'order.moved': [],
}
