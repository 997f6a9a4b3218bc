import { readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import type { Figure } from './table.ts'

const built = join(import.meta.dirname, '../../apps/web/dist')

/** Budgets of the scripts that a face loads before it shows anything, compressed, in KiB; docs/testing.md. */
const budgets = { bay: 170, customer: 40, desk: 200 } as const

/** What each built face makes a browser load first: its entry and all that it imports outright. */
export const scriptSizes = (): Figure[] =>
  Object.entries(budgets).map(([face, goal]) => {
    const page = readFileSync(join(built, `${face}.html`), 'utf8')
    const scripts = [...page.matchAll(/(?:src|href)="\/(assets\/[^"]+\.js)"/g)].map(([, path]) => path ?? '')
    const bytes = scripts.reduce((sum, path) => sum + statSync(join(built, `${path}.br`)).size, 0)
    return { name: `${face}.script.KiB`, value: bytes / 1024, unit: 'KiB', goal }
  })
