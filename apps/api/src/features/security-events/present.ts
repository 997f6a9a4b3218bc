import type { SecurityEventLine } from '@bayledger/contract/security-events'
import type { EventRow } from './store.ts'

export const presentSecurityEvent = ({ firstAt, lastAt, ...row }: EventRow): SecurityEventLine => ({
  ...row,
  firstAt: firstAt.toISOString(),
  lastAt: lastAt.toISOString(),
})
