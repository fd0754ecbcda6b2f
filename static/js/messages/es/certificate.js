// en/certificate.js, in its order.

export const CERTIFICATE = {
  "certificate.title": "https en la quesería",
  "certificate.ends_soon":
    "El certificado del servidor termina el {day} y no se ha renovado. Después de ese día los teléfonos ya no llegan a él. En el equipo, ejecute: vatside tls",
  "certificate.root_key_away":
    "El certificado del servidor termina el {day}; para renovarlo hace falta la clave de la raíz que usted guarda en otro lugar. En el equipo, ejecute: vatside tls --root-key FILE",
  "certificate.address_changed":
    "La dirección del equipo ha cambiado. Los teléfonos que abren la anterior no encuentran a nadie. Dé al equipo una dirección fija en el router.",
  "certificate.address_lacking":
    "El equipo tiene una dirección que falta en su certificado. Traiga la clave de la raíz y ejecute en el equipo: vatside tls --root-key FILE",
  "certificate.root_ends_soon":
    "La raíz de la quesería termina antes de medio año. Elija un día tranquilo, ejecute en el equipo: vatside tls --new-root, y tome en cada teléfono la raíz nueva desde la página de preparación.",
  "certificate.clock_wrong":
    "El reloj del equipo va mal. Póngalo en hora: los teléfonos toman su certificado por terminado o por no empezado.",
  "certificate.other":
    "Hay algo que atender en el certificado del servidor. En el equipo, ejecute: vatside check",
};
