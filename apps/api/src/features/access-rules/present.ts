import { readAccessRules } from '../../core/access-rules.ts'

export const presentAccessRules = (version: number, body: unknown) => ({
  id: 'access-rules' as const,
  version,
  content: readAccessRules(body),
  facts: {},
})
