import type { CustomerWords } from '@bayledger/wording/customer-words'
import { customerWords as english } from '@bayledger/wording/en/customer-words'
import { createContext, type ReactNode, useCallback, useContext, useEffect, useMemo, useState } from 'react'
import { ControlsWords } from '../../ui/controls-words.ts'

export type LanguageCode = CustomerWords['code']

type Spoken = {
  readonly words: CustomerWords
  /** Loads a language and puts the whole page into it. */
  readonly speak: (code: LanguageCode) => Promise<void>
}

const SpokenContext = createContext<Spoken>({ words: english, speak: async () => undefined })

/** What this page says, in the language that it is in. */
export const useWords = (): CustomerWords => useContext(SpokenContext).words

export const useSpoken = (): Spoken => useContext(SpokenContext)

/** A page loads the words of one language: English with its script, any other when it is wanted. */
export const wordsIn = async (code: LanguageCode): Promise<CustomerWords> => {
  if (code === 'en') return english
  const { customerWords } = await import('@bayledger/wording/es/customer-words')
  return customerWords
}

const key = 'bayledger.language'

/** As this device was last, else as its browser is set: until the page knows whose it is. */
export const languageOfDevice = (): LanguageCode => {
  try {
    const stored = localStorage.getItem(key)
    if (stored === 'en' || stored === 'es') return stored
  } catch {
    // Storage may be forbidden; the browser's own language then decides.
  }
  return navigator.language.toLowerCase().startsWith('es') ? 'es' : 'en'
}

/** Gives the page below its words, and the document its language and title. */
export function Speaking({ first, children }: { first: CustomerWords; children: ReactNode }) {
  const [words, setWords] = useState(first)
  const speak = useCallback(async (code: LanguageCode) => setWords(await wordsIn(code)), [])
  useEffect(() => {
    document.documentElement.lang = words.locale
    document.title = words.customerPage.document.title
    try {
      localStorage.setItem(key, words.code)
    } catch {
      // Storage may be full or forbidden; the card of the customer keeps the language all the same.
    }
  }, [words])
  const spoken = useMemo(() => ({ words, speak }), [words, speak])
  return (
    <SpokenContext.Provider value={spoken}>
      <ControlsWords.Provider value={words.controls}>{children}</ControlsWords.Provider>
    </SpokenContext.Provider>
  )
}
