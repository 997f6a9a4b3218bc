import { openPool } from '@bayledger/db/pool'
import { roles as allRoles, type Role } from '@bayledger/ledger/role'
import { changeRoles } from '../features/staff/store/change-roles.ts'
import { onShop } from './on-shop.ts'

/**
 * `npm run staff:roles -- <sign-in name> <roles…>`: gives a person these roles and no others, at once, also while the
 * service runs. `--shop "<name>"` first, where several shops of the database have somebody of that name.
 */
const given = process.argv.slice(2)
const shopName = given[0] === '--shop' ? (given[1] ?? '') : null
const [signInName = '', ...wanted] = shopName === null ? given : given.slice(2)
const unknown = wanted.filter((word) => !allRoles.includes(word as Role))

if (signInName === '' || wanted.length === 0 || unknown.length > 0) {
  console.error(
    `${unknown.length > 0 ? `There is no role ${unknown.join(', ')}.` : 'Name a person and the roles they have from now on.'} Roles are ${allRoles.join(', ')}.\n\n  npm run staff:roles -- greta lead technician`,
  )
  process.exit(2)
}

await onShop(async ({ database }) => {
  const pool = openPool({ url: database.serviceUrl, size: 1, onIdleError: () => undefined })
  const roles = allRoles.filter((role) => wanted.includes(role))
  const change = await changeRoles(pool, { signInName, shopName, roles }).finally(() => pool.end())

  if (change.changed)
    console.log(`${change.name}: ${roles.join(', ')} (before: ${change.before.join(', ')}).`)
  else {
    const words = {
      unknown: `Nobody signs in as ${signInName}${shopName === null ? '' : ` at ${shopName}`}.`,
      'in-several-shops': `Several shops have somebody who signs in as ${signInName}. Say which: npm run staff:roles -- --shop "Corner Tire" ${signInName} ${roles.join(' ')}`,
      'last-owner': 'This is the only owner of the shop. Make somebody else an owner first.',
    } as const
    console.error(`${words[change.why]} Nothing was changed.`)
    process.exitCode = 1
  }
})
