/** Every text that a report holds, with the path to it; its pictures and marks of the ledger are left out. */
export const textsOf = (value: unknown, path = ''): [string, string][] => {
  if (typeof value === 'string') return [[path, value]]
  if (typeof value !== 'object' || value === null || value instanceof Uint8Array) return []
  return Object.entries(value).flatMap(([key, inner]) => textsOf(inner, `${path}.${key}`))
}
