import { useLook } from '../../lib/look.ts'
import { Button } from '../../ui/button.tsx'

/** What every bay screen needs within reach, along the bottom. */
export function BottomEdge() {
  const [look, setLook] = useLook()
  const other = look === 'dark-bay' ? 'bright-apron' : 'dark-bay'
  return (
    <footer className="bay-edge">
      <Button onClick={() => setLook(other)}>{other === 'bright-apron' ? 'Bright look' : 'Dark look'}</Button>
    </footer>
  )
}
