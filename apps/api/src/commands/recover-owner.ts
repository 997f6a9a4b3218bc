import { randomBytes } from 'node:crypto'
import { openPool } from '@bayledger/db/pool'
import { firstPasswordUntil } from '../features/sessions/service/first-password.ts'
import { hashPassword } from '../features/sessions/service/hash-password.ts'
import { recoverOwner } from '../features/sessions/store/recover-owner.ts'
import { onShop } from './on-shop.ts'

/**
 * `npm run owner:recover -- <sign-in name>`: gives an owner who cannot get in any more a new password, which is shown here and
 * nowhere else, at once, also while the service runs. `--shop "<name>"` first, where several shops of the database have somebody of
 * that name.
 */
const given = process.argv.slice(2)
const shopName = given[0] === '--shop' ? (given[1] ?? '') : null
const [signInName = '', ...rest] = shopName === null ? given : given.slice(2)

if (signInName === '' || rest.length > 0) {
  console.error('Name one owner by their sign-in name.\n\n  npm run owner:recover -- marguerite')
  process.exit(2)
}

const password = randomBytes(12).toString('base64url')
const at = new Date()
const passwordHash = await hashPassword(password)
await onShop(async ({ database }) => {
  const pool = openPool({ url: database.serviceUrl, size: 1, onIdleError: () => undefined })
  const recovery = await recoverOwner(pool, {
    signInName,
    shopName,
    passwordHash,
    firstPasswordUntil: firstPasswordUntil(at),
    at,
  }).finally(() => pool.end())

  if (recovery.recovered) {
    console.log(`${recovery.name} signs in with the password ${password}`)
    console.log(
      `It is shown only now, and good for seven days; the desk asks for one of their own at the sign-in. Their code at sign-in and their passkeys are removed; sessions ended: ${recovery.sessionsEnded}.`,
    )
  } else {
    const words = {
      unknown: `Nobody signs in as ${signInName}${shopName === null ? '' : ` at ${shopName}`}.`,
      'in-several-shops': `Several shops have somebody who signs in as ${signInName}. Say which: npm run owner:recover -- --shop "Corner Tire" ${signInName}`,
      'no-owner': `${signInName} is no owner, or has left. An owner sets their password at the desk.`,
    } as const
    console.error(`${words[recovery.why]} Nothing was changed.`)
    process.exitCode = 1
  }
})
