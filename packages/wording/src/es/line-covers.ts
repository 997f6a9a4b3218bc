import type { LineCoversWording } from '../line-covers.ts'

const not = 'Nuestra garantía no cubre esto'

export const lineCovers: LineCoversWording = {
  covered: ({ term, order, price, until, miles }) =>
    `Lo cubre nuestra garantía: $0.00 (costaría ${price}). ${term === 'sensor' ? 'Pusimos este sensor' : 'Hicimos este trabajo'} en la orden ${order}. La garantía vale hasta el ${until}${miles === null ? '' : ` o hasta ${miles} millas`}.`,
  charged: {
    'new-damage': () => `${not}: es un daño nuevo.`,
    'days-over': ({ until }) => `${not}: terminó el ${until}.`,
    'miles-over': ({ miles }) => `${not}: terminó a las ${miles} millas.`,
    'another-wheel': () => `${not}: antes no trabajamos en esta rueda.`,
    'part-not-ours': () => `${not}: nosotros no pusimos esta pieza.`,
    'work-not-ours': () => `${not}: antes no hicimos este trabajo.`,
    'wear-part': () => `${not}: una llanta se gasta con el uso.`,
  },
  waived: (price, why) => `Esto no se le cobra: $0.00 (costaría ${price}). La razón: ${why}`,
  refused: (why) => `${not}. La razón: ${why}`,
  part: (price) => `Nuestra garantía cubre ${price} de esto, antes del impuesto.`,
  day: (day) =>
    new Intl.DateTimeFormat('es-US', {
      ...{ timeZone: 'UTC', year: 'numeric', month: 'long', day: 'numeric' },
    }).format(new Date(`${day}T00:00:00.000Z`)),
  count: (miles) => miles.toLocaleString('es-US'),
}
