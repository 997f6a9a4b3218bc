import { signOut } from '@bayledger/contract/sessions'
import { deskRoles, moneyRoles } from '@bayledger/ledger/role'
import { useQuery, useQueryClient } from '@tanstack/react-query'
import { NavLink, Outlet, useLocation, useNavigate } from 'react-router'
import { refreshFloorRows } from '../../features/floor/queries.ts'
import { useLiveUpdates } from '../../features/ledger/live-updates.ts'
import { sessionQuery } from '../../features/people/queries.ts'
import { ScanNotice } from '../../features/scanning/scan-notice.tsx'
import { DeskSearch } from '../../features/search/desk-search.tsx'
import { call } from '../../lib/api-client.ts'
import { patterns, shopPath } from '../../lib/paths.ts'
import { Button } from '../../ui/button.tsx'
import { FloorList } from './floor-list.tsx'
import './layout.css'

const sheetId = 'sheet'

/** Search and what can be begun on top, the floor at the left, one sheet at the right. */
export function DeskLayout() {
  useLiveUpdates(refreshFloorRows)
  const { pathname } = useLocation()
  const shows = pathname === patterns.desk ? 'floor' : 'sheet'
  return (
    <div className="desk" data-shows={shows}>
      <a className="desk-skip" href={`#${sheetId}`}>
        Skip to the sheet
      </a>
      <header className="desk-top">
        <NavLink to={patterns.desk} end className="desk-name">
          Bayledger
        </NavLink>
        <NavLink to={patterns.desk} end className="desk-to-floor">
          Floor list
        </NavLink>
        <DeskSearch />
        <NavLink to={patterns.writeUp} className="desk-begin">
          Write up a complaint
        </NavLink>
        <NavLink to={patterns.tray}>Not accepted</NavLink>
        <NavLink to={patterns.tablets}>Add a tablet</NavLink>
        <DayLink />
        <ShopLink />
        <SignedIn />
      </header>
      <aside className="desk-floor" aria-label="Floor list">
        <FloorList />
      </aside>
      <main className="desk-sheet" id={sheetId} tabIndex={-1}>
        <Outlet />
      </main>
      <ScanNotice />
    </div>
  )
}

/** For those who take money. */
function DayLink() {
  const session = useQuery(sessionQuery)
  const roles = session.data?.staff.roles ?? []
  if (!roles.some((role) => moneyRoles.includes(role))) return null
  return <NavLink to={patterns.day}>The day</NavLink>
}

/** For whoever meets customers: they receive parts and search for a lot; owners and managers change more. */
function ShopLink() {
  const session = useQuery(sessionQuery)
  const roles = session.data?.staff.roles ?? []
  if (!roles.some((role) => deskRoles.includes(role))) return null
  return <NavLink to={shopPath()}>The shop</NavLink>
}

function SignedIn() {
  const session = useQuery(sessionQuery)
  const client = useQueryClient()
  const navigate = useNavigate()
  const leave = async () => {
    await call(signOut, {}).catch(() => undefined)
    client.clear()
    navigate(patterns.deskSignIn)
  }
  if (session.data === undefined) return null
  return (
    <span className="desk-signed-in">
      <NavLink to={patterns.ownRecord}>{session.data.staff.name}</NavLink>{' '}
      <Button onClick={() => void leave()}>Sign out</Button>
    </span>
  )
}
