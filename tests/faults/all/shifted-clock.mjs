import { readFileSync, watchFile } from 'node:fs'

// Sets the clock of the process that it is loaded into by as many milliseconds as a file says, as `date -s` sets a machine's.
const { CLOCK_OFFSET_FILE: file = '' } = process.env
let offset = Number(readFileSync(file, 'utf8'))
watchFile(file, { interval: 100, persistent: false }, () => {
  offset = Number(readFileSync(file, 'utf8')) || 0
})

const Real = Date
const now = () => Real.now() + offset
globalThis.Date = class extends Real {
  constructor(...given) {
    super(...(given.length === 0 ? [now()] : given))
  }

  static now() {
    return now()
  }
}
