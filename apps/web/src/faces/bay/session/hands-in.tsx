import { useEffect, useState } from 'react'
import { waitingBoxes } from '../../../ledger/indexed-db-parcels.ts'
import { indexedDbPictures } from '../../../ledger/indexed-db-pictures.ts'
import { StatusLine } from '../../../ui/sentence.tsx'
import { handInBoxes } from './tablet-contact.ts'

const againMilliseconds = 15_000

type HandedIn = {
  readonly entries: number
  readonly photos: number
  readonly entriesLeft: number
  readonly photosLeft: number
}

/** A tablet that was put out hands in what was tapped on it, and its photos, until the server has all that it takes. */
export function HandsIn() {
  const [handedIn, setHandedIn] = useState<HandedIn>({ entries: 0, photos: 0, entriesLeft: 0, photosLeft: 0 })
  useEffect(() => {
    let isOver = false
    const handIn = async () => {
      // A photo is taken once its entry is in the record.
      const entries = await handInBoxes().catch(() => 0)
      const photos = await import('./hand-in-picture.ts')
        .then(({ handInPictures }) => handInPictures())
        .catch(() => 0)
      const [boxes, pictures] = await Promise.all([
        waitingBoxes().catch(() => []),
        indexedDbPictures.digests().catch(() => []),
      ])
      if (isOver) return
      setHandedIn((before) => ({
        entries: before.entries + entries,
        photos: before.photos + photos,
        entriesLeft: boxes.length,
        photosLeft: pictures.length,
      }))
    }
    void handIn()
    const timer = setInterval(() => void handIn(), againMilliseconds)
    return () => {
      isOver = true
      clearInterval(timer)
    }
  }, [])
  return wordsOf(handedIn).map((words) => <StatusLine key={words}>{words}</StatusLine>)
}

const wordsOf = ({ entries, photos, entriesLeft, photosLeft }: HandedIn): string[] => {
  if (entriesLeft > 0)
    return [
      `Not handed in yet: ${entriesLeft}. Keep this tablet in the shop’s network until the desk has it.`,
    ]
  return [
    ...(entries > 0 ? [`Handed in to the desk: ${entries}.`] : []),
    ...(photos > 0 ? [`Photos handed in to the desk: ${photos}.`] : []),
    ...(photosLeft > 0
      ? [`Photos that the desk did not get: ${photosLeft}. Tell the desk, or take them again.`]
      : []),
  ]
}
