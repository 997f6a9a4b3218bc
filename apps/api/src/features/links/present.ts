import type { CustomerLink } from '@bayledger/contract/links'
import type { LinkRow } from './store.ts'

export const presentLink = (row: LinkRow): CustomerLink => ({
  linkId: row.id,
  createdAt: row.createdAt.toISOString(),
  expiresAt: row.expiresAt.toISOString(),
  revokedAt: row.revokedAt?.toISOString() ?? null,
  openedAt: row.openings.map(({ openedAt }) => openedAt.toISOString()),
})
