import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { computationsPage } from './computations/page.ts'
import { readReckoning } from './computations/read-docstrings.ts'
import { computationRooms } from './computations/rooms.ts'

/** Writes docs/computations.md from the docstrings of reckoning. */
const here = (path: string): string => fileURLToPath(new URL(`../../../../${path}`, import.meta.url))
const page = here('docs/computations.md')

const reckoning = readReckoning(here('packages/reckoning/src'), Object.keys(computationRooms))
writeFileSync(page, computationsPage(reckoning, computationRooms))
console.log(`wrote ${page}`)
