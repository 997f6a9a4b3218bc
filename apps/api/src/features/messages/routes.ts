import * as contract from '@bayledger/contract/messages'
import type { Parts } from '../../deps.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { getNewTime, sendNewTime } from './service/new-time.ts'
import * as service from './service.ts'

export const messageRoutes = (parts: Parts): readonly Binding[] => [
  bind(contract.listMessages)(async ({ deps, params }) => ({
    status: 200,
    body: await service.listMessages(deps, params.orderId),
  })),
  bind(contract.sendMessage)(async ({ deps, actor, params, body }) => ({
    status: 201,
    body: await service.sendMessage(deps, actor, params.orderId, body),
  })),
  bind(contract.getNewTime)(async ({ deps, params }) => ({
    status: 200,
    body: { later: await getNewTime(deps, params.orderId) },
  })),
  bind(contract.sendNewTime)(async ({ deps, actor, params, body }) => ({
    status: 201,
    body: await sendNewTime(deps, actor, params.orderId, body),
  })),
  bind(contract.withdrawMessage)(async ({ deps, params }) => {
    await service.withdrawMessage(deps, params.orderId, params.messageId)
    return { status: 204 }
  }),
  bind(contract.listMessageChoices)(async ({ deps, params }) => ({
    status: 200,
    body: { choices: await service.listChoices(deps, params.customerId) },
  })),
  bind(contract.putMessageChoice)(async ({ deps, actor, params, body }) => {
    await service.putChoice(deps, actor, params.customerId, body)
    return { status: 204 }
  }),
  bind(contract.askUnsubscribe)(async ({ params }) => service.stopMessages(parts, params.token, 'ask')),
  bind(contract.unsubscribe)(async ({ params }) => service.stopMessages(parts, params.token, 'end')),
]
