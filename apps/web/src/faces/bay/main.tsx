import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { restoreHand } from '../../lib/hand.ts'
import { restoreLook } from '../../lib/look.ts'
import '../../look/ground.css'
import { finishBeforePresses } from '../../ui/after-answer.ts'
import { guardPresses } from '../../ui/guard-presses.ts'
import { listenForScanner } from '../../ui/scanner-keys.ts'
import { forgetOldWatches } from './clock/use-watch.ts'
import { restoreDrafts } from './form/draft-store.ts'
import { restoreReads } from './kept/bay-reads.ts'
import { sendPicturesLeft } from './photos/send-pictures-left.ts'
import { bayQueryClient } from './query-client.ts'
import { BayApp } from './router.tsx'

const root = document.getElementById('root')
if (root === null) throw new Error('bay.html has no element with the id "root".')
restoreLook()
restoreHand()
forgetOldWatches()
guardPresses(window)
finishBeforePresses(window)
listenForScanner(window)
// A tablet whose storage cannot be read works on without what was half filled in.
restoreDrafts().catch(() => undefined)
sendPicturesLeft().catch(() => undefined)
void restoreReads(bayQueryClient).then(() =>
  createRoot(root).render(
    <StrictMode>
      <BayApp />
    </StrictMode>,
  ),
)
