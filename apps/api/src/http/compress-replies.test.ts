import { describe, expect, it } from 'vitest'
import { takesGzip } from './compress-replies.ts'

describe('a caller takes gzip', () => {
  it.each(['gzip', 'gzip, deflate, br', 'br;q=1.0, GZIP ;q=0.8', 'deflate,gzip;q=0.001'])(
    'who says “%s”',
    (accepted) => expect(takesGzip(accepted)).toBe(true),
  )
  it.each([undefined, '', 'identity', 'br', 'gzip;q=0', 'gzip; q=0.000, br', 'x-gzip'])(
    'not who says “%s”',
    (accepted) => expect(takesGzip(accepted)).toBe(false),
  )
})
