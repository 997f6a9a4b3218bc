import { createRoot } from 'react-dom/client'
import '../../look/ground.css'
import { followLookOfDevice } from '../../lib/follow-look.ts'
import { linkSecretFrom } from '../../lib/paths.ts'
import { CustomerPage } from './customer-page.tsx'
import { ReportCheckPage } from './report-check-page.tsx'
import { languageOfDevice, Speaking, wordsIn } from './spoken.tsx'

const container = document.getElementById('root')
if (container === null) throw new Error('customer.html has no element with the id "root".')
followLookOfDevice()
const root = createRoot(container)
// Without its words in another language a page is still shown, in English.
const first = await wordsIn(languageOfDevice()).catch(() => wordsIn('en'))
const draw = () =>
  root.render(
    <Speaking first={first}>
      {window.location.pathname === '/check' ? (
        <ReportCheckPage />
      ) : (
        <CustomerPage secret={linkSecretFrom(window.location.hash)} />
      )}
    </Speaking>,
  )
// A second link opened in the same tab changes nothing but the part behind the #.
window.addEventListener('hashchange', draw)
draw()
