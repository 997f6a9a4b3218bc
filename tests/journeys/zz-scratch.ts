import { startBrowser } from '../support/browser.ts'
import { startService } from '../support/start-service.ts'
import { button, enroll, ines, greta, shows, signIn, heading } from './support/bay.ts'
import { violationsOn } from './support/accessible.ts'
import { customerLink, enrollmentCode, openOrder, signInAtDesk } from './support/desk.ts'
const service = await startService(null)
const browser = await startBrowser(service.address)
const shot = async (page, name, full = false) => { await page.screenshot({ path: `/tmp/jr/${name}.png`, fullPage: full }); const v = await violationsOn(page); if (v.length) console.log(name, v) }
try {
  const desk = await browser.open('desk', '/desk/sign-in')
  await shot(desk, 'd-signin')
  await signInAtDesk(desk, 'ottoline', 'brindle-falls-ottoline')
  const code = await enrollmentCode(desk)
  await shot(desk, 'd-tablets')
  for (const [p, n] of [['/desk', 'floor'], ['/desk/write-up', 'writeup'], ['/desk/refused', 'tray']]) { await desk.goto(service.address + p); await desk.getByRole('complementary', { name: 'Floor list' }).getByRole('link').first().waitFor(); await shot(desk, 'd-' + n, true) }
  const links = await desk.getByRole('complementary', { name: 'Floor list' }).getByRole('link').all()
  const hrefs = await Promise.all(links.map((l) => l.getAttribute('href')))
  for (const [i, h] of hrefs.entries()) { await desk.goto(service.address + h); await desk.locator('.order-head').waitFor(); await desk.waitForLoadState('networkidle').catch(() => 0); console.log(i, (await desk.locator('.order-head').textContent())?.slice(0, 120)); await shot(desk, `d-order-${i}`, true) }
  const bay = await browser.open('bay', '/bay/enroll')
  await enroll(bay, code)
  await button(bay, ines.name).waitFor(); await shot(bay, 'b-who')
  for (const [who, tag] of [[ines, 'i'], [greta, 'g']]) {
    if (tag === 'g') { await button(bay, /Signed in/).click() }
    await signIn(bay, who)
    await bay.goto(service.address + '/bay'); await shows(bay, 'My vehicles'); await shot(bay, `b-vehicles-${tag}`)
    const all = await Promise.all((await bay.locator('main a, a').all()).map((l) => l.getAttribute('href')))
    console.log(tag, all)
    for (const [i, h] of all.filter((x) => /order|T-/.test(x ?? '')).entries()) { await bay.goto(service.address + h); await button(bay, 'Job plan').or(heading(bay)).first().waitFor(); await bay.waitForLoadState('networkidle').catch(() => 0); console.log(tag, i, h, await heading(bay).textContent()); await shot(bay, `b-${tag}-${i}`)
      for (const b of ['Job plan', 'Findings', 'Written']) if (await button(bay, b, true).count()) { await button(bay, b, true).click(); await bay.waitForTimeout(400); await shot(bay, `b-${tag}-${i}-${b.slice(0, 3)}`); await bay.goto(service.address + h); await heading(bay).waitFor() }
    }
  }
  await openOrder(desk, 'W. Dunmore-Gray')
  const link = new URL(await customerLink(desk))
  const phone = await browser.open('customer', link.pathname + link.hash)
  await phone.getByRole('heading', { name: 'What it costs' }).waitFor()
  await shot(phone, 'c-before', true)
  console.log(browser.noise)
} finally { await browser.close(); await service.stop() }
