import type { Author } from './entry.ts'

/** Whether two entries were written by one and the same person of the shop; a link and the system are nobody. */
export const isSamePerson = (one: Author, other: Author): boolean =>
  one.kind === 'staff' && other.kind === 'staff' && one.staffId === other.staffId
