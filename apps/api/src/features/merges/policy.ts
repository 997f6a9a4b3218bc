export type MergeSubject = 'customer' | 'vehicle'

type Merged = {
  readonly id: string
  readonly mergedId: string
  readonly survivorId: string
  readonly undoneAt: Date | null
}

/**
 * Whether a merge may be undone: it holds, and no later one rests on its survivor. Ids are in the order of their making, and
 * the last one of a record is undone first, so that each gives back exactly what it took.
 */
export const mayUndo = (merge: Merged, all: readonly Merged[]): boolean =>
  merge.undoneAt === null &&
  !all.some(
    (other) =>
      other.undoneAt === null &&
      other.id > merge.id &&
      (other.survivorId === merge.survivorId || other.mergedId === merge.survivorId),
  )

/** A record's fields as they are stored. */
export type Fields = Readonly<Record<string, string | boolean | null>>

/** Of what a merge changed, the fields that still are as it made them, as they were before. */
export const givenBack = (current: Fields, before: Fields, after: Fields): Fields =>
  Object.fromEntries(
    Object.entries(before).filter(([field]) => (current[field] ?? null) === (after[field] ?? null)),
  )
