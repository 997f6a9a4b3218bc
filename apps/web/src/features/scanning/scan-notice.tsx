import { useSyncExternalStore } from 'react'
import { Button } from '../../ui/button.tsx'
import { useScanTaker } from '../../ui/scanner-keys.ts'
import { noPlaceWords } from './scan-words.ts'
import './scan-notice.css'

let notice: string | null = null
const listeners = new Set<() => void>()

/** Says what became of a scan; `null` takes it back. */
export const tellScan = (words: string | null): void => {
  notice = words
  for (const listener of listeners) listener()
}

/**
 * What was scanned and could not be taken, until somebody has read it. It also sees to it that no button gets a
 * scanner's Enter where nothing on the screen takes scans.
 */
export function ScanNotice() {
  const words = useSyncExternalStore(
    (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    () => notice,
  )
  useScanTaker(
    { fits: () => false, take: () => undefined, refuse: (text) => tellScan(noPlaceWords(text)) },
    'behind-all',
  )
  if (words === null) return null
  return (
    <div className="scan-notice" role="alert">
      <p>{words}</p>
      <Button onClick={() => tellScan(null)}>Close</Button>
    </div>
  )
}
