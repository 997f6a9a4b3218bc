/** Whether two people's names are one, however they are spaced, pointed, capitalized or accented. */
export const isSameName = (one: string, other: string): boolean => folded(one) === folded(other)

const folded = (name: string): string =>
  name
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLocaleLowerCase('en')
    .replaceAll(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
