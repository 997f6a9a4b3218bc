import { FindingCode } from '@bayledger/reckoning/diagnosis/finding-codes'

/** Finding codes that are more than one plain word: none of them may reach a person. */
const codes = FindingCode.options.filter((code) => code.includes('-'))

/** What keeps a text from being read as a sentence: how it begins, how it ends, a code in it. `null`: nothing does. */
export const faultOf = (text: string): string | null => {
  if (!/^[A-Z0-9"]/.test(text)) return 'begins without a capital'
  if (!/[.?!]$/.test(text)) return 'ends without a period'
  if (/[A-Z]+_[A-Z]+/.test(text)) return 'says a code'
  if (/undefined|null|NaN|\[object/.test(text)) return 'says a value that is missing'
  const code = codes.find((candidate) => text.includes(candidate))
  return code === undefined ? null : `says the code ${code}`
}
