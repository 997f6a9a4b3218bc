import { definitionOf, type Kind, versionOf } from './registry.ts'

/**
 * The same entry or draft with its payload in the present version of its kind. Pure; an entry of the present
 * version comes back unchanged. Everything that reads a payload reads it through here, except hashing: a hash is taken
 * over what was written.
 */
export const upcast = <
  E extends { readonly kind: Kind; readonly version: number; readonly payload: unknown },
>(
  entry: E,
): E => {
  const present = versionOf(entry.kind)
  if (entry.version >= present) return entry
  const payload = definitionOf(entry.kind)
    .earlier.slice(entry.version - 1)
    .reduce<unknown>((before, { toNext }) => toNext(before as never), entry.payload)
  return { ...entry, version: present, payload }
}
