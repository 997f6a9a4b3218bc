import { type ComponentType, useEffect, useState } from 'react'
import { askForProofBy } from '../../lib/proof.ts'

type Answering = { onAnswer: (isProven: boolean) => void }

/** Answers every call that needs a recent proof: one dialog for all that wait for it. */
export function AskForProof() {
  const [asked, setAsked] = useState<(Answering & { Dialog: ComponentType<Answering> }) | null>(null)
  useEffect(() => {
    let waiting: Promise<boolean> | null = null
    const open = async () => {
      const { ProofDialog } = await import('./proof-dialog.tsx')
      return new Promise<boolean>((resolve) => setAsked({ Dialog: ProofDialog, onAnswer: resolve }))
    }
    askForProofBy(() => {
      waiting ??= open()
        .catch(() => false)
        .finally(() => {
          waiting = null
          setAsked(null)
        })
      return waiting
    })
    return () => askForProofBy(async () => false)
  }, [])
  return asked === null ? null : <asked.Dialog onAnswer={asked.onAnswer} />
}
