import { expect, it } from 'vitest'
import { oneSensorJob, workUntil } from '../../../test-support/one-sensor-job.ts'
import type { OrderPen } from '../../../test-support/order-pen.ts'
import { technician } from '../../../test-support/shop.ts'
import { openSteps } from '../../questions/gates.ts'

const openKinds = (pen: OrderPen) =>
  openSteps(pen.state())
    .filter(({ wheel }) => wheel === 'RR')
    .map(({ closedBy }) => closedBy)

it('a part that is withdrawn takes the ID that was programmed into it along', () => {
  const pen = oneSensorJob('decided')
  workUntil(
    pen,
    () => pen.state().work.RR?.programmed !== null && pen.state().work.RR?.programmed !== undefined,
  )
  expect(pen.state().work.RR?.programmed).toBeDefined()
  expect(openKinds(pen)).not.toContain('sensor.programmed')
  const drawn = pen.entries().find(({ kind }) => kind === 'part.drawn')
  pen.strike(drawn?.id ?? '', technician)
  expect(pen.state().work.RR?.programmed ?? null).toBeNull()
  expect(openKinds(pen)).toEqual(expect.arrayContaining(['part.drawn', 'sensor.programmed', 'sensor.fitted']))
})
