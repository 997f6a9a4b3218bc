import { Outlet } from 'react-router'
import { BottomEdge } from './bottom-edge.tsx'
import './bay.css'

/** The tablet's whole screen: the route above, the bottom edge always below it. */
export function BayLayout() {
  return (
    <div className="bay">
      <div className="bay-screen">
        <Outlet />
      </div>
      <BottomEdge />
    </div>
  )
}
