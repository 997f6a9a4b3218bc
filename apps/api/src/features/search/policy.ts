/** What was typed, as each kind of thing is looked for; `null` where it cannot be one. */
export type Wanted = {
  readonly words: readonly string[] | null
  readonly mark: string | null
  readonly phoneEnd: string | null
  readonly orderNumber: string | null
  readonly sensorEnd: string | null
}

/** Plates and VINs are compared with O as 0 and I as 1, since people read and type them so. */
export const wantedFrom = (typed: string): Wanted => {
  const text = typed.trim()
  const plain = text.toUpperCase().replace(/[^A-Z0-9]/g, '')
  const digits = text.replace(/\D/g, '')
  return {
    words: /\p{L}/u.test(text) ? text.toLowerCase().split(/\s+/).filter(Boolean) : null,
    mark: plain.length >= 2 ? plain.replaceAll('O', '0').replaceAll('I', '1').toLowerCase() : null,
    phoneEnd: digits.length >= 4 && /^[\d\s()+.-]+$/.test(text) ? digits : null,
    orderNumber: /^[A-Z]{0,3}\d{2,8}$/.test(plain) ? plain : null,
    sensorEnd: plain.length >= 4 && /^[0-9A-F]+$/.test(plain) ? plain : null,
  }
}
