import { openPool } from '@bayledger/db/pool'
import { setOfflineHours } from '../features/devices/store/offline-hours.ts'
import { onShop } from './on-shop.ts'

/**
 * `npm run device:hours -- <hours>`: for how many hours a tablet that does not reach the server opens what it keeps.
 * `--shop "<name>"` first, where the database holds several shops. Each tablet hears it at its next contact.
 */
const given = process.argv.slice(2)
const shopName = given[0] === '--shop' ? (given[1] ?? '') : null
const [typed = ''] = shopName === null ? given : given.slice(2)
const hours = /^\d{1,3}$/.test(typed) ? Number(typed) : 0

if (hours < 1 || hours > 720) {
  console.error(`"${typed}" is no number of hours from 1 to 720 (30 days).\n\n  npm run device:hours -- 72`)
  process.exit(2)
}

await onShop(async ({ database }) => {
  const pool = openPool({ url: database.serviceUrl, size: 1, onIdleError: () => undefined })
  const names = await setOfflineHours(pool, hours, shopName).finally(() => pool.end())

  if (names.length === 1)
    console.log(
      `${names[0]}: a tablet that does not reach the server opens what it keeps for ${hours} hours.`,
    )
  else {
    console.error(
      names.length === 0
        ? `There is no shop ${shopName ?? ''} here. Nothing was changed.`
        : `There are several shops: ${names.join(', ')}. Say which: npm run device:hours -- --shop "${names[0]}" ${hours}. Nothing was changed.`,
    )
    process.exitCode = 1
  }
})
