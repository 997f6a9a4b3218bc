import { openPool } from '@bayledger/db/pool'
import { revokeDevice } from '../features/devices/store/revoke-device.ts'
import { onShop } from './on-shop.ts'

/**
 * `npm run device:revoke -- <name or id>`: puts a tablet out and ends every session on it, at once, also while the
 * service runs. To use the tablet again, add it at the desk.
 */
const nameOrId = process.argv.slice(2).join(' ').trim()
if (nameOrId === '') {
  console.error('Name the tablet, by its name or its id.\n\n  npm run device:revoke -- "Bay 3"')
  process.exit(2)
}

await onShop(async ({ database }) => {
  const pool = openPool({ url: database.serviceUrl, size: 1, onIdleError: () => undefined })
  const revocation = await revokeDevice(pool, nameOrId, new Date()).finally(() => pool.end())

  if (revocation.revoked)
    console.log(`${revocation.name} is out; sessions ended: ${revocation.sessionsEnded}.`)
  else {
    console.error(
      revocation.why === 'unknown'
        ? `There is no tablet ${nameOrId}, or it is out already. Nothing was changed.`
        : `Several tablets are called ${nameOrId}. Name one by its id: ${revocation.ids.join(', ')}. Nothing was changed.`,
    )
    process.exitCode = 1
  }
})
