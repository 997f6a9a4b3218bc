import { get, type IncomingMessage } from 'node:http'

/** A live stream, as a screen holds one. */
export type Listener = {
  /** Resolves at the next wake-up that names the order. */
  readonly next: (orderId: string) => Promise<void>
  readonly close: () => void
}

/** Opens a live stream and waits for its first wake-up. */
export const openListener = (address: string, cookie: string): Promise<Listener> =>
  new Promise((resolve, reject) => {
    const request = get(`${address}/api/live`, { headers: { cookie }, agent: false }, (response) =>
      resolve(listenerOn(response, () => request.destroy())),
    )
    request.on('error', reject)
  })

const listenerOn = (response: IncomingMessage, close: () => void): Listener => {
  let waiting: {
    readonly orderId: string
    readonly resolve: () => void
    readonly reject: (error: Error) => void
  } | null = null
  response.setEncoding('utf8')
  response.on('data', (text: string) => {
    if (waiting === null || !text.includes(waiting.orderId)) return
    waiting.resolve()
    waiting = null
  })
  response.on('error', () => undefined)
  response.on('close', () => waiting?.reject(ended()))
  return {
    next: (orderId) =>
      new Promise((resolve, reject) => {
        if (response.destroyed) return reject(ended())
        waiting = { orderId, resolve, reject }
      }),
    close,
  }
}

const ended = () => new Error('the service ended the stream')
