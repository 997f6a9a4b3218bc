import type { CustomerCautionsWording } from '../customer-cautions.ts'

/** Plain words of our own, each sentence of 28 words or fewer; the vehicle maker's manual governs. */
export const customerCautions: CustomerCautionsWording = {
  'CT-01': {
    1: 'Hasta que esto se repare, su vehículo no le avisará si una llanta está baja. Revise a mano la presión de todas las llantas cada semana.',
    2: 'Hasta que esto se repare, su auto no le avisará si una llanta está baja. Mida con un medidor el aire de todas las llantas cada semana.',
  },
  'CT-02': {
    1: 'Esta rueda no tendrá sensor. La luz de advertencia se queda encendida, y su vehículo no puede avisarle si esa llanta está baja.',
  },
  'CT-03': {
    1: 'Las llantas gastadas o viejas agarran mal con lluvia y pueden fallar sin aviso. Maneje más despacio en pavimento mojado y haga que se las cambien pronto.',
  },
  'CT-04': {
    1: 'Esta llanta puede fallar de repente. Por favor, no maneje con ella. Si lo hace, lo hace en contra de nuestro consejo.',
  },
  'CT-05': {
    1: 'Los otros sensores son tan viejos como el que falló. Sus baterías pueden acabarse pronto, y cada una significa otra visita.',
  },
  'CT-06': {
    1: 'Las tuercas o pernos pueden asentarse después de quitar una rueda. Regrese después de 50 a 100 millas, o según indique el fabricante; la revisión es gratis.',
    2: 'Después de quitar una rueda, las tuercas o los pernos pueden asentarse y aflojarse. Regrese después de 50 a 100 millas, o según indique el fabricante; la revisión es gratis.',
  },
  'CT-07': {
    1: 'La reparación todavía no está comprobada. Maneje 20 minutos a una velocidad normal de manejo. Si la luz se enciende, llámenos antes del próximo viaje.',
    2: 'Maneje 20 minutos a una velocidad normal de manejo, para comprobar que la reparación funciona. Si la luz se enciende, llámenos antes del próximo viaje.',
  },
  'CT-08': {
    1: 'El sellador en lata solo sirve para llegar a casa. Su gas puede arder, el sellador puede dañar el sensor, y la llanta todavía necesita una reparación por dentro.',
    2: 'El sellador en lata solo ayuda a llegar a casa. Su gas puede arder, el sellador puede arruinar el sensor, y la llanta todavía necesita una reparación por dentro.',
    3: 'El sellador en lata solo ayuda a llegar a casa. Su gas es inflamable, el sellador puede arruinar el sensor, y la llanta todavía necesita una reparación por dentro.',
  },
  'CT-09': {
    1: 'Estas ruedas no son las originales. Su asiento, su tamaño o el metal que tapa la señal pueden impedir que los sensores funcionen; el fabricante de las ruedas responde de que ajusten bien.',
    2: 'Estas ruedas no son las originales. Su forma, su tamaño o su metal pueden impedir que los sensores funcionen. Su fabricante, y no nosotros, responde de que ajusten bien.',
    3: 'Estas ruedas no son las originales. Su forma, su tamaño o su metal pueden impedir que los sensores funcionen. El fabricante de las ruedas, y no nosotros, responde de que queden bien en su auto.',
  },
  'CT-10': {
    1: 'Sus llantas se ajustaron en caliente y pueden marcar más que la etiqueta de la puerta hasta que se enfríen. No les saque aire.',
  },
  'CT-11': {
    1: 'Todavía no hemos encontrado la causa. La luz puede ocultar una llanta baja: revise a mano la presión de todas las llantas cada semana.',
    2: 'Todavía no hemos encontrado la causa. La luz puede ocultar una llanta baja: mida con un medidor el aire de todas las llantas cada semana.',
  },
  'CT-12': {
    1: 'No damos garantía de esta pieza. Si falla, se cobra otra vez por buscar la falla y por cambiarla.',
    2: 'No damos garantía de esta pieza. Si falla, usted paga otra vez por buscar la falla y por cambiarla.',
    3: 'No damos garantía de esta pieza. Si falla, usted paga otra vez por encontrar la falla y por cambiar la pieza.',
  },
  'CT-13': {
    1: 'Esta rueda no está bien sujeta y puede salirse. Por favor, no maneje. Si lo hace, lo hace en contra de nuestro consejo.',
  },
  'CT-14': {
    1: 'Una llanta que rodó baja puede estar dañada por dentro y fallar de repente. Por favor, no maneje con ella antes de que la revisen.',
    2: 'Una llanta que rodó con poco aire puede estar dañada por dentro y fallar de repente. Por favor, no maneje con ella hasta que la revisen.',
  },
  'CT-15': {
    1: 'Una llanta de repuesto temporal tiene límites de velocidad y distancia en el costado. Respételos, y haga reparar la rueda pronto.',
    2: 'Una llanta de repuesto temporal lleva marcados en el costado sus límites de velocidad y distancia. Respételos, y haga reparar pronto la rueda que se quitó.',
  },
  'CT-16': {
    1: 'Esta llanta sigue perdiendo aire. Inflarla no es repararla. Mida su presión antes de cada viaje; si rueda baja, puede fallar de repente.',
    2: 'Esta llanta sigue perdiendo aire. Ponerle aire no es repararla. Mídala con un medidor antes de cada viaje: si rueda baja, puede fallar de repente.',
    3: 'Esta llanta sigue perdiendo aire. Ponerle aire no es repararla. Revise su presión con un medidor antes de cada viaje: si rueda con poco aire, puede fallar de repente.',
  },
  'CT-17': {
    1: 'Esta válvula puede soltarse sin aviso y vaciar la llanta de golpe. Mida la presión de la llanta con frecuencia y haga cambiar la válvula pronto.',
    2: 'Esta válvula puede fallar sin aviso y vaciar la llanta de golpe. Mida la llanta a menudo con un medidor y haga cambiar la válvula pronto.',
    3: 'Esta válvula puede fallar sin aviso y vaciar la llanta de golpe. Revise a menudo la presión de la llanta con un medidor y haga cambiar la válvula pronto.',
  },
  'CT-18': {
    1: 'Esta válvula puede fallar sin aviso y vaciar la llanta de golpe. Por favor, no maneje con ella. Si lo hace, lo hace en contra de nuestro consejo.',
  },
}
