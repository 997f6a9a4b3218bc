import type { AddressInfo } from 'node:net'
import { connect } from 'node:net'
import { type AppOptions, buildApp } from '../../apps/api/src/app.ts'
import { closeInTime, type Patience, usualPatience } from '../../apps/api/src/http/patience.ts'
import type { TestApp } from './app.ts'

/** A moment for the head of a request, one more for its body. */
export const impatient: Patience = { ...usualPatience, headMs: 300, requestMs: 600, lookEveryMs: 100 }

/** The service of a shop once more, on a port of its own, as patient with its clients as is said. */
export const listenAgain = async (
  shop: TestApp,
  patience: Patience,
  names: Partial<Pick<AppOptions, 'hosts' | 'trustProxy' | 'logger'>> = {},
): Promise<{ readonly port: number; readonly stop: (graceMs: number) => Promise<void> }> => {
  const app = await buildApp({
    parts: shop.parts,
    logger: false,
    webFolder: null,
    callsPerMinute: 100_000,
    checksEveryReply: true,
    patience,
    ...names,
  })
  await app.listen({ port: 0, host: '127.0.0.1' })
  const { port } = app.server.address() as AddressInfo
  return { port, stop: (graceMs) => closeInTime(app, graceMs) }
}

export type RawConnection = {
  /** Resolves with all that came before the connection was closed. */
  readonly closed: Promise<string>
  /** Resolves once some of a reply has arrived. */
  readonly answered: Promise<void>
  readonly end: () => void
}

/** Sends these bytes and no more. */
export const sendRaw = (port: number, text: string): RawConnection => {
  const socket = connect(port, '127.0.0.1')
  let received = ''
  socket.write(text)
  return {
    answered: new Promise((resolve) => socket.once('data', () => resolve())),
    closed: new Promise((resolve) => {
      socket.on('data', (bytes) => {
        received += bytes
      })
      socket.on('error', () => undefined)
      socket.on('close', () => resolve(received))
    }),
    end: () => socket.destroy(),
  }
}
