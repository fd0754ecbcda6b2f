// PINs and proofs in Spanish: the keys of en/pin.js, in its order.

export const PIN = {
  "nav.pin": "Código PIN",
  "nav_detail.pin": "Para firmar y para las esperas",
  "pin.opening": "Un momento…",
  "pin.missing":
    "El teclado del PIN aún no está en este teléfono. Ábralo una vez donde llegue el servidor.",
  "pin.of": "PIN de {name}",
  "pin.enter": "PIN de {name}",
  "pin.choose":
    "{name} aún no tiene PIN. Elija de 4 a 8 cifras; cuantas más, más difícil de adivinar. Sirve para firmar y para quitar esperas; nadie puede verlo.",
  "pin.again": "Las mismas cifras otra vez.",
  "pin.before": "El PIN que {name} tiene ahora.",
  "pin.next": "Siguiente",
  "pin.keep": "Guardar este PIN",
  "pin.done":
    "El PIN está puesto. Los otros teléfonos lo sabrán cuando vuelvan a llegar al servidor.",
  "pin.differs": "No eran las mismas cifras. Elija otra vez.",
  "pin.forgotten":
    "¿Olvidado? El dueño lo restablece en Personas; el de un dueño, otro dueño, o el equipo con la orden vatside reset-pin.",
  "pin.checking": "Comprobando…",
  "pin.digits.one": "1 cifra escrita",
  "pin.digits.many": "{n} cifras escritas",
  "pin.peek": "Mostrar las cifras",
  "pin.wrong.one": "PIN equivocado. Queda 1 intento antes de una espera.",
  "pin.wrong.many": "PIN equivocado. Quedan {n} intentos antes de una espera.",
  "pin.wait": "Demasiados PIN equivocados. Espere {span}.",
  "pin.locked":
    "Diez PIN equivocados en este teléfono. Desde ahora los comprueba el servidor: vaya donde llegue, o pida al dueño que restablezca el PIN.",
  "pin.no_server":
    "No se llega al servidor, y esto lo necesita una vez. No se pierde nada: puede hacerse más tarde.",
  "pin.not_here":
    "{name} aún no tiene PIN. Póngalo en el teléfono de {name}, en Quién; o que el dueño lo permita aquí por media hora, en Personas.",
  "pin.plain":
    "En esta dirección otros de la red podrían leer el PIN. La dirección https lo mantiene secreto.",
  "pin.hurry": "En espera ya, sin PIN",
  "pin.hurry_detail":
    "Sin él: se anota a nombre de {name}, de quien es este teléfono, y marcado como sin comprobar.",
  "proved.pin": "Comprobado con PIN",
  "proved.phone": "Sin comprobar con PIN; anotado en el teléfono propio de la persona",
  "proved.none": "Sin comprobar; anotado antes de que hubiera PIN",
  "proved.old_pin": "Firmado con un PIN que ya se había cambiado",
  "proved.accepted": "Sin comprobar; admitido tras revisarlo",
  "people.pin": "Dejar que elija otro PIN",
  "people.pin_detail": "El PIN de ahora deja de valer",
  "people.pin_until":
    "{name} puede elegir un PIN en cualquier teléfono hasta las {at}.",
  "field.pin": "El PIN",
  "field.proof": "La comprobación",
  "problem.pin_not_digits": "Un PIN son solo cifras.",
  "problem.pin_too_short": "Un PIN tiene al menos {limit} cifras.",
  "problem.pin_too_long": "Un PIN tiene como mucho {limit} cifras.",
  "problem.pin_too_easy":
    "Ese PIN es de los primeros que cualquiera prueba. Elija otro.",
  "problem.not_proved": "Llegó sin el PIN de la persona.",
  "problem.bad_proof":
    "Su comprobación no corresponde: se cambió, o firmó otra persona.",
  "problem.old_pin":
    "Se firmó con un PIN que ya se había cambiado. Firme otra vez con el nuevo.",
  "problem.unknown_pin":
    "El servidor no conoce el PIN que lo firmó. Ponga el PIN de nuevo y firme otra vez.",
  "error.wrong_pin": "El PIN está equivocado.",
  "error.no_pin": "Esta persona aún no tiene PIN.",
  "error.no_pin_for_role": "Solo los queseros y los dueños tienen PIN.",
  "error.pin_not_here":
    "Póngalo en el teléfono propio de esta persona, o que el dueño lo permita en Personas.",
  "error.own_pin":
    "Lo restablece otro dueño, o el equipo con la orden vatside reset-pin.",
  "error.too_many_pins": "Demasiados PIN equivocados. Espere un poco.",
  "error.not_a_key": "El teléfono hizo una clave que no sirve. Pruebe otra vez.",
};
