import { useQuery } from '@tanstack/react-query'
import { NavLink, useNavigate, useParams } from 'react-router'
import { sessionQuery } from '../../../features/people/queries.ts'
import { shopPath } from '../../../lib/paths.ts'
import { StatusLine } from '../../../ui/sentence.tsx'
import type { ShopPage } from './shop-page.ts'
import { shopPages } from './shop-pages.ts'
import './shop.css'

/** What the shop knows about itself: its pages at the left, each with what needs doing, and the open one beside them. */
export function ShopRoute() {
  const { page: path, recordId } = useParams()
  const navigate = useNavigate()
  const session = useQuery(sessionQuery)
  if (session.data === undefined) return <StatusLine>Reading who is signed in.</StatusLine>
  const { roles } = session.data.staff
  const pages = shopPages.filter((page) => page.roles.some((role) => roles.includes(role)))
  const page = path === undefined ? pages[0] : pages.find((one) => one.path === path)
  return (
    <div className="shop">
      <nav className="shop-list" aria-label="The shop’s pages">
        <ul>
          {pages.map((one) => (
            <li key={one.path}>
              <ShopLine page={one} isOpen={one === page} />
            </li>
          ))}
        </ul>
      </nav>
      <div className="shop-page">
        {page === undefined ? (
          <p>This page is not open to you. An owner or a manager opens it.</p>
        ) : (
          <>
            <title>{`${page.name} · Bayledger desk`}</title>
            <h1>{page.name}</h1>
            <page.Page
              key={page.path}
              open={recordId ?? null}
              onOpen={(id) => void navigate(shopPath(page.path, id))}
            />
          </>
        )}
      </div>
    </div>
  )
}

function ShopLine({ page, isOpen }: { page: ShopPage; isOpen: boolean }) {
  const needs = page.useNeeds()
  return (
    <NavLink to={shopPath(page.path)} aria-current={isOpen ? 'page' : undefined}>
      <span className="shop-line-name">{page.name}</span>
      {needs === null ? null : <span className="shop-line-needs">{needs}</span>}
    </NavLink>
  )
}
