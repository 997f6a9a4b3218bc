import { signOut } from '@bayledger/contract/sessions'
import { useQuery, useQueryClient } from '@tanstack/react-query'
import { NavLink, Outlet, useNavigate } from 'react-router'
import { refreshFloorRows } from '../../features/floor/queries.ts'
import { useLiveUpdates } from '../../features/ledger/live-updates.ts'
import { sessionQuery } from '../../features/people/queries.ts'
import { DeskSearch } from '../../features/search/desk-search.tsx'
import { call } from '../../lib/api-client.ts'
import { patterns } from '../../lib/paths.ts'
import { Button } from '../../ui/button.tsx'
import { FloorList } from './floor-list.tsx'
import './layout.css'

/** Search and what can be begun on top, the floor at the left, one sheet at the right. */
export function DeskLayout() {
  useLiveUpdates(refreshFloorRows)
  return (
    <div className="desk">
      <header className="desk-top">
        <NavLink to={patterns.desk} end className="desk-name">
          Bayledger
        </NavLink>
        <DeskSearch />
        <NavLink to={patterns.writeUp} className="desk-begin">
          Write up a complaint
        </NavLink>
        <NavLink to={patterns.tray}>Refused entries</NavLink>
        <NavLink to={patterns.tablets}>Add a tablet</NavLink>
        <SignedIn />
      </header>
      <aside className="desk-floor" aria-label="Floor list">
        <FloorList />
      </aside>
      <main className="desk-sheet">
        <Outlet />
      </main>
    </div>
  )
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
      {session.data.staff.name} <Button onClick={() => void leave()}>Sign out</Button>
    </span>
  )
}
