import { useEffect, useId, useState } from 'react'
import { tellPhotoFault } from './picture-count.ts'
import type { TakenPhoto } from './take-photo.ts'
import './camera-button.css'

type CameraButtonProps = {
  children: string
  /** The step asks for a photo and has none yet. */
  isAsked?: boolean
  /** Rejects where the tablet has no room. */
  onTaken: (taken: TakenPhoto) => Promise<unknown>
}

const loadTakePhoto = async () => {
  const { takePhoto } = await import('./take-photo.ts')
  return takePhoto
}

/**
 * Opens the tablet's own camera, which focuses, lights and works with gloves and without a network as people know it;
 * the photo never goes through another program's gallery.
 */
export function CameraButton({ children, isAsked = false, onTaken }: CameraButtonProps) {
  const id = useId()
  const [busy, setBusy] = useState(false)
  // Fetched while there is a network: the camera is opened where there is none.
  useEffect(() => void loadTakePhoto().catch(() => undefined), [])
  const take = async (file: File) => {
    setBusy(true)
    const takePhoto = await loadTakePhoto()
    const taken = await takePhoto(file, new Date())
    const failed =
      typeof taken === 'string'
        ? taken
        : await onTaken(taken).then(
            () => null,
            () => 'full' as const,
          )
    tellPhotoFault(failed)
    setBusy(false)
  }
  return (
    <div className="camera">
      <label
        className={`button button-${isAsked ? 'main' : 'plain'} camera-label`}
        htmlFor={id}
        aria-busy={busy || undefined}
      >
        {children}
      </label>
      <input
        id={id}
        className="camera-input"
        type="file"
        accept="image/*"
        capture="environment"
        disabled={busy}
        onChange={(event) => {
          const input = event.currentTarget
          const [file] = input.files ?? []
          if (file !== undefined) void take(file)
          // The same file again is a photo again.
          input.value = ''
        }}
      />
    </div>
  )
}
