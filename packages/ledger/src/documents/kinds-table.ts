import { definitionOf, type Kind, kindNames, versionOf } from '../registry.ts'

/** What each kind of entry says, for people who read a ledger. */
export const meanings: Readonly<Record<Kind, string>> = {
  'order.opened': 'whose vehicle came, where, and what was promised',
  'complaint.recorded': "the customer's own words, the light as they describe it, recent events",
  'authority.given': 'consent to look, or to drive, and what looking costs',
  'sheet.chosen': 'the specification sheet, with its figures by value',
  'surroundings.recorded': 'outdoor and tire temperature, altitude, how the tires came',
  'order.assigned': 'who works on it, in which bay',
  'wait.set': 'what the order waits for, until when',
  'note.added': 'a remark',
  'stay.changed': 'whether the customer waits and what was promised, written again',
  'odometer.read': 'the odometer as the vehicle came or leaves',
  'order.moved': 'another location of the shop takes over',
  'wheel.checked': 'gauge and sensor of one wheel, on arrival or at the closing check',
  'tire.inspected': 'tire, stem and fasteners of one wheel, from outside or inside',
  'module.read': 'IDs and codes that the vehicle has stored',
  'telltale.observed': 'lamp check and behavior of the warning light, seen by us',
  'check.skipped': 'a check that the findings call for is not made, and why',
  'photo.attached': "a photo's digest; its bytes may follow",
  'photo.shared': 'the customer sees a photo on their page, or no longer sees it',
  'diagnosis.issued': 'evidence, findings and rule set; the server computes them again',
  'diagnosis.confirmed': "the technician's agreement, or another finding with a reason",
  'comeback.judged':
    'why the vehicle came back after our work, by its class; said again, the last one counts',
  'stop.told': 'the customer was told of a danger: how, and their answer',
  'contact.made': 'a call or message, reached or not',
  'estimate.issued':
    'one frozen version: its bundles, their works and cautions; lines, totals and prices in money sides',
  'estimate.shown': 'a version was put before the customer',
  'estimate.decided': 'answers bundle by bundle to one version, the consent, and what was shown',
  'refusal.recorded': 'a dangerous finding that the customer does not want repaired',
  'payment.noted':
    'money received, or under zero given back, with the reason and all that was paid by that method',
  'payment.corrected': 'a payment that was noted wrongly: the right amount and method, and why',
  'plan.issued': 'the job plan that follows from the answers',
  'figure.confirmed': "a safety figure confirmed from the maker's source by a second person",
  'part.promised': 'a part that is on its way, and when it comes',
  'part.drawn': 'a part taken and matched',
  'wheel.removed': 'a wheel came off',
  'wheel.mounted': 'a wheel is on, every fastener started by hand',
  'sensor.programmed': 'a sensor got its ID and was read back',
  'sensor.fitted': 'a sensor sits in the wheel, with its torque',
  'sealant.purged': 'a sealant’s gas was let out outdoors, four times; a second person knew',
  'sensor.broken': 'a working sensor was broken in our hands',
  'leak.checked': 'tight, or where it leaks',
  'pressure.set': 'target, how it was computed, and the pressure as left',
  'studs.torqued': 'one round of tightening: figure, wrench, clicks, what moved',
  'torque.checked': "the second person's own round",
  'relearn.done': 'how the vehicle was made to learn, and its answer',
  'drive.left': 'the odometer as the vehicle leaves for the drive',
  'drive.done': 'minutes, odometer, the light at the end',
  'step.closed': 'a step for which no other kind fits',
  'trouble.found':
    'something that is not right at a step: it parks the wheel until it is decided and put right',
  'step.set_aside': 'a step that is not done, and why',
  'report.sealed': "the sealed PDF's digest and the head it was composed from",
  'order.handed_back': 'the keys are back with the customer',
  'order.refused': 'the shop declines the job, and why',
  'order.withdrawn': 'the customer takes the order back, or it was opened twice',
  'hold.settled': 'a person has settled at what time an entry was really written',
  'entry.struck': 'an entry is withdrawn, with a reason',
}

const withdrawn = { yes: 'yes', 'second-person': 'with a second person', no: 'never' } as const

/** Every kind of entry as a Markdown table, from the registry itself. */
export const kindsTable = (): string =>
  [
    '| Kind | Says | Version | Written by | Roles | Second person | Without network | May be withdrawn | Sides |',
    '| --- | --- | --- | --- | --- | --- | --- | --- | --- |',
    ...kindNames.map((kind) => {
      const { writtenBy, roles, agreedBy, writtenWhere, strikable, sides } = definitionOf(kind)
      return `| \`${kind}\` | ${meanings[kind]} | ${versionOf(kind)} | ${writtenBy.join(', ')} | ${roles.join(', ')} | ${agreedBy.join(', ')} | ${writtenWhere === 'anywhere' ? 'yes' : 'no'} | ${withdrawn[strikable]} | ${sides.join(', ')} |`
    }),
  ].join('\n')

/** The document with its table between the two marks replaced; throws where the marks are missing. */
export const withKindsTable = (document: string): string => {
  const [head, rest] = document.split(begin)
  const tail = rest?.split(end)[1]
  if (head === undefined || tail === undefined)
    throw new Error(`docs/ledger.md has lost its marks ${begin} and ${end}; put them back around the table`)
  return `${head}${begin}\n\n${kindsTable()}\n\n${end}${tail}`
}

const begin = '<!-- kinds: begin -->'
const end = '<!-- kinds: end -->'
