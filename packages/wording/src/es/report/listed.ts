/** "a", "a y b", "a, b y c"; "e" before the sound of an i. */
export const listed = (parts: readonly string[]): string => {
  const last = parts.at(-1) ?? ''
  const and = /^h?[ií](?![aeou])/i.test(last) ? 'e' : 'y'
  return parts.length < 2 ? last : `${parts.slice(0, -1).join(', ')} ${and} ${last}`
}
