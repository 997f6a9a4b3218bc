import type { ReportPageOneWording } from '../../report/page-one.ts'

export const reportPageOne: ReportPageOneWording = {
  facts: {
    order: 'Orden',
    report: 'Informe',
    date: 'Fecha',
    vehicle: 'Vehículo',
    plate: 'Placa',
    vin: 'VIN, últimos 6',
    odometer: {
      came: 'Odómetro al llegar',
      drove: 'Odómetro tras nuestro manejo',
      left: 'Odómetro al salir',
    },
    readTwice: (label) => `${label} (poco probable, leído dos veces)`,
    notReadAgain: 'no se leyó otra vez',
  },
  call: (telephone) => `Llame al ${telephone}`,
  signatures: { customer: 'Cliente', shop: 'Por el taller' },
  signing: 'Firmar dice que usted recibió este informe, y nada más.',
  check: (address) =>
    `El código abre ${address}: elija ahí este PDF para ver si es nuestro y sin cambios. Una copia en papel no se puede comprobar.`,
  titles: {
    canDrive: '¿Puedo manejarlo?',
    told: 'Lo que usted nos contó',
    found: 'Lo que encontramos',
    did: 'Lo que hicimos',
    notDone: 'A lo que contestó “No” u “Hoy no”',
    fixed: '¿Está arreglado?',
    next: 'Lo que sigue',
    genuine: '¿Es auténtico este informe?',
  },
  nothingRefused: 'Usted no rechazó nada.',
  quoted: (words) => `“${words}”`,
  further: 'completo más adelante',
  more: (count) => `y ${count} más, adelante`,
  codeAlt: (address) => `Código QR de la dirección ${address}, donde se puede comprobar este archivo.`,
}
