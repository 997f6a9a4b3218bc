/** Why a camera cannot be used. */
export type CameraProblem = 'insecure' | 'none' | 'refused' | 'in-use' | 'no-reader' | 'unknown'

/** What a camera is asked for: the one at the back, sharp enough for a VIN across the picture. */
const wanted: MediaStreamConstraints = {
  audio: false,
  video: { facingMode: 'environment', width: { ideal: 1280 }, height: { ideal: 720 } },
}

/** Opens the camera; throws the browser's own exception, of which `cameraProblem` says what it means. */
export const openCamera = (): Promise<MediaStream> => navigator.mediaDevices.getUserMedia(wanted)

export const closeCamera = (stream: MediaStream): void => {
  for (const track of stream.getTracks()) track.stop()
}

/** What is known before anybody is asked: pages from an insecure address have no camera at all. */
export const cameraMissing = (page: {
  readonly isSecureContext: boolean
  readonly hasDevices: boolean
}): CameraProblem | null => {
  if (!page.isSecureContext) return 'insecure'
  return page.hasDevices ? null : 'none'
}

/**
 * What an exception of `getUserMedia` means.
 *
 * Source of the names: W3C Media Capture and Streams, section 10.3 (from memory).
 */
export const cameraProblem = (name: string): CameraProblem => {
  if (name === 'NotAllowedError' || name === 'SecurityError') return 'refused'
  if (name === 'NotFoundError' || name === 'OverconstrainedError') return 'none'
  return name === 'NotReadableError' || name === 'AbortError' ? 'in-use' : 'unknown'
}

/** The lamp of a camera, which browsers that have one tell of and the types do not know. */
type WithTorch = { readonly torch?: boolean }

const trackOf = (stream: MediaStream): MediaStreamTrack | undefined => stream.getVideoTracks()[0]

export const hasTorch = (stream: MediaStream): boolean =>
  (trackOf(stream)?.getCapabilities?.() as WithTorch | undefined)?.torch === true

/** Turns the lamp on or off; a camera that will not is left as it is. */
export const setTorch = async (stream: MediaStream, torch: boolean): Promise<void> => {
  await trackOf(stream)?.applyConstraints({ advanced: [{ torch } as MediaTrackConstraintSet] })
}
