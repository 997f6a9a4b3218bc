import type { Role } from '@bayledger/ledger/role'
import { demoId } from './seeded.ts'

/** One of the shop's people. Password and PIN are for the demo only and are stored hashed, like any other. */
export type DemoPerson = {
  readonly id: string
  readonly name: string
  readonly signInName: string
  readonly roles: readonly Role[]
  readonly password: string
  readonly pin: string
}

const person = (name: string, signInName: string, roles: readonly Role[], pin: string): DemoPerson => ({
  id: demoId(`staff/${signInName}`),
  name,
  signInName,
  roles,
  password: `brindle-falls-${signInName}`,
  pin,
})

/** Everyone who works at Tamber Street; all invented. */
export const people = {
  ottoline: person('Ottoline Pask', 'ottoline', ['advisor'], '402817'),
  devin: person('Devin Marrow', 'devin', ['advisor'], '739164'),
  rufus: person('Rufus Kettleby', 'rufus', ['technician'], '518296'),
  ines: person('Ines Halloran-Voss', 'ines', ['technician'], '264903'),
  bo: person('Bo Tamsin', 'bo', ['technician'], '981375'),
  greta: person('Greta Lund-Sorrel', 'greta', ['lead'], '357048'),
  marguerite: person('Marguerite Ashby-Bell', 'marguerite', ['owner'], '620591'),
} as const

export type PersonKey = keyof typeof people
