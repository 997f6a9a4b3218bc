import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import '../../look/ground.css'
import { followLookOfDevice } from '../../lib/follow-look.ts'
import { watchActs } from '../../lib/person-acts.ts'
import { listenForScanner } from '../../ui/scanner-keys.ts'
import { DeskApp } from './router.tsx'

const root = document.getElementById('root')
if (root === null) throw new Error('desk.html has no element with the id "root".')
followLookOfDevice()
listenForScanner(window)
watchActs(window)
createRoot(root).render(
  <StrictMode>
    <DeskApp />
  </StrictMode>,
)
