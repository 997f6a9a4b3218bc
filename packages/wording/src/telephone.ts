/** A North American number in its usual form; any other number unchanged. */
export const telephoneWords = (number: string): string =>
  number.replace(/^\+1(\d{3})(\d{3})(\d{4})$/, '($1) $2-$3')
