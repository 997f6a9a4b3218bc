import { readTroubleCode } from '@bayledger/reckoning/sensor/trouble-code'
import { noTroubleCode } from '../../../lib/fault-words.ts'

/**
 * A word that is meant as a trouble code: a code's letter, then signs of which one at least is a digit; or any letter
 * before as many digits as a code has.
 */
const meantAsCode = /^(?:[PCBU][0-9OIL][0-9A-Z:-]*|[A-Z]\d{3,4})$/i

/**
 * What is wrong with a trouble code in the text that a reader showed. The text may hold words around the codes; only
 * what is meant as a code is read as one.
 */
export const codeTextFault = (text: string): string | undefined => {
  for (const word of text.split(/[\s,;()]+/)) {
    if (!meantAsCode.test(word) || !/\d/.test(word)) continue
    const read = readTroubleCode(word.replace(/[:.-]+$/, ''))
    if (!read.ok) return noTroubleCode(read)
  }
  return undefined
}
