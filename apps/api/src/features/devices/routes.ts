import * as contract from '@bayledger/contract/devices'
import type { Parts } from '../../deps.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { enrolledSeconds } from './policy.ts'
import { presentDevice } from './present.ts'
import * as service from './service.ts'

export const deviceRoutes = (parts: Parts): Binding[] => [
  bind(contract.createEnrollmentCode)(async ({ deps, actor, body }) => ({
    status: 201,
    body: await service.createEnrollmentCode(deps, actor, body),
  })),
  bind(contract.enrollDevice)(async ({ body }) => {
    const { token, deviceId, name, location } = await service.enrollDevice(parts, body)
    return {
      status: 201,
      body: presentDevice(deviceId, name, location),
      cookies: [{ name: 'device', token, seconds: enrolledSeconds }],
    }
  }),
  bind(contract.getDevice)(async ({ deps, actor }) => {
    const device = await service.getDevice(deps, actor)
    return { status: 200, body: presentDevice(device.id, device.name, device.location) }
  }),
]
