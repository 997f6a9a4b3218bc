import fastify, { type FastifyBaseLogger, LogController } from 'fastify'
import pino from 'pino'
import { describe, expect, it } from 'vitest'
import { AppError } from '../core/app-error.ts'
import { handleErrors } from './error-handler.ts'

/** The lines that a request leaves in the log, as its reader gets them. */
const logged = async (fails: () => never, level: string): Promise<Record<string, unknown>[]> => {
  let text = ''
  const loggerInstance: FastifyBaseLogger = pino(
    { level },
    {
      write: (line: string) => {
        text += line
      },
    },
  )
  const app = fastify({
    loggerInstance,
    logController: new LogController({ disableRequestLogging: true }),
  })
  handleErrors(
    app,
    () => undefined,
    () => undefined,
  )
  app.get('/one', fails)
  await app.inject({ url: '/one?name=Dorothea', headers: { cookie: 'bayledger-desk=canary' } })
  await app.close()
  return text
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line))
}

describe('the log', () => {
  it('has what was refused to somebody who may not, at the level that is usual', async () => {
    const lines = await logged(() => {
      throw new AppError({ code: 'ACCESS_REFUSED', needs: 'desk' })
    }, 'warn')
    expect(lines).toEqual([
      expect.objectContaining({
        level: 40,
        msg: 'refused',
        code: 'ACCESS_REFUSED',
        method: 'GET',
        route: '/one',
      }),
    ])
    expect(lines[0]?.time).toBeTypeOf('number')
    expect(lines[0]?.reqId).toBeTypeOf('string')
  })

  it('has a slip of the hand only where somebody wants it', async () => {
    const slip = () => {
      throw new AppError({ code: 'ORDER_NOT_FOUND' })
    }
    expect(await logged(slip, 'warn')).toEqual([])
    expect(await logged(slip, 'info')).toHaveLength(1)
  })

  it('has a fault in full, in one line that no text can split or forge, without query and cookie', async () => {
    const lines = await logged(() => {
      throw new Error('broken\r\n{"level":60,"msg":"all is well"}')
    }, 'warn')
    expect(lines).toHaveLength(1)
    expect(lines[0]).toMatchObject({ level: 50, msg: 'failed' })
    expect(JSON.stringify(lines)).not.toMatch(/canary|Dorothea/)
  })
})
