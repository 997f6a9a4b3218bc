import type { Person } from '@bayledger/contract/people'
import type { PersonRow } from './store.ts'

/** A person without anything of their secrets but that they are there. */
export const presentPerson = ({ id, version, content, pinHash, passwordHash }: PersonRow): Person => {
  const { name, signInName, roles, active } = content
  return {
    id,
    version,
    content: { name, signInName, roles, active },
    facts: { hasPin: pinHash !== null, hasPassword: passwordHash !== null },
  }
}
