import { Link, useLocation } from 'react-router'
import { useLook } from '../../lib/look.ts'
import { patterns } from '../../lib/paths.ts'
import { Button } from '../../ui/button.tsx'
import { UndoButton } from './record/undo-button.tsx'
import { askForPerson, useDoor } from './session/lock-store.ts'
import { useSignedIn } from './session/signed-in.ts'

/** What every bay screen needs within reach, along the bottom. */
export function BottomEdge() {
  const [look, setLook] = useLook()
  const door = useDoor()
  const person = useSignedIn()
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
