import { spawn } from 'node:child_process'
import type { Identity } from './identity.ts'

export type Outcome = { readonly status: number | null; readonly output: string }

/** Runs a program to its end as `identity`; collects what it prints on both channels. */
export function runProgram(
  identity: Identity,
  program: string,
  parameters: readonly string[],
): Promise<Outcome> {
  const [command = program, ...rest] = [...identity, program, ...parameters]
  return new Promise((resolve, reject) => {
    const child = spawn(command, rest, { stdio: ['ignore', 'pipe', 'pipe'], env: plainEnvironment() })
    let output = ''
    for (const channel of [child.stdout, child.stderr]) {
      channel.setEncoding('utf8').on('data', (text: string) => {
        output += text
      })
    }
    child.once('error', reject)
    child.once('close', (status) => resolve({ status, output }))
  })
}

/** PostgreSQL reads PG* variables (PGDATA, PGPORT …) meant for another server; its messages are ours to read. */
export function plainEnvironment(): NodeJS.ProcessEnv {
  const kept = Object.entries(process.env).filter(([name]) => !/^(PG|LC_|LANG$|LANGUAGE$)/.test(name))
  return { ...Object.fromEntries(kept), LC_ALL: 'C', TZ: 'UTC' }
}
