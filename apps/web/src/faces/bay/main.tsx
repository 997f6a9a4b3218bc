import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { restoreLook } from '../../lib/look.ts'
import '../../look/ground.css'
import { guardPresses } from '../../ui/guard-presses.ts'
import { forgetOldWatches } from './clock/use-watch.ts'
import { restoreDrafts } from './form/draft-store.ts'
import { BayApp } from './router.tsx'

const root = document.getElementById('root')
if (root === null) throw new Error('bay.html has no element with the id "root".')
restoreLook()
forgetOldWatches()
guardPresses(window)
// A tablet whose storage cannot be read works on without what was half filled in.
restoreDrafts().catch(() => undefined)
createRoot(root).render(
  <StrictMode>
    <BayApp />
  </StrictMode>,
)
