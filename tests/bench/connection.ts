import { connect, type Socket } from 'node:net'

export type Reply = { readonly status: number; readonly body: string }

/** One keep-alive connection to the service, as a browser holds one: a request at a time. */
export type Connection = {
  readonly call: (method: 'GET' | 'POST', path: string, body?: object) => Promise<Reply>
  readonly close: () => void
}

type Waiting = { readonly resolve: (reply: Reply) => void; readonly reject: (error: Error) => void }

/**
 * Opens a connection that speaks just enough HTTP/1.1: the clients run on the machine that is measured, and whatever
 * they cost is missing from the service. `cookie` goes with every request. A status of 400 or more rejects. The
 * service answers 408 to a connection that says nothing for long and closes it: the next call connects again, as a
 * browser does.
 */
export const openConnection = async (address: string, cookie = ''): Promise<Connection> => {
  const { hostname, port, host } = new URL(address)
  let received: Buffer = Buffer.alloc(0)
  let waiting: Waiting | null = null
  const open = async () => {
    const socket = await connected(hostname, Number(port))
    received = Buffer.alloc(0)
    socket.on('data', (chunk: Buffer) => {
      received = received.length === 0 ? chunk : Buffer.concat([received, chunk])
      const reply = replyIn(received)
      if (!reply || !waiting) return
      const { resolve } = waiting
      waiting = null
      received = Buffer.alloc(0)
      resolve(reply)
    })
    socket.on('close', () => waiting?.reject(new Error('the service closed the connection')))
    return socket
  }
  let socket = await open()
  const head = `host: ${host}\r\nsec-fetch-site: same-origin\r\n${cookie === '' ? '' : `cookie: ${cookie}\r\n`}`
  return {
    call: async (method, path, body) => {
      const text = body === undefined ? '' : JSON.stringify(body)
      const type =
        text === '' ? '' : `content-type: application/json\r\ncontent-length: ${Buffer.byteLength(text)}\r\n`
      if (!socket.writable) socket = await open()
      const reply = await new Promise<Reply>((resolve, reject) => {
        waiting = { resolve, reject }
        socket.write(`${method} ${path} HTTP/1.1\r\n${head}${type}\r\n${text}`)
      })
      if (reply.status >= 400) throw new Error(`${method} ${path} answered ${reply.status}: ${reply.body}`)
      return reply
    },
    close: () => socket.destroy(),
  }
}

const connected = (host: string, port: number): Promise<Socket> =>
  new Promise((resolve, reject) => {
    const socket = connect({ host, port, noDelay: true }, () => resolve(socket))
    socket.once('error', reject)
  })

/** The reply in these bytes once all of it is there; the service names every length. Only what is needed is read. */
const replyIn = (bytes: Buffer): Reply | null => {
  const end = bytes.indexOf('\r\n\r\n')
  if (end < 0) return null
  const head = bytes.toString('latin1', 0, end)
  const length = Number(/\r\ncontent-length: (\d+)/i.exec(head)?.[1] ?? 0)
  if (bytes.length < end + 4 + length) return null
  return {
    status: Number(head.slice(9, 12)),
    body: bytes.toString('utf8', end + 4, end + 4 + length),
  }
}
