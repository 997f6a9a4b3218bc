import { mkdirSync } from 'node:fs'
import { startBrowser } from '../support/browser.ts'
import { startService } from '../support/start-service.ts'
import { button, enroll, ines, shows, signIn } from './support/bay.ts'
import { workFigures, workThrough } from './support/bay-steps.ts'
import { customerLink, enrollmentCode, openOrder, signInAtDesk } from './support/desk.ts'

/** `npm run screenshots`: takes the README's pictures again, of the demo shop on a database of its own. */
const folder = 'docs/pictures'
mkdirSync(folder, { recursive: true })
console.log('Starting the demo shop')
const service = await startService(null, null, 'as-they-are', 'demo')
const browser = startBrowser(service.address)
try {
  console.log('Waiting for the year behind the demo')
  await service.said("The demo's year: 200 orders, loaded")
  const desk = await browser.open('desk', '/desk/sign-in')
  await signInAtDesk(desk, 'ottoline', 'brindle-falls-ottoline')
  const code = await enrollmentCode(desk)
  await openOrder(desk, 'R. Ilves-Thorn')
  await desk.getByText('Sensor sends on the wrong frequency').first().waitFor()
  await desk.screenshot({ path: `${folder}/desk.png` })

  await desk.goto('/desk/wall')
  await desk.getByText(/^T-26/).first().waitFor()
  await desk.setViewportSize({ width: 1_280, height: 720 })
  await desk.screenshot({ path: `${folder}/wall.png` })
  await desk.setViewportSize({ width: 1_280, height: 800 })
  await desk.goto('/desk')
  await openOrder(desk, 'W. Dunmore-Gray')

  const link = new URL(await customerLink(desk))
  const phone = await browser.open('customer', link.pathname + link.hash)
  await phone.getByRole('heading', { name: 'What it costs' }).waitFor()
  await phone.screenshot({ path: `${folder}/customer.png` })

  const bay = await browser.open('bay', '/bay/enroll')
  await enroll(bay, code)
  await signIn(bay, ines)
  await shows(bay, 'My vehicles')
  await bay.getByRole('link', { name: /S\. Achterberg/ }).click()
  await button(bay, 'Job plan').waitFor()
  await workThrough(bay, workFigures, /^Round at the figure/)
  await button(bay, /hold to seal/).waitFor()
  await bay.screenshot({ path: `${folder}/bay.png` })

  await button(desk, 'Sign out').click()
  await signInAtDesk(desk, 'marguerite', 'brindle-falls-marguerite')
  await desk.goto('/desk/shop/numbers')
  await desk.getByRole('table').first().waitFor()
  await desk.screenshot({ path: `${folder}/numbers.png` })

  console.log(
    `Wrote desk.png, wall.png, bay.png, customer.png and numbers.png to ${folder}; npm run screenshots:reports takes those of the reports`,
  )
} finally {
  await browser.close()
  await service.stop()
}
