import type { MessageFacts, MessagesWording } from '../messages.ts'
import { telephoneWords } from '../telephone.ts'

const call = ({ telephone }: MessageFacts): string =>
  telephone === null ? 'call us' : `call us, ${telephoneWords(telephone)}`

const goodForAWeek = (of: MessageFacts): string =>
  `The link is good for a week. If it does not open any more, ${call(of)}.`

export const messages: MessagesWording = {
  subjects: {
    estimate: ({ vehicle, shop }) => `Your ${vehicle}: what we found, and what it costs (${shop})`,
    report: ({ vehicle, shop }) => `Your ${vehicle}: the report (${shop})`,
    retorque: ({ vehicle, shop }) => `Your ${vehicle}: the free check that the wheels are tight (${shop})`,
    deferred: ({ vehicle, shop }) => `Your ${vehicle}: the work that you put off (${shop})`,
    'new-time': ({ vehicle, shop }) => `Your ${vehicle}: it will be ready later (${shop})`,
  },
  usual: {
    estimate:
      'Hello {name},\n\nhere you can read what we found on your {vehicle} and what it costs, and answer: {link}',
    report: 'Hello {name},\n\nthe report of the work on your {vehicle} is sealed: {link}',
    retorque: 'Hello {name},\n\nwe had wheels of your {vehicle} off. {when}',
    deferred: 'Hello {name},\n\nyou answered “Not today” to some work on your {vehicle}:\n\n{work}',
    'new-time':
      'Hello {name},\n\nyour {vehicle} will be ready later than we said. The new time: {when}. We are sorry.',
  },
  example: {
    name: 'Jo Sample',
    vehicle: 'Linnet C',
    link: 'https://shop.example/customer#…',
    when: 'In 50 to 100 miles: come back for a free check that the wheels are tight, no appointment.',
    work: ['New sensor, right rear', 'New tire, left front'],
  },
  after: {
    estimate: (of) => `Nothing is done before you say yes. ${goodForAWeek(of)}`,
    report: (of) =>
      `Keep the report: it says what was wrong, what was done and what comes next. ${goodForAWeek(of)}`,
    retorque: (of) =>
      `If you feel a vibration or hear a knocking, stop where it is safe, do not drive on, and ${call(of)}.`,
    deferred: (of) => `To have it done, ${call(of)}. Prices may have changed since.`,
    'new-time': (of) => `If that does not suit you, ${call(of)}.`,
  },
  texts: {
    estimate: ({ shop, vehicle, link }) =>
      `${shop}: what we found on your ${vehicle}, and your answer: ${link}`,
    report: ({ shop, vehicle, link }) => `${shop}: the report of your ${vehicle}: ${link}`,
    'new-time': ({ shop, vehicle, lines }) =>
      `${shop}: your ${vehicle} will be ready later than we said. The new time: ${lines.join(' ')}.`,
  },
  under: ({ shop, stop, about }) =>
    `You get this from ${shop} because ${
      about === 'job'
        ? 'you agreed to messages about your vehicle'
        : about === 'retorque'
          ? 'we worked on your wheels'
          : 'you agreed to be reminded'
    }. To get no more of these: ${stop}`,
  wrongFigure: (vehicle) =>
    `A figure that we had on file for the ${vehicle} was wrong when we worked on it. Please bring it back to us: we will check it against the vehicle maker’s figure at no charge. If you notice anything unusual, do not drive on; call us.`,
  stop: {
    title: 'End messages',
    ask: {
      job: (shop) => `${shop} will send you no more messages about the work on your vehicle.`,
      retorque: (shop) => `${shop} will no longer remind you of the check that the wheels are tight.`,
      deferred: (shop) => `${shop} will no longer remind you of work that you put off.`,
    },
    button: 'End these messages',
    done: {
      job: (shop) => `Done. ${shop} sends you no more messages about the work on your vehicle.`,
      retorque: (shop) => `Done. ${shop} no longer reminds you of the check that the wheels are tight.`,
      deferred: (shop) => `Done. ${shop} no longer reminds you of work that you put off.`,
    },
    unknown: 'This link is not whole. Open it again from the message, or call the shop.',
  },
}
