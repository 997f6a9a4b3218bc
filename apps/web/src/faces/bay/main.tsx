import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { ignoreGhostTaps } from '../../lib/ghost-taps.ts'
import { restoreLook } from '../../lib/look.ts'
import '../../look/ground.css'
import { BayApp } from './router.tsx'

const root = document.getElementById('root')
if (root === null) throw new Error('bay.html has no element with the id "root".')
restoreLook()
ignoreGhostTaps(document.body)
createRoot(root).render(
  <StrictMode>
    <BayApp />
  </StrictMode>,
)
