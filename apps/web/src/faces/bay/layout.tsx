import { Outlet } from 'react-router'
import { ScanNotice } from '../../features/scanning/scan-notice.tsx'
import { BottomEdge } from './bottom-edge.tsx'
import './bay.css'

/** The tablet's whole screen: the route above, the bottom edge always below it. */
export function BayLayout() {
  return (
    <div className="bay">
      <div className="bay-screen">
        <Outlet />
      </div>
      <ScanNotice />
      <BottomEdge />
    </div>
  )
}
