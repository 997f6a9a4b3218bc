import { readRetention } from '../../core/retention-times.ts'

export const presentRetention = (version: number, body: unknown) => ({
  id: 'retention' as const,
  version,
  content: readRetention(body),
  facts: {},
})
