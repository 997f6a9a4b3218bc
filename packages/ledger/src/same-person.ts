import type { Author } from './entry.ts'

/** Whether the same person of the shop wrote both entries. Never true of a link or the system. */
export const isSamePerson = (one: Author, other: Author): boolean =>
  one.kind === 'staff' && other.kind === 'staff' && one.staffId === other.staffId
