import { FindingCode } from '@bayledger/reckoning/diagnosis/finding-codes'

/** Finding codes that are more than one plain word: none of them may reach a person. */
const codes = FindingCode.options.filter((code) => code.includes('-'))

/** Why a text is not a plain sentence: its beginning, its end or a code in it. `null`: it is one. */
export const faultOf = (text: string): string | null => {
  if (!/^[¿A-ZÁÉÍÓÚ0-9"]/.test(text)) return 'begins without a capital'
  if (!/[.?!]$/.test(text)) return 'ends without a period'
  if (/[A-Z]+_[A-Z]+/.test(text)) return 'says a code'
  if (/undefined|null|NaN|\[object/.test(text)) return 'says a value that is missing'
  const code = codes.find((candidate) => text.includes(candidate))
  return code === undefined ? null : `says the code ${code}`
}
