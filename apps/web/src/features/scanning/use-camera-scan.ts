import { type RefObject, useEffect, useRef, useState } from 'react'
import { barcodesIn, loadBarcodeReader } from './barcode-reader.ts'
import {
  type CameraProblem,
  cameraMissing,
  cameraProblem,
  closeCamera,
  hasTorch,
  openCamera,
  setTorch,
} from './camera.ts'
import type { ScanTarget } from './scan-target.ts'
import { nextSight, nothingSeen } from './sight.ts'

/** Between two pictures, in milliseconds: the tablet has other things to do. */
const pauseMilliseconds = 100

type CameraScan = {
  readonly state: 'opening' | 'live' | CameraProblem
  /** What it sees instead of what is wanted. */
  readonly says: string | null
  /** `null`: this camera has no lamp. */
  readonly torch: { readonly isOn: boolean; readonly turn: () => void } | null
}

/**
 * Runs the camera while it is in use, and looks for a barcode in its pictures. The camera is closed when the screen is
 * left, hidden or locked.
 */
export const useCameraScan = (
  video: RefObject<HTMLVideoElement | null>,
  target: ScanTarget,
  onScan: (value: string) => void,
  onLeave: () => void,
): CameraScan => {
  const [state, setState] = useState<CameraScan['state']>('opening')
  const [says, setSays] = useState<string | null>(null)
  const [stream, setStream] = useState<MediaStream | null>(null)
  const [isOn, setIsOn] = useState(false)
  const asked = useRef({ target, onScan, onLeave })
  useEffect(() => {
    asked.current = { target, onScan, onLeave }
  })

  useEffect(() => {
    let isOver = false
    let opened: MediaStream | null = null
    const stop = () => {
      isOver = true
      if (opened !== null) closeCamera(opened)
    }
    const run = async () => {
      const missing = cameraMissing({
        isSecureContext,
        hasDevices: navigator.mediaDevices?.getUserMedia !== undefined,
      })
      if (missing !== null) return setState(missing)
      opened = await openCamera()
      if (isOver) return closeCamera(opened)
      const element = video.current
      if (element === null) return
      element.srcObject = opened
      await element.play()
      setStream(opened)
      setState('live')
      if (
        !(await loadBarcodeReader().then(
          () => true,
          () => false,
        ))
      ) {
        stop()
        return setState('no-reader')
      }
      let sight = nothingSeen
      while (!isOver) {
        // Behind the lock, or in a tab that nobody sees, a camera must not go on.
        if (!element.checkVisibility() || document.hidden) return asked.current.onLeave()
        const picture = pictureOf(element)
        const texts = picture === null ? [] : await barcodesIn(picture)
        if (isOver) return
        sight = nextSight(sight, texts, asked.current.target)
        setSays(sight.says)
        if (sight.isSure && sight.value !== null) return asked.current.onScan(sight.value)
        await new Promise((resolve) => setTimeout(resolve, pauseMilliseconds))
      }
    }
    run().catch((thrown: unknown) => {
      stop()
      setState(cameraProblem(thrown instanceof Error ? thrown.name : ''))
    })
    return stop
  }, [video])

  const turn = () => {
    if (stream === null) return
    void setTorch(stream, !isOn).then(() => setIsOn(!isOn))
  }
  return { state, says, torch: stream !== null && hasTorch(stream) ? { isOn, turn } : null }
}

const canvas = typeof document === 'undefined' ? null : document.createElement('canvas')

/** What the camera shows now; `null` before its first picture. */
const pictureOf = (video: HTMLVideoElement): ImageData | null => {
  const { videoWidth: width, videoHeight: height } = video
  if (canvas === null || width === 0) return null
  canvas.width = width
  canvas.height = height
  const context = canvas.getContext('2d', { willReadFrequently: true })
  context?.drawImage(video, 0, 0)
  return context?.getImageData(0, 0, width, height) ?? null
}
