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
    const { token, device } = await service.enrollDevice(parts, body)
    return {
      status: 201,
      body: presentDevice(device, parts.sealing.publicKey, parts.clock.now()),
      cookies: [{ name: 'device', token, seconds: enrolledSeconds }],
    }
  }),
  bind(contract.getDevice)(async ({ deps, actor }) => {
    const device = await service.getDevice(deps, actor.deviceId)
    return { status: 200, body: presentDevice(device, deps.sealing.publicKey, deps.clock.now()) }
  }),
  bind(contract.tellUnsent)(async ({ deps, actor, body }) => {
    await service.tellUnsent(deps, actor.deviceId, body)
    return { status: 204 }
  }),
  bind(contract.registerDeviceKey)(async ({ deps, actor, body }) => {
    const device = await service.registerKey(deps, actor.deviceId, body.publicKey)
    return { status: 200, body: presentDevice(device, deps.sealing.publicKey, deps.clock.now()) }
  }),
]
