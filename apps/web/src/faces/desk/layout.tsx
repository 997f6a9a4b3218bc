import { NavLink, Outlet } from 'react-router'
import { DeskSearch } from '../../features/search/desk-search.tsx'
import { patterns } from '../../lib/paths.ts'
import './desk.css'

/** Search and what can be begun on top, the floor at the left, one sheet at the right. */
export function DeskLayout() {
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
      </header>
      <aside className="desk-floor" aria-label="Floor list">
        <h2>On the floor</h2>
      </aside>
      <main className="desk-sheet">
        <Outlet />
      </main>
    </div>
  )
}
