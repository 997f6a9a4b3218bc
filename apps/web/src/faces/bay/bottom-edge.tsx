import { useSyncExternalStore } from 'react'
import { Link, useLocation } from 'react-router'
import { useLook } from '../../lib/look.ts'
import { patterns } from '../../lib/paths.ts'
import { Button } from '../../ui/button.tsx'
import { photoWords } from './photos/photo-words.ts'
import { usePictures } from './photos/picture-count.ts'
import { useOutbox } from './record/bay-outbox.ts'
import { UndoButton } from './record/undo-button.tsx'
import { askForPerson, useDoor } from './session/lock-store.ts'
import { useSignedIn } from './session/signed-in.ts'
import { isKeptWhole, onServed } from './shell/program.ts'

/** What every bay screen needs within reach, along the bottom. */
export function BottomEdge() {
  const [look, setLook] = useLook()
  const door = useDoor()
  const person = useSignedIn()
  const unsent = useOutbox((content) => content.unsent)
  const stuck = useOutbox((content) => content.stuck)
  const pictures = usePictures()
  const photosLeft = pictures.waiting.length
  const isAllSent = unsent === 0 && pictures.isRead && photosLeft === 0
  const isWhole = useSyncExternalStore(onServed, isKeptWhole)
  const { pathname } = useLocation()
  const other = look === 'dark-bay' ? 'bright-apron' : 'dark-bay'
  const isOpen = door === 'open' && person !== null
  return (
    <footer className="bay-edge">
      {isOpen && pathname !== patterns.bay ? (
        <Link to={patterns.bay} className="button button-plain bay-back">
          My vehicles
        </Link>
      ) : null}
      {isOpen ? <UndoButton /> : null}
      {/* Read out only where it stays unsent: what goes within a moment is no news. */}
      <span className="bay-unsent" role={stuck > 0 ? 'status' : undefined}>
        {unsent
          ? `Not yet sent: ${unsent}`
          : isOpen && !isWhole
            ? 'Still loading: stay in Wi-Fi'
            : isAllSent
              ? 'All sent'
              : null}
      </span>
      {photosLeft > 0 ? (
        <span className="bay-unsent" role="status">
          {photoWords.notSent(photosLeft)}
        </span>
      ) : null}
      <span className="bay-edge-end">
        {isOpen ? (
          <Button onClick={askForPerson} aria-label={`Signed in: ${person.name}. Change person`}>
            {person.name}
          </Button>
        ) : null}
        <Button onClick={() => setLook(other)}>
          {other === 'bright-apron' ? 'Bright look' : 'Dark look'}
        </Button>
      </span>
    </footer>
  )
}
