/** A North American number in its usual form; any other number unchanged. */
export const telephoneWords = (number: string): string =>
  number.replace(/^\+1(\d{3})(\d{3})(\d{4})$/, '($1) $2-$3')

/** What a person typed as a telephone number, in the usual form where it is a whole North American one; else unchanged. */
export const tidyTelephone = (typed: string): string => {
  const isOne = /^\s*(\+?1[\s.-]*)?\(?\d{3}\)?[\s.-]*\d{3}[\s.-]*\d{4}\s*$/.test(typed)
  const digits = typed.replace(/\D/g, '').slice(-10)
  return isOne ? `(${digits.slice(0, 3)}) ${digits.slice(3, 6)}-${digits.slice(6)}` : typed
}
