import { useEffect, useState } from 'react'
import { PhotoFigures } from '../../../features/photos/photo-figures.tsx'
import type { ReadOrder } from '../../../ledger/order.ts'
import { Button } from '../../../ui/button.tsx'
import { StepScreen } from '../form/step-screen.tsx'
import { useBayClock } from '../session/signed-in.ts'
import { bayPictures } from './bay-pictures.ts'
import { photoWords } from './photo-words.ts'
import { usePictures } from './picture-count.ts'

/** All photos of the order: those that this tablet still holds, and those that the server has. */
export function PhotosScreen({ order, onBack }: { order: ReadOrder; onBack: () => void }) {
  const clock = useBayClock()
  const held = useHeldPictures(usePictures().waiting)
  return (
    <StepScreen
      title={photoWords.title}
      beside={<Button onClick={onBack}>{photoWords.back}</Button>}
      takesFocus
    >
      {order.state.photos.length === 0 ? <p>{photoWords.none}</p> : null}
      <PhotoFigures order={order} clock={clock} held={held} />
    </StepScreen>
  )
}

/** Addresses of the pictures that lie on this tablet, by digest, as long as the screen is open. */
const useHeldPictures = (waiting: readonly string[]): ReadonlyMap<string, string> => {
  const [held, setHeld] = useState<ReadonlyMap<string, string>>(new Map())
  const key = waiting.join(' ')
  useEffect(() => {
    let isOver = false
    const made: string[] = []
    const read = async () => {
      const addresses = new Map<string, string>()
      for (const digest of key === '' ? [] : key.split(' ')) {
        const picture = await bayPictures.find(digest)
        if (picture === null) continue
        const address = URL.createObjectURL(
          new Blob([new Uint8Array(picture.bytes)], { type: picture.mediaType }),
        )
        made.push(address)
        addresses.set(digest, address)
      }
      if (!isOver) setHeld(addresses)
    }
    read().catch(() => undefined)
    return () => {
      isOver = true
      for (const address of made) URL.revokeObjectURL(address)
    }
  }, [key])
  return held
}
