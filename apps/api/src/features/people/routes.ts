import * as contract from '@bayledger/contract/people'
import { bindCsv } from '../../http/bind-csv.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { presentPerson } from './present.ts'
import { peopleCsv } from './service/people-csv.ts'
import * as service from './service.ts'

const replyOf = (person: Parameters<typeof presentPerson>[0]) => ({
  body: presentPerson(person),
  headers: { etag: `"${person.version}"` },
})

export const peopleRoutes: readonly Binding[] = [
  bind(contract.people.list)(async ({ deps }) => ({
    status: 200,
    body: { records: (await service.listPeople(deps)).map(presentPerson) },
  })),
  bind(contract.people.create)(async ({ deps, actor, once, body }) => ({
    status: 201,
    ...replyOf(await service.createPerson(deps, actor, once, body.content)),
  })),
  bind(contract.people.read)(async ({ deps, params }) => {
    const { person, history } = await service.getPerson(deps, params.id)
    const { body, headers } = replyOf(person)
    return { status: 200, body: { record: body, history }, headers }
  }),
  bind(contract.people.put)(async ({ deps, actor, params, version, body }) => ({
    status: 200,
    ...replyOf(await service.putPerson(deps, actor, { id: params.id, version, content: body.content })),
  })),
  bind(contract.getOwnRecord)(async ({ deps, actor }) => ({
    status: 200,
    ...replyOf(await service.findPerson(deps, actor.staffId)),
  })),
  bind(contract.setPin)(async ({ deps, actor, params, version, body, from: { address } }) => ({
    status: 200,
    ...replyOf(await service.setPin(deps, actor, { ...params, version, ...body, address })),
  })),
  bind(contract.setPassword)(async ({ deps, actor, params, version, body, from: { address } }) => ({
    status: 200,
    ...replyOf(await service.setPassword(deps, actor, { ...params, version, ...body, address })),
  })),
  ...bindCsv(contract.peopleCsv, 'people.csv', peopleCsv),
]
