import { Outlet } from 'react-router'
import { useLiveUpdates } from '../../features/ledger/live-updates.ts'
import { BottomEdge } from './bottom-edge.tsx'
import { BayDoor } from './session/bay-door.tsx'
import './bay.css'

/** The tablet's whole screen: the door, the route behind it, the bottom edge always below. */
export function BayLayout() {
  useLiveUpdates()
  return (
    <div className="bay">
      <div className="bay-screen">
        <BayDoor>
          <Outlet />
        </BayDoor>
      </div>
      <BottomEdge />
    </div>
  )
}
