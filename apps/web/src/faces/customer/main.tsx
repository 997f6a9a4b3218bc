import { createRoot } from 'react-dom/client'
import '../../look/ground.css'
import { linkSecretFrom } from '../../lib/paths.ts'
import { CustomerPage } from './customer-page.tsx'
import { ReportCheckPage } from './report-check-page.tsx'

const container = document.getElementById('root')
if (container === null) throw new Error('customer.html has no element with the id "root".')
const root = createRoot(container)
const draw = () =>
  root.render(
    window.location.pathname === '/check' ? (
      <ReportCheckPage />
    ) : (
      <CustomerPage secret={linkSecretFrom(window.location.hash)} />
    ),
  )
// A second link opened in the same tab changes nothing but the part behind the #.
window.addEventListener('hashchange', draw)
draw()
