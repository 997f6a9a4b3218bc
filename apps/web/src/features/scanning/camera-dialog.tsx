import { useRef, useState } from 'react'
import { Button } from '../../ui/button.tsx'
import { Dialog } from '../../ui/dialog.tsx'
import { useScanTaker } from '../../ui/scanner-keys.ts'
import { type ScanTarget, scanFor } from './scan-target.ts'
import { cameraWords, scanButtonWords, typeInstead, wantedHere } from './scan-words.ts'
import { useCameraScan } from './use-camera-scan.ts'
import './camera-dialog.css'

type CameraDialogProps = {
  target: ScanTarget
  onScan: (value: string) => void
  /** By its button, by Escape, or because the screen was locked or hidden. */
  onLeave: () => void
}

/** The camera's picture until it shows the wanted barcode. A scanner that types is heard here, too. */
export function CameraDialog({ target, onScan, onLeave }: CameraDialogProps) {
  const video = useRef<HTMLVideoElement>(null)
  const [refused, setRefused] = useState<string | null>(null)
  const { state, says, torch } = useCameraScan(video, target, onScan, onLeave)
  const read = (text: string) => scanFor(target, text)
  useScanTaker({
    fits: (text) => read(text).ok,
    take: (text) => {
      const taken = read(text)
      if (taken.ok) onScan(taken.value)
    },
    refuse: (text) => {
      const taken = read(text)
      setRefused(taken.ok ? null : taken.says)
    },
  })
  const isRunning = state === 'opening' || state === 'live'
  return (
    <Dialog title={scanButtonWords[target.wanted]} closeWord={typeInstead} onClose={onLeave}>
      <div className="camera">
        <video ref={video} className="camera-picture" muted playsInline hidden={!isRunning} />
        <p role="status" className="camera-words">
          {isRunning
            ? (says ?? refused ?? (state === 'live' ? wantedHere[target.wanted] : cameraWords.opening))
            : null}
        </p>
        {isRunning ? null : (
          <p role="alert" className="camera-words">
            {cameraWords[state]}
          </p>
        )}
        {torch === null ? null : (
          <Button aria-pressed={torch.isOn} onClick={torch.turn}>
            {torch.isOn ? 'Lamp off' : 'Lamp on'}
          </Button>
        )}
      </div>
    </Dialog>
  )
}
