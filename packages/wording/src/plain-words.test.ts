import { describe, expect, it } from 'vitest'
import { english } from './en/english.ts'
import { spanish } from './es/spanish.ts'

/** Words that readers with simple English did not understand (line R7 of the trials), and the same in Spanish. */
const ofTheTrade = {
  en: /\b(demount|program|relearn|learns?|shop supplies|weekly)\b/i,
  es: /\b(desmontar|programar|reaprender|reconozca)\b/i,
}

describe.each([english, spanish])(
  'what is offered, in $code,',
  ({ code, estimateLines, verdicts, bundles }) => {
    it('is said without words of the trade, line by line and as a whole', () => {
      const said = [
        ...Object.values(estimateLines.names),
        ...Object.values(verdicts.drive),
        bundles.titles.relearn(''),
      ]
      expect(said.length).toBeGreaterThan(30)
      expect(said.filter((words) => ofTheTrade[code].test(words))).toEqual([])
    })
  },
)
