import { type ComponentType, useState } from 'react'
import { flushSync } from 'react-dom'
import { tellScan } from './scan-notice.tsx'
import type { ScanTarget } from './scan-target.ts'
import { partMissing, scanButtonWords, scanShort } from './scan-words.ts'

type ScanButtonProps = {
  target: ScanTarget
  className: string
  /** The whole words, or one that fits a key. */
  words?: 'whole' | 'short'
  onScan: (value: string) => void
  /** The camera was left without a scan: the field takes the focus. */
  onTypeInstead?: () => void
}

type CameraDialog = ComponentType<{
  target: ScanTarget
  onScan: (value: string) => void
  onLeave: () => void
}>

/** Opens the camera for one field. Its part of the program is loaded at the first press. */
export function ScanButton({ target, className, words = 'whole', onScan, onTypeInstead }: ScanButtonProps) {
  const [Camera, setCamera] = useState<CameraDialog | null>(null)
  const open = () =>
    import('./camera-dialog.tsx').then(
      (loaded) => setCamera(() => loaded.CameraDialog),
      () => tellScan(partMissing),
    )
  const close = () => setCamera(null)
  return (
    <>
      <button
        type="button"
        className={className}
        aria-label={scanButtonWords[target.wanted]}
        onClick={() => void open()}
      >
        {words === 'short' ? scanShort : scanButtonWords[target.wanted]}
      </button>
      {Camera === null ? null : (
        <Camera
          target={target}
          onScan={(value) => {
            close()
            onScan(value)
          }}
          onLeave={() => {
            // The dialog gives the focus back to this button when it goes: the field takes it only then.
            flushSync(close)
            onTypeInstead?.()
          }}
        />
      )}
    </>
  )
}
