import { languageNames } from '@bayledger/wording/language-names'
import { useState } from 'react'
import { Button } from '../../ui/button.tsx'
import { type LanguageCode, useWords } from './spoken.tsx'

/** The other language by its own name, at the top of the page. */
export function LanguageSwitch({ onChoose }: { onChoose: (code: LanguageCode) => Promise<void> }) {
  const { code } = useWords()
  const [busy, setBusy] = useState(false)
  const other = code === 'en' ? 'es' : 'en'
  const choose = async () => {
    setBusy(true)
    try {
      await onChoose(other)
    } finally {
      setBusy(false)
    }
  }
  return (
    <p className="customer-language" lang={other}>
      <Button busy={busy} onClick={() => void choose()}>
        {languageNames[other]}
      </Button>
    </p>
  )
}
