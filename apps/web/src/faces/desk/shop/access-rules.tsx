import { type AccessRulesContent, getAccessRules, putAccessRules } from '@bayledger/contract/access-rules'
import { call } from '../../../lib/api-client.ts'
import type { RecordKind } from '../../../ui/record/record-kind.ts'
import { RecordPage } from '../../../ui/record/record-page.tsx'
import { textIn, yesNo, yesNoRow } from '../../../ui/record/record-rows.ts'
import { useShopClock } from '../shop-clock.ts'
import type { ShopPageProps } from './shop-page.ts'

/** The rules are one record that every shop has: none is added, and it is always open. */
const kind: RecordKind<AccessRulesContent> = {
  name: 'access-rules',
  words: { one: 'rule', all: 'rules', add: '' },
  source: {
    list: async (signal) => [(await call(getAccessRules, { signal })).record],
    read: (_id, signal) => call(getAccessRules, { signal }),
    create: () => Promise.reject(new Error('rules are never added')),
    put: (_id, version, content) => call(putAccessRules, { version, body: { content } }),
  },
  rows: () => [
    yesNoRow('secondStep', 'At the desk everybody needs a second step', {
      yes: 'yes: a code or a passkey. Whoever has none turns one on at the next sign-in',
      no: 'no: each person decides',
    }),
  ],
  blank: { secondStep: 'no' },
  toValues: ({ secondStep }) => ({ secondStep: yesNo(secondStep) }),
  toContent: (values) => ({ secondStep: textIn(values, 'secondStep') === 'yes' }),
  title: () => 'What the shop asks of everybody at the sign-in',
  line: () => '',
  touches: [],
  isOne: true,
}

export function AccessRules({ onOpen }: Pick<ShopPageProps, 'onOpen'>) {
  return <RecordPage kind={kind} open="access-rules" onOpen={onOpen} clock={useShopClock()} />
}
