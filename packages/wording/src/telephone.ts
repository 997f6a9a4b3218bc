/** A North American number as people here read it; any other as it is. */
export const telephoneWords = (number: string): string =>
  number.replace(/^\+1(\d{3})(\d{3})(\d{4})$/, '($1) $2-$3')
