export type TokenKind = 'order-number' | 'plate' | 'vin' | 'phone' | 'name' | 'model' | 'sensor-id' | 'tin'

/** What a stored token of this kind is to begin with. */
export type Wanted = { readonly kind: TokenKind; readonly beginning: string }

/**
 * What was typed, as each kind of thing is looked up, likelier kinds first. Plates, VINs and tires' numbers are compared with
 * O as 0 and I as 1, since people read and type them so. VINs, telephone numbers and sensor IDs are stored backward as well,
 * so that their end is a beginning; fewer than four characters of them would find too much.
 */
export const wantedFrom = (typed: string): Wanted[] => {
  const text = typed.trim()
  const plain = text.toUpperCase().replace(/[^A-Z0-9]/g, '')
  const mark = plain.replaceAll('O', '0').replaceAll('I', '1')
  const digits = text.replace(/\D/g, '').replace(/^1(?=\d{10}$)/, '')
  const either = (kind: TokenKind, number: string, isOne: boolean): Wanted[] =>
    isOne && number.length >= 4
      ? [number, [...number].toReversed().join('')].map((beginning) => ({ kind, beginning }))
      : []
  const only = (kind: TokenKind, beginning: string, isOne: boolean): Wanted[] =>
    isOne ? [{ kind, beginning }] : []
  return [
    ...only('plate', mark, mark.length >= 2),
    ...either('vin', mark, mark.length <= 17),
    ...either('phone', digits, /^[\d\s()+.-]+$/.test(text)),
    ...only('name', text, /\p{L}/u.test(text)),
    ...only('order-number', plain, /^[A-Z]{0,3}\d{2,8}$/.test(plain)),
    ...only('model', text, /[\p{L}\p{N}]/u.test(text)),
    ...either('sensor-id', plain, /^[0-9A-F]+$/.test(plain)),
    ...either('tin', mark.replace(/^D0T/, ''), mark.length <= 16),
  ]
}
