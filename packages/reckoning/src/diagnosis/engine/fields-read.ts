/** What decides which wheels there are and which of them the vehicle listens to: every rule rests on these. */
const readByAll = [
  'vehicle.system',
  'vehicle.spare',
  'vehicle.spareMonitored',
  'wheels.*.mounted',
  'wheels.*.answer',
  'controlModule.state',
] as const

/**
 * For each of several readers, given by the fields that it reads, whether it may find something else when a field
 * changes: answers with the places of those that may. Answers are kept by field.
 */
export const readersAmong = (
  readers: readonly (readonly string[])[],
): ((field: string) => readonly number[]) => {
  const patterns = readers.map((reads) => [...readByAll, ...reads].map((pattern) => pattern.split('.')))
  const known = new Map<string, readonly number[]>()
  return (field) => {
    const found = known.get(field)
    if (found !== undefined) return found
    const path = field.split('.')
    const reading = patterns.flatMap((reads, place) =>
      reads.some((pattern) => covers(pattern, path)) ? [place] : [],
    )
    known.set(field, reading)
    return reading
  }
}

/** A pattern covers a path where one is the beginning of the other; * matches any name. */
const covers = (pattern: readonly string[], path: readonly string[]): boolean =>
  pattern.every((name, index) => name === '*' || path[index] === undefined || path[index] === name)
