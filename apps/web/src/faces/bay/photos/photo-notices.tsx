import { Button } from '../../../ui/button.tsx'
import { forgetPhotos } from './keep-photo.ts'
import { photoFaults, photoWords } from './photo-words.ts'
import { tellPhotoFault, usePhotoFault, usePictures } from './picture-count.ts'

/** Photos that could not be taken, or that the server did not take; each notice stays until someone has read it. */
export function PhotoNotices() {
  const fault = usePhotoFault()
  const { refused } = usePictures()
  return (
    <>
      {fault === null ? null : <Notice {...photoFaults[fault]} onRead={() => tellPhotoFault(null)} />}
      {refused.map(({ digest, problem }) => (
        <Notice key={digest} {...problem} onRead={() => forgetPhotos([{ digest }])} />
      ))}
    </>
  )
}

type NoticeProps = { title: string; detail: string; onRead: () => void }

function Notice({ title, detail, onRead }: NoticeProps) {
  return (
    <div className="refused-notice" role="alert">
      <p>
        <strong>{photoWords.notTaken}</strong> {title} {detail}
      </p>
      <Button onClick={onRead}>{photoWords.read}</Button>
    </div>
  )
}
